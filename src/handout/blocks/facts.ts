import { beatTicks, isCompound, type Metre, TICKS_PER_QUARTER, type Ticks } from '../../core/base';
import { countOf, keyChanges, type LinePiece, type LineSheet, toldBeat, toldTempo } from '../../core/lesson';
import { describeKeyIn, describeSignature } from '../../core/theory';

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

/** `F major: one flat (B♭)`, computed, so that it cannot be wrong, and where other keys begin. */
export function keyStatement(sheet: LineSheet): string {
  const { key, noteNames = 'letters' } = sheet;
  const home = `${describeKeyIn(noteNames, key)}: ${describeSignature(key, noteNames)}`;
  return [home, ...keyChanges(sheet)].join(', ');
}

const ROMAN = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII'] as const;
const MORE_ROMAN = ['XIII', 'XIV', 'XV', 'XVI', 'XVII', 'XVIII', 'XIX', 'XX', 'XXI', 'XXII'] as const;
const POSITION_NUMERALS: readonly string[] = [...ROMAN, ...MORE_ROMAN];

const roman = (position: number): string => POSITION_NUMERALS[position - 1] ?? String(position);

/** Where the hand stands: `hand in position I`, `hand in positions I and III`, `I to VII`; '' without notes. */
function handStatement(sheet: LineSheet): string {
  const placed = sheet.bars.flatMap((bar) =>
    bar.notes.flatMap(({ fingered }) =>
      fingered === null || fingered.fret === 0 ? [] : [fingered.position],
    ),
  );
  const positions = [...new Set<number>(placed)].sort((one, other) => one - other);
  const [lowest, highest] = [positions[0], positions.at(-1)];
  if (lowest === undefined || highest === undefined) return '';
  if (positions.length === 1) return `hand in position ${roman(lowest)}`;
  const joint = positions.length === 2 ? 'and' : 'to';
  return `hand in positions ${roman(lowest)} ${joint} ${roman(highest)}`;
}

/**
 * One line about a piece: feel, tempo, level, key, hand.
 * @param hand - whether the hand's position is told; a sheet to be read without help keeps it to itself
 */
export function pieceFacts(sheet: LineSheet, piece: LinePiece | undefined, hand: boolean): string {
  const facts = [
    sheet.feel.name,
    tempoStatement(sheet),
    keyStatement(sheet),
    hand ? handStatement(sheet) : '',
    piece === undefined ? '' : `level ${piece.level}`,
  ];
  return facts.filter((fact) => fact !== '').join(' · ');
}
