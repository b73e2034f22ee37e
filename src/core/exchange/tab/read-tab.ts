import {
  barTicks,
  counted,
  failure,
  fret,
  type Metre,
  metreName,
  midiOf,
  type Result,
  type SpelledPitch,
  stringNumber,
  success,
} from '../../base';
import { CHART_METRES, chordsInLetters } from '../../chart';
import { readTuning, writeTuning } from '../../fretboard';
import { type Chord, type Naming, parseChord, parseNameIn } from '../../theory';
import { spelled } from '../midi/line-of';
import { keyByEar } from '../midi/signs';
import type { FoundBar, FoundChord, FoundNote } from '../reading/found';
import type { Remarks } from '../reading/remarks';
import type { ScoreRead } from '../reading/score-read';
import { readHeader, type TabHeader } from './header';
import { readBars, type WrittenBar } from './read-bars';
import { otherRows, ownRows } from './rows';
import { soundedIn } from './sounded';
import { type TabSystem, tabOf } from './systems';
import { mostCounted } from './times';

type Read<Value> = Result<Value, { readonly message: string }>;

/** The strings of a bass by their number, where a tab does not name them; the lowest first (common practice, no source). */
const UNNAMED: Readonly<Record<number, string>> = { 4: 'E A D G', 5: 'B E A D G', 6: 'B E A D G C' };

const NO_TAB = 'There is no line of tab with four to six strings in this text. Nothing was changed.';

const capital = (label: string): string => label.charAt(0).toUpperCase() + label.slice(1);

/** In which of the namings all the names of strings can be read. */
const namingOf = (labels: readonly string[], asked: Naming | null): Naming =>
  asked ??
  (['letters', 'german', 'fixed do'] as const).find((naming) =>
    labels.every((label) => parseNameIn(naming, capital(label)).ok),
  ) ??
  'letters';

/** The open strings, the highest first, by the names before the lines. */
function stringsOf(
  labels: readonly string[],
  naming: Naming,
  remarks: Remarks,
): Read<readonly SpelledPitch[]> {
  const named = labels.every((label) => label !== '');
  const text = named ? [...labels].reverse().map(capital).join(' ') : (UNNAMED[labels.length] ?? '');
  const read = readTuning(text, named ? naming : 'letters');
  if (!read.ok)
    return failure({
      message: `The names of the strings cannot be read. ${read.problem.message} Nothing was changed.`,
    });
  if (!named) remarks.say(`The strings have no names; they are taken for ${text}, the lowest first.`);
  return success(read.value);
}

/** The systems that have the strings of the first one; of the others it is said that they are left out. */
function alike(systems: readonly TabSystem[], odd: number, remarks: Remarks): readonly TabSystem[] {
  const strings = systems[0]?.labels.length;
  const kept = systems.filter(({ labels }) => labels.length === strings);
  const left = systems.length - kept.length;
  if (left > 0) {
    remarks.say(
      `${counted(left, 'line')} of tab with another number of strings ${left === 1 ? 'is' : 'are'} left out.`,
    );
  }
  if (odd > 0) {
    remarks.say(
      `${counted(odd, 'line')} that ${odd === 1 ? 'looks' : 'look'} like a string but ${odd === 1 ? 'belongs' : 'belong'} to no four to six strings ${odd === 1 ? 'is' : 'are'} left out.`,
    );
  }
  return kept;
}

/** The metre that other people's tab names before its first line, or counts; null where it does neither. */
function metreOf(lines: readonly string[], mostCounted: number): Metre | null {
  const named = lines.flatMap((line) =>
    [...line.matchAll(/(?<![\d/])(\d{1,2}\/\d)(?![\d/])/gu)].map(([, name]) => name),
  );
  const metre = CHART_METRES.find((each) => named.includes(metreName(each)));
  if (metre !== undefined) return metre;
  return CHART_METRES.find(({ count, unit }) => count === mostCounted && (unit === 4 || count > 5)) ?? null;
}

const chordNamed = (text: string, naming: Naming): Chord | null | undefined => {
  if (/^n\.?c\.?$/iu.test(text)) return null;
  const chord = parseChord(naming === 'letters' ? text : chordsInLetters(naming, text));
  return chord.ok ? chord.value : undefined;
};

const TEMPO =
  /(?:^|[^\d.])(\d{2,3})\s{0,2}bpm\b|\bbpm\s{0,2}[:=]?\s{0,2}(\d{2,3})\b|\btempo\s{0,2}[:=]?\s{0,2}(\d{2,3})\b/iu;

/** Quarter notes a minute, where a text says how many. */
function tempoOf(lines: readonly string[]): number | null {
  for (const line of lines) {
    const [, one, two, three] = TEMPO.exec(line) ?? [];
    const tempo = Number(one ?? two ?? three);
    if (tempo >= 30) return tempo;
  }
  return null;
}

/**
 * Finds the line in text tab: our own as it went out; of other people's the pitches, in time by their counting or by
 * where they stand between the bar lines.
 * @param most - bars that are read
 */
export function readTab(text: string, most: number, remarks: Remarks): Read<ScoreRead> {
  const { systems: all, odd, lines, begins } = tabOf(text);
  const [first] = all;
  if (first === undefined) return failure({ message: NO_TAB });
  const top = lines.slice(0, begins);
  const header = readHeader(top);
  const systems = alike(all, odd, remarks);
  const naming = namingOf(first.labels, header?.naming ?? null);
  const strings = stringsOf(first.labels, naming, remarks);
  if (!strings.ok) return strings;
  const areChords = (row: string): boolean =>
    row
      .trim()
      .split(/\s+/u)
      .every((word) => chordNamed(word, naming) !== undefined);
  const rowsOf = (system: TabSystem) => (header ? ownRows(system, header) : otherRows(system, areChords));
  const metre = header?.metre ?? metreOf(top, mostCountedIn(systems, rowsOf));
  const whole = readBars(
    systems,
    { own: header !== null, metre: metre ?? { count: 4, unit: 4 }, rowsOf },
    remarks,
  );
  if (whole.length > most) remarks.say(`A lesson has ${most} bars at most; the rest is left out.`);
  const bars = whole.slice(0, most);
  if (header === null) sayWhatIsAssumed(bars, metre, strings.value, remarks);
  const chordBars = chordsOf(bars, naming, remarks);
  return success({
    found: {
      ...aboutIt(header, top),
      tuning: { openStrings: strings.value },
      bars: foundBars(bars, { header, strings: strings.value, chords: chordBars }, remarks),
    },
    parts: { all: [{ id: 'tab', name: 'The tab' }], read: 'tab' },
    voices: { all: [{ id: 'all', name: 'All its notes' }], read: 'all' },
    chords: { all: [{ id: 'over', name: 'Chords over the tab' }], read: 'over' },
  });
}

const mostCountedIn = (
  systems: readonly TabSystem[],
  rowsOf: (system: TabSystem) => { readonly counting: string | null },
): number => Math.max(0, ...systems.map((system) => mostCounted(rowsOf(system).counting ?? '')));

function aboutIt(header: TabHeader | null, top: readonly string[]) {
  const words = top.filter((line) => line !== '');
  return {
    title: header?.title ?? null,
    name: header?.name ?? null,
    credits: header === null ? words : [],
    tempo: header?.tempo ?? tempoOf(words),
    swing: null,
    feel: header?.feel ?? null,
    own: header !== null,
    forBass: true,
  };
}

/** Says of other people's tab how its time was read. */
function sayWhatIsAssumed(
  bars: readonly WrittenBar[],
  metre: Metre | null,
  strings: readonly SpelledPitch[],
  remarks: Remarks,
): void {
  const uncounted = bars.filter(({ counted }) => !counted).length;
  remarks.say(`It is tab as text, read on the strings ${writeTuning(strings, 'letters')}, the lowest first.`);
  if (metre === null) remarks.say('The tab names no metre; 4/4 is taken.');
  if (uncounted > 0) {
    remarks.say(
      uncounted === bars.length
        ? 'The tab does not say when its notes come: where they stand between the bar lines is taken for it, on an even grid. Compare the rhythm with what you know.'
        : `${counted(uncounted, 'bar')} without a counting ${uncounted === 1 ? 'is' : 'are'} read on an even grid, by where the notes stand.`,
    );
  }
  remarks.say(
    'The tab does not say how long its notes are: each goes on to the next one, or to the end of its bar.',
  );
}

/** The chords over each bar; a word that is none is named. */
function chordsOf(
  bars: readonly WrittenBar[],
  naming: Naming,
  remarks: Remarks,
): readonly (readonly FoundChord[])[] {
  return bars.map(({ chords }, bar) =>
    chords.flatMap(({ at, text }): readonly FoundChord[] => {
      const chord = chordNamed(text, naming);
      if (chord !== undefined) return [{ at, chord }];
      remarks.inBar(`“${text}” is no chord that is known; N.C. stands in its place`, bar);
      return [{ at, chord: null }];
    }),
  );
}

interface Beside {
  readonly header: TabHeader | null;
  readonly strings: readonly SpelledPitch[];
  readonly chords: readonly (readonly FoundChord[])[];
}

function foundBars(
  bars: readonly WrittenBar[],
  { header, strings, chords }: Beside,
  remarks: Remarks,
): readonly FoundBar[] {
  const frets = strings.map(() => 0);
  let dead = false;
  const heights = bars.map(({ notes }) =>
    notes.map((note) => {
      const open = strings[note.string - 1];
      const at = note.fret ?? frets[note.string - 1] ?? 0;
      dead ||= note.fret === null;
      frets[note.string - 1] = at;
      return { ...note, fret: at, midi: (open === undefined ? 0 : midiOf(open)) + at };
    }),
  );
  if (dead)
    remarks.say('Dead notes name no fret: each is written at the fret that was played before on its string.');
  const sounded = soundedIn(bars, heights, header?.silences ?? false, remarks);
  const flat = sounded.flatMap((notes, bar) =>
    notes.map(({ start, end, key }) => ({ start: bar * 10_000 + start, end: bar * 10_000 + end, key })),
  );
  const heard =
    header?.key ??
    keyByEar(
      chords.flat().map(({ chord }) => chord),
      flat,
    );
  let key = heard;
  const keys = bars.map((bar) => {
    key = bar.key ?? key;
    return key;
  });
  const chordAt = (bar: number, tick: number): Chord | null => {
    for (let index = bar; index >= 0; index -= 1) {
      const before = (chords[index] ?? []).findLast(({ at }) => index < bar || at <= tick);
      if (before) return before.chord;
    }
    return null;
  };
  const pitches = spelled(
    sounded,
    keys.map((each) => each ?? { tonic: { letter: 'C', alteration: 0 }, mode: 'major' }),
    chordAt,
  );
  return bars.map(
    (bar, index): FoundBar => ({
      metre: bar.metre,
      pickup: bar.pickup,
      length: barTicks(bar.metre),
      key: keys[index] ?? null,
      chords: chords[index] ?? [],
      notes: (pitches[index] ?? []).map((note, place): FoundNote => {
        const from = sounded[index]?.[place];
        if (from === undefined) return note;
        const marks = from.continued ? {} : from.marks;
        return {
          ...note,
          marks: Object.keys(marks).length === 0 ? null : marks,
          pins: { string: stringNumber(from.string), fret: fret(from.fret) },
        };
      }),
      section: bar.section,
      repeatStart: bar.repeatStart,
      repeatEnd: bar.repeatEnd,
      ending: bar.ending,
      ...(bar.dynamics.length === 0 ? {} : { dynamics: bar.dynamics }),
      ...(bar.words === null ? {} : { words: bar.words }),
      ...(bar.navigation.length === 0 ? {} : { navigation: bar.navigation }),
    }),
  );
}
