import { bass } from '../rows';
import type { MetreCells } from './types';

export const BOSSA_CELLS: MetreCells = {
  '4/4': [
    bass('x===x===', 0, 'sa', 1),
    bass('x===x=--', 0, 'sa', 1),
    bass('x===x=x=', 0, 'sat', 1),
    bass('x=--x=--', 0, 'sa', 1),
    bass('x=x=x===', 0, 'at', 1),
    bass('x=x=x=x=', 0, 't'),
    bass('x=--xxx=', 1, 'at', 1),
    bass('x=x=xxx=', 1, 't'),
    bass('x==xx===', 2, 'sa'),
    bass('x==xx==x', 2, 'sat'),
    bass('x==xx=x=', 2, 'sat'),
    bass('x===x==x', 2, 'sat'),
    bass('x==xx=xx', 2, 't'),
    bass('x--xx--x', 3, ''),
    bass('x--xx---', 3, ''),
    bass('x==x-xx=', 3, 't'),
    bass('----x===', 0, ''),
    bass('----x=x=', 0, ''),
    bass('--x=x===', 0, ''),
    bass('--x=x=x=', 0, ''),
    bass('----x==x', 2, ''),
    bass('--x=x==x', 2, ''),
    bass('---xx==x', 3, ''),
    bass('---xx===', 3, ''),
  ],
};
