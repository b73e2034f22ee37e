import { bass } from '../rows';
import type { MetreCells } from './types';

export const WALTZ_CELLS: MetreCells = {
  '3/4': [
    bass('x=====', 0, 'sa'),
    bass('x===x=', 0, 'sat'),
    bass('x=x=x=', 0, 'sat'),
    bass('x=x===', 0, 'sa'),
    bass('x=--x=', 0, 'sat'),
    bass('x=x=--', 0, 'sa'),
    bass('x===--', 0, 'a', 1),
    bass('x=xxx=', 1, 'sa'),
    bass('x===xx', 1, 'at'),
    bass('x=x=xx', 1, 't'),
    bass('x=xxxx', 1, 't'),
    bass('x==xx=', 2, 'sat'),
    bass('x==x==', 3, 'sa'),
    bass('--x=x=', 0, ''),
    bass('--x===', 0, ''),
    bass('----x=', 0, ''),
    bass('--xxx=', 1, ''),
    bass('---xx=', 3, ''),
  ],
};
