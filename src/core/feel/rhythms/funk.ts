import { bass } from '../rows';
import type { MetreCells } from './types';

export const FUNK_CELLS: MetreCells = {
  '4/4': [
    bass('x=----x=', 0, 'sa'),
    bass('x=--x=--', 0, 'sa'),
    bass('x=--x=x=', 0, 'sat'),
    bass('x===x=--', 0, 'sa', 1),
    bass('x===x=x=', 0, 'at', 1),
    bass('x-x-----', 1, 'a'),
    bass('xx--x=--', 1, 'sa'),
    bass('x-x-xxx-', 1, 'sat'),
    bass('xxx---xx', 1, 'at'),
    bass('x---xxxx', 1, 't'),
    bass('x==xx-x-', 2, 'sat'),
    bass('x--x-xx-', 3, 'sat'),
    bass('x--x--xx', 3, 'at'),
    bass('x-xx--x-', 3, 'sa'),
    bass('x--x-xxx', 3, 't'),
    bass('x=--x=--xxx=----', 4, 'sa'),
    bass('x=------xxx=x=xx', 4, 't'),
    bass('x=-x--x=--xx-x--', 5, 'sa'),
    bass('x=-x--x=--xx--xx', 5, 'at'),
    bass('x=--x-x=--x=--xx', 5, 'sat'),
    bass('--x=--x=', 0, ''),
    bass('----x=x=', 0, ''),
    bass('--xx--x=', 1, ''),
    bass('---x--x=', 3, ''),
    bass('-x-x-xx-', 3, ''),
  ],
};
