import type { LineSheet } from '../../src/core/lesson';
import { sheetOf } from '../support/score-sheets';

/** Lines over charts whose way leads back and on by signs, in every combination that a bar can have. */
export const waySheets: readonly LineSheet[] = [
  '| C | (segno) F | G (to coda) | Am |\n| Dm | G7 (D.S. al coda) | (coda) C | C |',
  '| C | F (fine) | G | Am | Dm | Em | F | G7 (D.C. al fine) |',
  '|: C | F | 1. G :| 2. Am (fine) || Dm | G | Em | A7 (D.C. al fine) |',
  '| (segno) C (to coda) | F | G | Am (D.S.) |\nCoda:\n| (coda) F | G | C | C |',
].map((chart) => sheetOf({ chart, key: 'C', notes: Array.from({ length: 8 }, () => 'C2/4').join(' | ') }));
