import { bass, COMMON_PRACTICE, OURS } from '../rows';
import type { MetreCells } from './types';

export const WALTZ_CELLS: MetreCells = {
  '3/4': [
    bass(COMMON_PRACTICE, 'x=====', 0),
    bass(COMMON_PRACTICE, 'x===x=', 0),
    bass(COMMON_PRACTICE, 'x=x=x=', 0),
    bass(OURS, 'x=x===', 0),
    bass(OURS, 'x=--x=', 0),
    bass(OURS, 'x=x=--', 0),
    bass(OURS, 'x===--', 0),
    bass(OURS, 'x=xxx=', 1),
    bass(OURS, 'x===xx', 1),
    bass(OURS, 'x=x=xx', 1),
    bass(OURS, 'x=xxxx', 1),
    bass(OURS, 'x==xx=', 2),
    bass(COMMON_PRACTICE, 'x==x==', 3),
    bass(OURS, '--x=x=', 0),
    bass(OURS, '--x===', 0),
    bass(OURS, '----x=', 0),
    bass(OURS, '--xxx=', 1),
    bass(OURS, '---xx=', 3),
  ],
};
