import { bass, COMMON_PRACTICE, OURS } from '../rows';
import type { MetreCells } from './types';

export const STEPPERS_CELLS: MetreCells = {
  '4/4': [
    bass(COMMON_PRACTICE, 'x=x=x=--', 0, 'sa'),
    bass(COMMON_PRACTICE, 'x=x=x=x=', 0, 'at'),
    bass(OURS, 'x=--x=x=', 0, 'sat'),
    bass(COMMON_PRACTICE, 'x===x=--', 0, 'sa', 1),
    bass(OURS, 'x=xxx=--', 1, 'sat'),
    bass(OURS, 'xxx=x=--', 1, 'sa'),
    bass(OURS, 'xxx=xxx-', 1, 'sat'),
    bass(OURS, 'x=xxx-x-', 1, 'sat'),
    bass(COMMON_PRACTICE, 'x-x-x-x-', 1, 'sat'),
    bass(OURS, 'xxxxx=--', 1, 'sa'),
    bass(OURS, 'x=x=xxxx', 1, 't'),
    bass(OURS, 'x==xx=--', 2, 'sat'),
    bass(OURS, 'x==xx=xx', 2, 't'),
    bass(OURS, 'x--x--x-', 3, 'sa'),
    bass(OURS, 'x-xx-xx-', 3, 'sat'),
    bass(OURS, 'x-xxx-xx', 1, 't'),
    bass(OURS, 'x===x=xxx===x=xx', 4, 't'),
    bass(OURS, 'x==x==x==x==x=x=', 5, 't'),
    bass(OURS, '--x=x=x=', 0, 'sat'),
    bass(OURS, '--x=x=--', 0, 'sa'),
    bass(OURS, '----x=x=', 0, 'at'),
    bass(OURS, '--xxx=--', 1, 'sa'),
    bass(OURS, '--xxx=x=', 1, 'sat'),
    bass(OURS, '----xxxx', 1, 't'),
    bass(OURS, '-xxx-xxx', 3, 'sa'),
    bass(OURS, '-xx=x=--', 3, 'sa'),
    bass(OURS, '---xx=x=', 3, 'at'),
  ],
};
