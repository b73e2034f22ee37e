import { bass, COMMON_PRACTICE, OURS } from '../rows';
import type { MetreCells } from './types';

export const STEPPERS_CELLS: MetreCells = {
  '4/4': [
    bass(COMMON_PRACTICE, 'x=x=x=--', 0),
    bass(COMMON_PRACTICE, 'x=x=x=x=', 0),
    bass(OURS, 'x=--x=x=', 0),
    bass(COMMON_PRACTICE, 'x===x=--', 0),
    bass(OURS, 'x=xxx=--', 1),
    bass(OURS, 'xxx=x=--', 1),
    bass(OURS, 'xxx=xxx-', 1),
    bass(OURS, 'x=xxx-x-', 1),
    bass(COMMON_PRACTICE, 'x-x-x-x-', 1),
    bass(OURS, 'xxxxx=--', 1),
    bass(OURS, 'x=x=xxxx', 1),
    bass(OURS, 'x==xx=--', 2),
    bass(OURS, 'x==xx=xx', 2),
    bass(OURS, 'x--x--x-', 3),
    bass(OURS, 'x-xx-xx-', 3),
    bass(OURS, 'x-xxx-xx', 1),
    bass(OURS, 'x===x=xxx===x=xx', 4),
    bass(OURS, 'x==x==x==x==x=x=', 5),
    bass(OURS, '--x=x=x=', 0),
    bass(OURS, '--x=x=--', 0),
    bass(OURS, '----x=x=', 0),
    bass(OURS, '--xxx=--', 1),
    bass(OURS, '--xxx=x=', 1),
    bass(OURS, '----xxxx', 1),
    bass(OURS, '-xxx-xxx', 3),
    bass(OURS, '-xx=x=--', 3),
    bass(OURS, '---xx=x=', 3),
  ],
};
