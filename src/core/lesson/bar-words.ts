import { barTicks, beatAt, isDotted, type LineNote, type Metre, marksOf, SIGNS, unitTicks } from '../base';
import { formatNameIn } from '../theory';
import { type Exit, exitsOf } from './exits';
import type { LineSheet, SheetBar } from './sheet-types';

/** Where in the bar a moment lies, as it is counted: `2`, `the & of 2`. */
export function beatWords(start: number, metre: Metre): string {
  const beat = beatAt(metre, start);
  const number = beat.index + 1;
  const rest = start - beat.start;
  if (rest === 0) return String(number);
  if (isDotted(beat)) return `${number} and ${rest / unitTicks(metre)} eighths`;
  const parts: Readonly<Record<number, string>> = { 2: '&', 1: 'e', 3: 'a' };
  const part = parts[(rest * 4) / beat.length];
  return part === undefined ? `within ${number}` : `the ${part} of ${number}`;
}

/** A string (1 is the highest) by the name of its open note: `E♭`; '' where the instrument has none. */
export function stringName(sheet: LineSheet, string: number): string {
  const open = sheet.instrument.openStrings[string - 1];
  return open === undefined ? '' : formatNameIn(sheet.noteNames ?? 'letters', open);
}

/** How a note is played, in words; a hammer-on or pull-off by where it leads. */
const marksSaid = (note: LineNote, exit: Exit | null): readonly string[] => [
  ...marksOf(note).flatMap((mark) =>
    mark === note.marks?.exit || mark === 'hammer' ? [] : [SIGNS[mark].word],
  ),
  ...(exit === null ? [] : [SIGNS[exit.sign].word]),
];

const wordsOver = ({ words }: SheetBar): readonly string[] =>
  words === undefined ? [] : [`Over the bar: ${words}.`];

/** `p on 1, growing.` */
function dynamicsIn({ dynamics = [], written: { metre } }: SheetBar): readonly string[] {
  return dynamics.map(({ at, level, hairpin }) => {
    const where = at >= barTicks(metre) ? 'at the end' : `on ${beatWords(at, metre)}`;
    const way = hairpin === undefined ? '' : hairpin === 'crescendo' ? ', growing' : ', fading';
    return `${level ?? (hairpin === undefined ? 'Hairpin ends' : 'Hairpin')} ${where}${way}.`;
  });
}

/** What a bar holds, for someone who does not see the staff. */
export function describeBar(sheet: LineSheet, bar: SheetBar): string {
  const over = [...wordsOver(bar), ...dynamicsIn(bar)].join(' ');
  const around = over === '' ? '' : `${over} `;
  if (bar.notes.length === 0) return `${around}No notes yet.`;
  const index = sheet.bars.indexOf(bar);
  const exits = exitsOf(sheet.bars.slice(index, index + 2))[0] ?? [];
  const notes = bar.notes.map(({ note, fingered, degreeText }, at) => {
    const place =
      fingered === null
        ? 'not on this instrument'
        : `${stringName(sheet, fingered.string)} string ${fingered.fret === 0 ? 'open' : `fret ${fingered.fret}`}`;
    const signs = marksSaid(note, exits[at] ?? null).map((word) => `, ${word}`);
    return `${degreeText || 'note'} on ${beatWords(note.start, bar.written.metre)}, ${place}${signs.join('')}`;
  });
  return `${around}${notes.join('; ')}.${bar.kept ? ' Kept.' : ''}`;
}
