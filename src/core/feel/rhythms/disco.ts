import { bass } from '../rows';
import type { MetreCells } from './types';

export const DISCO_CELLS: MetreCells = {
  '4/4': [
    bass('x=x=x=x=', 0, 'sat'),
    bass('x===x=x=', 0, 'sat', 1),
    bass('x=x=x=--', 0, 'sa', 1),
    bass('x===x===', 0, 'sa', 1),
    bass('x-x-x-x-', 1, 'sat'),
    bass('xxx=xxx=', 1, 'sat'),
    bass('xxxxx=x=', 1, 'sat'),
    bass('x=xxx=xx', 1, 'sat'),
    bass('xxxxxxxx', 1, 'sat'),
    bass('x-x-x-xx', 1, 'at'),
    bass('x=x=xxxx', 1, 't'),
    bass('x==xx=xx', 2, 'at'),
    bass('x==xx=x=', 2, 'sat'),
    bass('x-xx-xx-', 3, 'sa'),
    bass('x-xxx-xx', 1, 'sat'),
    bass('x===x=xxx===x=xx', 4, 'sat'),
    bass('x==xx===x==xx=xx', 4, 't'),
    bass('--x=x=x=', 0, ''),
    bass('----x=x=', 0, ''),
    bass('--x=x=--', 0, ''),
    bass('--xxx=xx', 1, ''),
    bass('----xxxx', 1, ''),
    bass('-x-x-x-x', 3, ''),
    bass('-xxx-xxx', 3, ''),
  ],
};
