import { bass, COMMON_PRACTICE, OURS } from '../rows';
import type { MetreCells } from './types';

export const DISCO_CELLS: MetreCells = {
  '4/4': [
    bass(COMMON_PRACTICE, 'x=x=x=x=', 0, 'sat'),
    bass(COMMON_PRACTICE, 'x===x=x=', 0, 'sat', 1),
    bass(COMMON_PRACTICE, 'x=x=x=--', 0, 'sa', 1),
    bass(COMMON_PRACTICE, 'x===x===', 0, 'sa', 1),
    bass(COMMON_PRACTICE, 'x-x-x-x-', 1, 'sat'),
    bass(OURS, 'xxx=xxx=', 1, 'sat'),
    bass(OURS, 'xxxxx=x=', 1, 'sat'),
    bass(COMMON_PRACTICE, 'x=xxx=xx', 1, 'sat'),
    bass(COMMON_PRACTICE, 'xxxxxxxx', 1, 'sat'),
    bass(OURS, 'x-x-x-xx', 1, 'at'),
    bass(OURS, 'x=x=xxxx', 1, 't'),
    bass(OURS, 'x==xx=xx', 2, 'at'),
    bass(COMMON_PRACTICE, 'x==xx=x=', 2, 'sat'),
    bass(OURS, 'x-xx-xx-', 3, 'sa'),
    bass(OURS, 'x-xxx-xx', 1, 'sat'),
    bass(OURS, 'x===x=xxx===x=xx', 4, 'sat'),
    bass(OURS, 'x==xx===x==xx=xx', 4, 't'),
    bass(OURS, '--x=x=x=', 0, ''),
    bass(OURS, '----x=x=', 0, ''),
    bass(OURS, '--x=x=--', 0, ''),
    bass(OURS, '--xxx=xx', 1, ''),
    bass(OURS, '----xxxx', 1, ''),
    bass(OURS, '-x-x-x-x', 3, ''),
    bass(OURS, '-xxx-xxx', 3, ''),
  ],
};
