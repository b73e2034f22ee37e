import { type LineNote, midiOf } from '../../src/core/base';
import { type Lesson, linePiece, newLesson, setChartText, setKey } from '../../src/core/lesson';
import { parseKey } from '../../src/core/theory';
import { commandById, deskOf, newPencil, type Pencil, target } from '../../src/core/writing';

/** A line as a teacher has it in the fingers: a bar's notes as beat (from 1), length in beats, MIDI number. */
export interface GivenLine {
  readonly id: string;
  readonly feel: string;
  readonly level: number;
  readonly key: string;
  readonly chart: string;
  readonly bars: readonly (readonly (readonly [beat: number, length: number, midi: number])[])[];
}

interface Wanted {
  readonly start: number;
  readonly duration: number;
  readonly midi: number;
}

interface State {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
  /** Ids of the commands so far. */
  readonly done: readonly string[];
}

/** A lesson with the chart and key of a line, and no notes. */
function emptyLesson(line: GivenLine): { lesson: Lesson; pieceId: string } {
  const lesson = newLesson('lesson-1', line.id);
  const pieceId = lesson.pieces[0]?.id ?? '';
  const key = parseKey(line.key);
  if (!key.ok) throw new Error(line.key);
  return { lesson: setKey(setChartText(lesson, pieceId, line.chart), pieceId, key.value), pieceId };
}

const wantedIn = (bar: GivenLine['bars'][number]): readonly Wanted[] =>
  bar.map(([beat, length, midi]) => ({ start: (beat - 1) * 960, duration: length * 960, midi }));

const notesOf = ({ lesson, pencil }: State, bar: number): readonly LineNote[] =>
  linePiece(lesson, pencil.pieceId)?.bars[bar]?.notes ?? [];

function press(state: State, id: string): State | null {
  const done = commandById(id).gesture(state.lesson, state.pencil);
  return done.did.kind === 'refused'
    ? null
    : { lesson: done.lesson, pencil: done.pencil, done: [...state.done, id] };
}

const pressAll = (state: State, ids: readonly string[]): State | null =>
  ids.reduce<State | null>((at, id) => at && press(at, id), state);

const WRITING = ['1', '2', '3', '4', '5', '6', '7', '8'].map((digit) => `degree ${digit}`);
const MENDING: readonly (readonly string[])[] = [
  [],
  ['half up'],
  ['half down'],
  ['other way'],
  ['octave up'],
  ['octave down'],
  ['other way', 'half up'],
  ['other way', 'half down'],
  ['octave up', 'half down'],
  ['octave down', 'half up'],
];
const VALUES: readonly (readonly string[])[] = [
  [],
  ['shorter'],
  ['longer'],
  ['dot'],
  ['tie'],
  ['shorter', 'shorter'],
  ['longer', 'longer'],
  ['shorter', 'dot'],
  ['longer', 'dot'],
  ['tie', 'tie'],
];

/** How many keys a command is: one, and one for each key held with it. */
const weight = (id: string): number => (commandById(id).keys[0] ?? '').split(/\+(?=.)/).length;
export const cost = (ids: readonly string[]): number => ids.reduce((sum, id) => sum + weight(id), 0);

/** Of the states that write on alike, the cheapest ones. */
function best(states: readonly State[]): readonly State[] {
  const kept = new Map<string, State>();
  for (const state of states) {
    const { bar, tick, next, value, after } = state.pencil;
    const alike = JSON.stringify([bar, tick, next, value, after]);
    const other = kept.get(alike);
    if (other === undefined || cost(state.done) < cost(other.done)) kept.set(alike, state);
  }
  return [...kept.values()].sort((one, other) => cost(one.done) - cost(other.done)).slice(0, 3);
}

/** Every way of writing one note where the pencil writes next: its degree, what puts it right, its length. */
function writeNote(state: State, bar: number, note: Wanted): readonly State[] {
  const start = ({ start: at }: LineNote) => at === note.start;
  for (const mends of MENDING) {
    const found: State[] = [];
    for (const degree of WRITING) {
      const mended = pressAll(state, [degree, ...mends]);
      const written = mended && notesOf(mended, bar).find(start);
      if (!mended || !written || midiOf(written.pitch) !== note.midi) continue;
      for (const values of VALUES) {
        const valued = pressAll(mended, values);
        const long = valued && notesOf(valued, bar).find(start);
        if (valued && long?.duration === note.duration) found.push(valued);
      }
      break;
    }
    if (found.length > 0) return best(found);
  }
  return [];
}

const nextAt = ({ lesson, pencil }: State) => {
  const desk = deskOf(lesson, pencil);
  if (desk === null) throw new Error('no line');
  return target(desk);
};

/** Every way of being silent up to a tick. */
function silentUntil(state: State, bar: number, tick: number): readonly State[] {
  const at = nextAt(state);
  if (at.bar !== bar || at.tick >= tick) return at.bar === bar && at.tick === tick ? [state] : [];
  return VALUES.flatMap((values) => {
    const silent = pressAll(state, ['silence', ...values]);
    const end = silent && nextAt(silent);
    return silent && end && end.bar === bar && end.tick > at.tick && end.tick <= tick
      ? silentUntil(silent, bar, tick)
      : [];
  });
}

/** On to the next bar, where the bar at hand ends in silence. */
function toNextBar(state: State, bar: number): State | null {
  const isLast = linePiece(state.lesson, state.pencil.pieceId)?.bars[bar + 1] === undefined;
  return isLast || nextAt(state).bar > bar ? state : press(state, 'next bar');
}

const through = (
  states: readonly State[],
  wanted: readonly Wanted[],
  write: (state: State, note: Wanted) => readonly State[],
): readonly State[] => wanted.reduce((now, note) => best(now.flatMap((state) => write(state, note))), states);

const noteByNote = (state: State, bar: number, wanted: readonly Wanted[]): readonly State[] =>
  through([state], wanted, (now, note) =>
    best(silentUntil(now, bar, note.start)).flatMap((there) => writeNote(there, bar, note)),
  );

const sameRhythm = (notes: readonly LineNote[], wanted: readonly Wanted[]): boolean =>
  notes.length === wanted.length &&
  notes.every(
    (note, index) => note.start === wanted[index]?.start && note.duration === wanted[index]?.duration,
  );

/** With the arrow keys to a note of the bar. */
function toStart(state: State, bar: number, tick: number): State | null {
  let now: State | null = state;
  while (now !== null) {
    const at = nextAt(now);
    if (at.bar === bar && at.tick === tick) return now;
    if (at.bar > bar || (at.bar === bar && at.tick > tick)) return null;
    now = press(now, 'on');
  }
  return null;
}

const goAndWrite = (bar: number) => (state: State, note: Wanted) => {
  const there = toStart(state, bar, note.start);
  return there === null ? [] : writeNote(there, bar, note);
};

/** An earlier rhythm, then its degrees. */
function inRhythm(state: State, bar: number, wanted: readonly Wanted[]): readonly State[] {
  let now = press(state, 'rhythm');
  for (let again = 0; now !== null && again < 3 && !sameRhythm(notesOf(now, bar), wanted); again += 1) {
    now = press(now, 'rhythm');
  }
  if (now === null || !sameRhythm(notesOf(now, bar), wanted)) return [];
  return through([now], wanted, goAndWrite(bar));
}

/** The bar before by degree or as it is, then what is different in it. */
function repeated(state: State, bar: number, wanted: readonly Wanted[], id: string): readonly State[] {
  const now = press(state, id);
  if (now === null || !sameRhythm(notesOf(now, bar), wanted)) return [];
  const wrong = wanted.filter((note, index) => {
    const pitch = notesOf(now, bar)[index]?.pitch;
    return !pitch || midiOf(pitch) !== note.midi;
  });
  if (wrong.length === 0) return [now];
  // The bar that was repeated is at hand from its first note.
  const first = press(now, 'first');
  return first === null ? [] : through([first], wrong, goAndWrite(bar));
}

/** Enters a line from an empty chart; throws where the scheme has no way to one of its bars. */
export function enter(line: GivenLine): State {
  const { lesson, pieceId } = emptyLesson(line);
  const start: State = { lesson, pencil: newPencil(pieceId, 0), done: [] };
  const entered = line.bars.reduce<readonly State[]>(
    (states, given, bar) => {
      const wanted = wantedIn(given);
      const next = states.flatMap((state) =>
        [
          ...noteByNote(state, bar, wanted),
          ...inRhythm(state, bar, wanted),
          ...repeated(state, bar, wanted, 'repeat'),
          ...repeated(state, bar, wanted, 'repeat as is'),
        ].flatMap((written) => toNextBar(written, bar) ?? []),
      );
      if (next.length === 0) throw new Error(`${line.id}, bar ${bar + 1} cannot be entered`);
      return best(next).slice(0, 1);
    },
    [start],
  );
  const [cheapest] = entered;
  if (cheapest === undefined) throw new Error(line.id);
  return cheapest;
}
