import { barTicks, type LineNote, lengthWords, marksOf, rememberedFor, SIGNS } from '../base';
import { countedIn, shownHarmony } from '../chart';
import { formatNameIn, formatPitchIn } from '../theory';
import { type Exit, exitsOf } from './exits';
import type { LineSheet, SheetBar, SheetNote } from './sheet-types';
import { type BarTies, tiesOverBarLines, UNTIED } from './ties';

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

/** Says where a tick of the bar lies. */
type Place = (tick: number) => string;

/** `p on 1, growing.` */
function dynamicsIn({ dynamics = [], written: { metre } }: SheetBar, place: Place): readonly string[] {
  return dynamics.map(({ at, level, hairpin }) => {
    const where = at >= barTicks(metre) ? 'at the end' : `on ${place(at)}`;
    const way = hairpin === undefined ? '' : hairpin === 'crescendo' ? ', growing' : ', fading';
    return `${level ?? (hairpin === undefined ? 'Hairpin ends' : 'Hairpin')} ${where}${way}.`;
  });
}

/** Where the chords of a bar come, in a bar that has several: `Gm on 1, C7 on 3.` */
function chordsIn({ written: { spans } }: SheetBar, sheet: LineSheet, place: Place): readonly string[] {
  if (spans.length < 2) return [];
  const places = spans.map(
    ({ harmony, start }) => `${shownHarmony(harmony, sheet.noteNames)} on ${place(start)}`,
  );
  return [`${places.join(', ')}.`];
}

/** A moment of a bar with what is said of it. */
interface Said {
  readonly start: number;
  readonly words: string;
}

/** The rests between notes and around them. */
function restsIn({ notes, written: { metre } }: SheetBar, place: Place): readonly Said[] {
  const gaps: Said[] = [];
  let from = 0;
  for (const { start, duration } of [
    ...notes.map(({ note }) => note),
    { start: barTicks(metre), duration: 0 },
  ]) {
    if (start > from)
      gaps.push({
        start: from,
        words: `rest on ${place(from)}, ${lengthWords(start - from)}`,
      });
    from = Math.max(from, start + duration);
  }
  return gaps;
}

/** Said of a bar of a finished line that has no notes. */
const SILENT = 'The bass rests for the whole bar.';

/** What is asked of a sheet for each of its bars, looked for once: all bars of a long line are told in a row. */
const knownOf = rememberedFor(({ bars }: LineSheet) => ({
  places: new Map(bars.map((bar, index) => [bar, index])),
  isWritten: bars.some(({ notes }) => notes.length > 0),
}));

/** Whether a bar stands without a chord in a line that is written: nothing more is meant to come there. */
const isSilentBetween = (sheet: LineSheet, { written }: SheetBar): boolean =>
  written.spans.every(({ harmony }) => harmony.kind === 'no chord') && knownOf(sheet).isWritten;

/** How much is told of a bar. */
export interface BarTelling {
  /** Degree, string, fret and finger, too; else the pitch with its octave, as the staff alone shows it. */
  readonly places?: boolean;
  /** Whether a bar without notes is one to rest in, and not one that is still to be written. */
  readonly rests?: boolean;
  /** False where the rhythm alone is shown: neither pitches nor chords are told. */
  readonly pitches?: boolean;
}

/**
 * What a bar holds, for someone who does not see the staff: note by note its degree, beat, name, length, place and finger,
 * and every rest.
 */
export function describeBar(
  sheet: LineSheet,
  bar: SheetBar,
  { places = true, pitches = true, rests = false }: BarTelling = {},
): string {
  const index = knownOf(sheet).places.get(bar) ?? -1;
  const place = countedIn(sheet.chart, index, bar.written.metre);
  const before = pitches
    ? [...chordsIn(bar, sheet, place), ...wordsOver(bar), ...dynamicsIn(bar, place)].join(' ')
    : '';
  const around = before === '' ? '' : `${before} `;
  if (bar.notes.length === 0)
    return `${around}${rests || isSilentBetween(sheet, bar) ? SILENT : 'No notes yet.'}`;
  const exits = exitsOf(sheet.bars.slice(index, index + 2))[0] ?? [];
  const ties = tiesOverBarLines(sheet)[index] ?? UNTIED;
  const notes = bar.notes.map((shown, at): Said => {
    const lasts = lasting(shown, at < bar.notes.length - 1 || ties.to !== 'none');
    if (!pitches) return { start: shown.note.start, words: strokeSaid(place, shown, lasts) };
    const told = places ? placeSaid(sheet, place, shown, lasts) : pitchSaid(sheet, place, shown, lasts);
    const words = [...told, ...marksSaid(shown.note, exits[at] ?? null)].join(', ');
    return { start: shown.note.start, words: at === 0 ? heldSaid(ties) + words : words };
  });
  const said = [...notes, ...restsIn(bar, place)].sort((one, other) => one.start - other.start);
  return `${around}${said.map(({ words }) => words).join('; ')}.${bar.kept ? ' Kept.' : ''}`;
}

/** Whether the first note of a bar goes on from the bar that was played before. */
function heldSaid({ left, elsewhere, struck }: BarTies): string {
  if (!struck) return 'held on, ';
  return left || elsewhere ? 'struck, and held on when it comes round, ' : '';
}

/** @param leads whether a tie at the note's end has something to lead to */
const lasting = ({ note }: SheetNote, leads: boolean): string =>
  `${lengthWords(note.duration)}${note.tiedOn === true && leads ? ' tied on' : ''}`;

function placeSaid(sheet: LineSheet, at: Place, shown: SheetNote, lasts: string): readonly string[] {
  const { note, fingered, degreeText } = shown;
  const place =
    fingered === null
      ? 'not on this instrument'
      : `${stringName(sheet, fingered.string)} string ${fingered.fret === 0 ? 'open' : `fret ${fingered.fret}, finger ${fingered.finger}`}`;
  return [
    `${degreeText || 'note'} on ${at(note.start)}`,
    formatNameIn(sheet.noteNames ?? 'letters', note.pitch),
    lasts,
    place,
  ];
}

const strokeSaid = (at: Place, shown: SheetNote, lasts: string): string =>
  `note on ${at(shown.note.start)}, ${lasts}`;

const pitchSaid = (sheet: LineSheet, at: Place, shown: SheetNote, lasts: string): readonly string[] => [
  `${formatPitchIn(sheet.noteNames ?? 'letters', shown.note.pitch)} on ${at(shown.note.start)}`,
  lasts,
];
