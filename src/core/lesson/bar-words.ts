import { barTicks, beatAt, isDotted, type LineNote, type Metre, marksOf, SIGNS, unitTicks } from '../base';
import { harmonyText } from '../chart';
import { formatNameIn } from '../theory';
import { type Exit, exitsOf } from './exits';
import { lengthWords } from './note-lengths';
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

/** Where the chords of a bar come, in a bar that has several: `Gm on 1, C7 on 3.` */
function chordsIn({ written: { spans, metre } }: SheetBar, sheet: LineSheet): readonly string[] {
  if (spans.length < 2) return [];
  const places = spans.map(
    ({ harmony, start }) => `${harmonyText(harmony, sheet.noteNames)} on ${beatWords(start, metre)}`,
  );
  return [`${places.join(', ')}.`];
}

/** A moment of a bar with what is said of it. */
interface Said {
  readonly start: number;
  readonly words: string;
}

/** The rests between notes and around them. */
function restsIn({ notes, written: { metre } }: SheetBar): readonly Said[] {
  const gaps: Said[] = [];
  let from = 0;
  for (const { start, duration } of [
    ...notes.map(({ note }) => note),
    { start: barTicks(metre), duration: 0 },
  ]) {
    if (start > from)
      gaps.push({
        start: from,
        words: `rest on ${beatWords(from, metre)}, ${lengthWords(start - from)}`,
      });
    from = Math.max(from, start + duration);
  }
  return gaps;
}

/** What is said of a bar of a line in which nothing is written. */
const NO_NOTES = 'No notes yet.';

/**
 * What a bar holds, for someone who does not see the staff: note by note its degree, beat, name, length, place and finger,
 * and every rest.
 * @param empty - what is said where there is no note
 */
export function describeBar(sheet: LineSheet, bar: SheetBar, empty = NO_NOTES): string {
  const before = [...chordsIn(bar, sheet), ...wordsOver(bar), ...dynamicsIn(bar)].join(' ');
  const around = before === '' ? '' : `${before} `;
  if (bar.notes.length === 0) return `${around}${empty}`;
  const index = sheet.bars.indexOf(bar);
  const exits = exitsOf(sheet.bars.slice(index, index + 2))[0] ?? [];
  const { metre } = bar.written;
  const notes = bar.notes.map(({ note, fingered, degreeText }, at): Said => {
    const place =
      fingered === null
        ? 'not on this instrument'
        : `${stringName(sheet, fingered.string)} string ${fingered.fret === 0 ? 'open' : `fret ${fingered.fret}, finger ${fingered.finger}`}`;
    const words = [
      `${degreeText || 'note'} on ${beatWords(note.start, metre)}`,
      formatNameIn(sheet.noteNames ?? 'letters', note.pitch),
      `${lengthWords(note.duration)}${note.tiedOn === true ? ' tied on' : ''}`,
      place,
      ...marksSaid(note, exits[at] ?? null),
    ];
    return { start: note.start, words: words.join(', ') };
  });
  const said = [...notes, ...restsIn(bar)].sort((one, other) => one.start - other.start);
  return `${around}${said.map(({ words }) => words).join('; ')}.${bar.kept ? ' Kept.' : ''}`;
}
