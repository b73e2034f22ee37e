import { bass } from '../rows';
import type { MetreCells } from './types';

export const STEPPERS_CELLS: MetreCells = {
  '4/4': [
    bass('x=x=x=--', 0, 'sa'),
    bass('x=x=x=x=', 0, 'at'),
    bass('x=--x=x=', 0, 'sat'),
    bass('x===x=--', 0, 'sa', 1),
    bass('x=xxx=--', 1, 'sat'),
    bass('xxx=x=--', 1, 'sa'),
    bass('xxx=xxx-', 1, 'sat'),
    bass('x=xxx-x-', 1, 'sat'),
    bass('x-x-x-x-', 1, 'sat'),
    bass('xxxxx=--', 1, 'sa'),
    bass('x=x=xxxx', 1, 't'),
    bass('x==xx=--', 2, 'sat'),
    bass('x==xx=xx', 2, 't'),
    bass('x--x--x-', 3, 'sa'),
    bass('x-xx-xx-', 3, 'sat'),
    bass('x-xxx-xx', 1, 't'),
    bass('x===x=xxx===x=xx', 4, 't'),
    bass('x==x==x==x==x=x=', 5, 't'),
    bass('--x=x=x=', 0, 'sat'),
    bass('--x=x=--', 0, 'sa'),
    bass('----x=x=', 0, 'at'),
    bass('--xxx=--', 1, 'sa'),
    bass('--xxx=x=', 1, 'sat'),
    bass('----xxxx', 1, 't'),
    bass('-xxx-xxx', 3, 'sa'),
    bass('-xx=x=--', 3, 'sa'),
    bass('---xx=x=', 3, 'at'),
  ],
};
