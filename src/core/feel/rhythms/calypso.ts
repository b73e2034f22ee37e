import { bass } from '../rows';
import type { MetreCells } from './types';

export const CALYPSO_CELLS: MetreCells = {
  '4/4': [
    bass('x===x=--', 0, 'sa'),
    bass('x=--x=x=', 0, 'sat'),
    bass('x===x=x=', 0, 'sat'),
    bass('x=x=x=--', 0, 'sa'),
    bass('x===x===', 0, 'sa', 1),
    bass('x=x=x=x=', 0, 't'),
    bass('x=xxx=--', 1, 'sat'),
    bass('xxx=x=--', 1, 'sa'),
    bass('x=xxx=x=', 1, 'sat'),
    bass('x=--x=xx', 1, 't'),
    bass('x==xx=--', 2, 'sat'),
    bass('x==xx=x=', 2, 'sat'),
    bass('x==xx===', 2, 'a'),
    bass('x==xx=xx', 2, 'at'),
    bass('x==x==x=', 3, 'sa'),
    bass('x==xx=-x', 3, 'sat'),
    bass('x==x==xx', 3, 'at'),
    bass('x==x--x=', 3, 'sa'),
    bass('x==x==x=x=--x=xx', 5, 't'),
    bass('--x=x=--', 0, ''),
    bass('----x=x=', 0, ''),
    bass('--x=x=x=', 0, ''),
    bass('-xxxx=xx', 3, 'a'),
    bass('---xx=x=', 3, 'a'),
  ],
};
