import {
  barName,
  barTicks,
  beatTicks,
  capitalised,
  isCompound,
  metreName,
  midiOf,
  sameMetre,
} from '../../base';
import {
  beginsBar,
  type ChartBar,
  navigationWords,
  repeatSigns,
  timesToSay,
  type WrittenMetre,
  writtenMetres,
} from '../../chart';
import { writeTuning } from '../../fretboard';
import { exitsOf, type LineSheet, tempoWords, tiesOverBarLines } from '../../lesson';
import { syllableAt } from '../../notation';
import { swingsEighths } from '../../playing';
import { describeKeyIn, formatNameIn, type Naming, sameKey } from '../../theory';
import { keyAt } from '../signature';
import { type Column, columnsOf } from './columns';
import { plainText, wrap } from './plain';
import { legendOf, type NoteText, noteText } from './signs';

/** Signs a line, as on a terminal and in most forums' fixed-width text. */
const WIDTH = 80;

/** Bars of a line where they fit: the trade's four. */
const MOST_BARS = 4;

/** A bar or, where a bar is too wide for a line, a part of it. */
interface BarPart {
  readonly bar: ChartBar;
  readonly columns: readonly Column[];
  readonly begins: boolean;
  /** A repeat begins with the bar. */
  readonly opens: boolean;
  readonly ends: boolean;
  /** Above the bar's end: `x3`. */
  readonly times: string;
  readonly ending: string;
  /** The bar behind it belongs to no ending any more. */
  readonly endsEnding: boolean;
  /** At the bar's beginning: another metre, or the length of the pickup. */
  readonly metre: string;
}

/** Signs that the columns take, where a chord symbol may be longer than what is left for it. */
function widthOf(columns: readonly Column[]): number {
  let width = 0;
  let chordsEnd = 0;
  for (const column of columns) {
    if (column.chord !== '') chordsEnd = width + column.chord.length + 1;
    width += column.width;
  }
  return Math.max(width, chordsEnd);
}

/** Signs that open and close a bar on the strings. */
const opening = ({ begins, opens }: BarPart): string => (begins && opens ? ':-' : '-');
const closing = ({ bar, ends, endsEnding }: BarPart): string => {
  if (!ends) return '';
  if (bar.repeatEnd !== null) return ':|';
  return endsEnding ? '||' : '|';
};

const roomOf = (stretch: BarPart): number =>
  Math.max(
    opening(stretch).length + widthOf(stretch.columns) + closing(stretch).length,
    headOf(stretch).length + stretch.times.length + 2,
  );

const headOf = ({ bar, begins, ending, metre }: BarPart): string =>
  begins
    ? [bar.pickup ? '' : bar.number, metre, ending, ...waySigns(bar, true)]
        .filter((part) => part !== '')
        .join(' ')
    : '';

/** Signs of the way through the chart, where a bar begins or ends. */
const waySigns = ({ navigation = [] }: ChartBar, begins: boolean): readonly string[] =>
  navigation.filter((sign) => beginsBar(sign) === begins).map(navigationWords);

/** Another metre than that of the bar before, `(3/4)`, or how many beats a pickup has, `(1)`, in the chart's own signs. */
function metreText({ metre, pickup }: ChartBar, before: ChartBar | undefined, sheet: LineSheet): string {
  if (pickup) {
    const beats = barTicks(metre) / beatTicks(sheet.metre);
    return Number.isInteger(beats * (isCompound(sheet.metre) ? 1 : 2))
      ? `(${beats})`
      : `(${metreName(metre)})`;
  }
  const known = before === undefined || before.pickup ? sheet.metre : before.metre;
  return sameMetre(metre, known) ? '' : `(${metreName(metre)})`;
}

/** The bar's number and ending at its beginning, how often it is played at its end. */
const head = (stretch: BarPart): string =>
  stretch.times === ''
    ? headOf(stretch)
    : headOf(stretch).padEnd(roomOf(stretch) - stretch.times.length - 1) + stretch.times;

const namingOf = ({ noteNames = 'letters' }: LineSheet): Naming => noteNames;

/** How the notes of a line are typed, bar by bar. */
function textsOf({ bars }: LineSheet): readonly (readonly NoteText[])[] {
  const exits = exitsOf(bars);
  return bars.map(({ notes }, bar) =>
    notes.map((sheetNote, index) => {
      const exit = exits[bar]?.[index] ?? null;
      const next = exit?.to && bars[exit.to.bar]?.notes[exit.to.note]?.note;
      return noteText(sheetNote, exit, !!next && midiOf(next.pitch) < midiOf(sheetNote.note.pitch));
    }),
  );
}

/**
 * Whether a pickup is counted as the end of a whole bar. Who reads it knows the header's metre alone, and needs a word
 * for every moment, which a sixteenth has in its own eighths only where beats are dotted.
 */
function countsOn(
  { notes, written }: LineSheet['bars'][number],
  whole: WrittenMetre,
  sheet: LineSheet,
): boolean {
  const hasWord = (tick: number): boolean =>
    tick >= barTicks(written.metre) || syllableAt(whole.metre, whole.from + tick) !== null;
  return (
    written.pickup &&
    sameMetre(whole.metre, sheet.metre) &&
    notes.every(({ note: { start, duration } }) => hasWord(start) && hasWord(start + duration))
  );
}

function barPartsOf(sheet: LineSheet, room: number): readonly BarPart[] {
  const ties = tiesOverBarLines(sheet);
  const texts = textsOf(sheet);
  const repeats = repeatSigns(sheet.chart);
  const strings = sheet.instrument.openStrings.length;
  const metres = writtenMetres(sheet.chart);
  return sheet.bars.flatMap((bar, index) => {
    const { written } = bar;
    const before = sheet.bars[index - 1]?.written;
    const after = sheet.bars[index + 1]?.written;
    const numbers = written.ending?.join(',') ?? '';
    const whole = metres[index];
    const counted =
      whole !== undefined && countsOn(bar, whole, sheet) ? whole : { metre: written.metre, from: 0 };
    const signs = { tiedIn: ties[index]?.from === true, texts: texts[index] ?? [], counted };
    const parts: Column[][] = [[]];
    for (const column of columnsOf(bar, strings, signs, namingOf(sheet))) {
      // Four signs are kept for what opens and closes a bar.
      if (widthOf([...(parts.at(-1) ?? []), column]) > room - 4) parts.push([]);
      parts.at(-1)?.push(column);
    }
    return parts.map((columns, part): BarPart => {
      const ends = part === parts.length - 1;
      const times = timesToSay(written);
      return {
        bar: written,
        columns,
        begins: part === 0,
        opens: repeats[index] === true,
        ends,
        times: ends
          ? [times === null ? '' : `x${times}`, ...waySigns(written, false)]
              .filter((part) => part !== '')
              .join(', ')
          : '',
        endsEnding: written.ending !== null && after?.ending === null,
        metre: metreText(written, before, sheet),
        ending: numbers !== '' && numbers !== before?.ending?.join(',') ? `${numbers}.` : '',
      };
    });
  });
}

/** Lines of music: up to four bars each, a new one at every section. */
function systemsOf(stretches: readonly BarPart[], room: number): readonly (readonly BarPart[])[] {
  const systems: BarPart[][] = [];
  for (const stretch of stretches) {
    const open = systems.at(-1);
    const used = open?.reduce((sum, one) => sum + roomOf(one), 0) ?? 0;
    const fits =
      open !== undefined &&
      open.at(-1)?.bar.section === stretch.bar.section &&
      open.filter((one) => one.ends).length < MOST_BARS &&
      used + roomOf(stretch) <= room;
    if (fits) open.push(stretch);
    else systems.push([stretch]);
  }
  return systems;
}

/** Each sign above its own column, however long the one before it is. */
function inPlace(columns: readonly Column[], sign: (column: Column) => string): string {
  let text = '';
  let start = 0;
  for (const column of columns) {
    if (sign(column) !== '') text = text.padEnd(start) + sign(column);
    start += column.width;
  }
  return text;
}

function printSystem(stretches: readonly BarPart[], labels: readonly string[]): readonly string[] {
  const margin = ' '.repeat(Math.max(...labels.map((label) => label.length)) + 1);
  const row = (text: (stretch: BarPart) => string): string =>
    (margin + stretches.map((stretch) => text(stretch).padEnd(roomOf(stretch))).join('')).trimEnd();
  const above = (sign: (column: Column) => string): string =>
    row((stretch) => ' '.repeat(opening(stretch).length) + inPlace(stretch.columns, sign));
  const strings = labels.map((label, string) => {
    const bars = stretches.map((stretch) => {
      const signs = stretch.columns.map((one) => (one.frets[string] ?? '').padEnd(one.width, '-')).join('');
      const filler = roomOf(stretch) - closing(stretch).length;
      return (opening(stretch) + signs).padEnd(filler, '-') + closing(stretch);
    });
    return `${label.padEnd(margin.length - 1)}|${bars.join('')}`.trimEnd();
  });
  const unless = (sign: (column: Column) => string): readonly string[] =>
    stretches.some(({ columns }) => columns.some((column) => sign(column) !== '')) ? [above(sign)] : [];
  return [
    row(head),
    above((column) => column.chord),
    ...unless((column) => column.over),
    ...strings,
    above((column) => column.count),
    ...unless((column) => column.under),
  ];
}

/** Words over the bars of a system, each with its bar. */
const wordsOver = (stretches: readonly BarPart[], { bars }: LineSheet): readonly string[] =>
  stretches.flatMap(({ bar, begins }) => {
    const words = begins ? bars.find(({ written }) => written === bar)?.words : undefined;
    return words === undefined ? [] : wrap(plainText(`${capitalised(barName(bar.number))}: ${words}`), WIDTH);
  });

/** What the header says of silences; a tab without it tells nothing of them. */
export const SILENCES = 'a minus where silence begins';

/** What the header says of names that could be taken for others. */
export const GERMAN_NAMES = 'Note names are German: H is a half step below C, B a half step below H.';

function headerOf(sheet: LineSheet, lessonTitle: string): readonly string[] {
  const key = sheet.bars.length === 0 ? sheet.key : keyAt(sheet, 0);
  const swung = swingsEighths(sheet) ? ', eighths swung' : '';
  const naming = namingOf(sheet);
  return [
    lessonTitle,
    sheet.name,
    `${describeKeyIn(naming, key)}, ${metreName(sheet.metre)}, ${tempoWords(sheet, sheet.tempo)}, ${sheet.feel.name}${swung}`,
    `Tuning, lowest string first: ${writeTuning(sheet.instrument.openStrings, naming)}. The lowest line is the lowest string.`,
    `Counting stands below; a dot is a beat that is not struck, ${SILENCES}, x a dead note.`,
    ...(naming === 'german' ? [GERMAN_NAMES] : []),
    ...legendOf(sheet),
  ].flatMap((line) => wrap(plainText(line), WIDTH));
}

/**
 * A line as text tab, as players post it: fixed-width lines of at most 80 signs with bar numbers, chords, strings
 * and counting, `:` at repeats, endings by their numbers. It uses signs of every keyboard, except where a person
 * typed others.
 */
export function writeTextTab(sheet: LineSheet, lessonTitle: string): string {
  const labels = sheet.instrument.openStrings.map((pitch) => plainText(formatNameIn(namingOf(sheet), pitch)));
  const room = WIDTH - Math.max(...labels.map((label) => label.length)) - 1;
  const systems = systemsOf(barPartsOf(sheet, room), room);
  let section = -1;
  let key = sheet.bars.length === 0 ? sheet.key : keyAt(sheet, 0);
  const music = systems.flatMap((stretches) => {
    const [first] = stretches;
    const opens = first !== undefined && first.bar.section !== section && first.begins;
    section = first?.bar.section ?? section;
    const name = opens ? (sheet.chart.sections[section]?.name ?? null) : null;
    const own = first?.bar.key ?? sheet.key;
    const heading = [
      ...(name === null ? [] : [`[${plainText(name)}]`]),
      ...(sameKey(own, key) ? [] : [plainText(describeKeyIn(namingOf(sheet), own))]),
    ];
    key = own;
    return [
      '',
      ...(heading.length === 0 ? [] : wrap(heading.join(' '), WIDTH)),
      ...wordsOver(stretches, sheet),
      ...printSystem(stretches, labels),
    ];
  });
  return `${[...headerOf(sheet, lessonTitle), ...music].join('\n')}\n`;
}
