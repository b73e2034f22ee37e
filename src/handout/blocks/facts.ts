import { beatTicks, isCompound, type Metre, TICKS_PER_QUARTER, type Ticks } from '../../core/base';
import {
  countOf,
  handStatement,
  keysStatement,
  type LinePiece,
  type LineSheet,
  toldBeat,
  toldTempo,
} from '../../core/lesson';
import { joined } from '../layout/rows';

/** Signs for the note that a tempo counts, by its length in quarters; a dot follows in compound time. */
const NOTE_SIGNS: readonly (readonly [quarters: number, sign: string])[] = [
  [2, '𝅗𝅥'],
  [1, '♩'],
  [0.5, '♪'],
];

/** `♩ = 126`; `♩. = 80` in compound time. */
export function tempoText(metre: Metre, tempo: number, beat: Ticks = beatTicks(metre)): string {
  const quarters = beat / TICKS_PER_QUARTER / (isCompound(metre) ? 1.5 : 1);
  const sign = NOTE_SIGNS.find(([length]) => length === quarters)?.[1] ?? '♩';
  return `${sign}${isCompound(metre) ? '.' : ''} = ${Math.round(tempo * 10) / 10}`;
}

/** A tempo of a line in the count it is told in: `𝅗𝅥 = 69` where music written fast is told in the slow count. */
export const toldTempoText = (sheet: LineSheet, tempo: number): string =>
  tempoText(sheet.metre, toldTempo(sheet, tempo), toldBeat(sheet));

/** `♩ = 138, fast count`; the count only where there are two. */
function tempoStatement(sheet: LineSheet): string {
  const count = countOf(sheet);
  return `${toldTempoText(sheet, sheet.tempo)}${count === null ? '' : `, ${count} count`}`;
}

/** What a line about a piece tells beside feel, tempo and level. */
export interface FactsTold {
  readonly key: boolean;
  /** The hand's position; a sheet to be read without help keeps it to itself. */
  readonly hand: boolean;
}

/** One line about a piece: feel, tempo, level, and key and hand where they are to be told. */
export function pieceFacts(sheet: LineSheet, piece: LinePiece | undefined, told: FactsTold): string {
  const facts = [
    sheet.feel.name,
    joined(tempoStatement(sheet)),
    told.key ? keysStatement(sheet) : '',
    told.hand ? handStatement(sheet) : '',
    piece === undefined ? '' : joined(`level ${piece.level}`),
  ];
  return facts.filter((fact) => fact !== '').join(' · ');
}
