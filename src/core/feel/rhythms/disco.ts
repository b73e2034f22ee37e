import { bass, COMMON_PRACTICE, OURS } from '../rows';
import type { MetreCells } from './types';

export const DISCO_CELLS: MetreCells = {
  '4/4': [
    bass(COMMON_PRACTICE, 'x=x=x=x=', 0),
    bass(COMMON_PRACTICE, 'x===x=x=', 0),
    bass(COMMON_PRACTICE, 'x=x=x=--', 0),
    bass(COMMON_PRACTICE, 'x===x===', 0),
    bass(COMMON_PRACTICE, 'x-x-x-x-', 1),
    bass(OURS, 'xxx=xxx=', 1),
    bass(OURS, 'xxxxx=x=', 1),
    bass(COMMON_PRACTICE, 'x=xxx=xx', 1),
    bass(COMMON_PRACTICE, 'xxxxxxxx', 1),
    bass(OURS, 'x-x-x-xx', 1),
    bass(OURS, 'x=x=xxxx', 1),
    bass(OURS, 'x==xx=xx', 2),
    bass(COMMON_PRACTICE, 'x==xx=x=', 2),
    bass(OURS, 'x-xx-xx-', 3),
    bass(OURS, 'x-xxx-xx', 1),
    bass(OURS, 'x===x=xxx===x=xx', 4),
    bass(OURS, 'x==xx===x==xx=xx', 4),
    bass(OURS, '--x=x=x=', 0),
    bass(OURS, '----x=x=', 0),
    bass(OURS, '--x=x=--', 0),
    bass(OURS, '--xxx=xx', 1),
    bass(OURS, '----xxxx', 1),
    bass(OURS, '-x-x-x-x', 3),
    bass(OURS, '-xxx-xxx', 3),
  ],
};
