/** What a bar was asked to become is true of its notes: the sentence is read again and held against before and after. */
import { describe, expect, it } from 'vitest';
import {
  barTicks,
  beatTicks,
  createRandom,
  type LineNote,
  midiNumber,
  midiOf,
  pitchClassOf,
  type Random,
  samePitch,
  ticks,
} from '../../src/core/base';
import { keyNames, scaleFor, spellMidi } from '../../src/core/theory';
import {
  announce,
  commandById,
  type Desk,
  type Done,
  deskOf,
  harmonyAt,
  lengthOf,
  notesIn,
  type Pencil,
  rhythmChoices,
} from '../../src/core/writing';
import { BAR_WISHES } from '../../src/core/writing/transform';
import { Hand } from './hand';

const CHARTS = [
  ['| F | Dm7 | Bbmaj7 C/E | N.C. | Gm7 | C7 |', 'F major'],
  ['(3/4) | Am | Dm/F E7 | F#m7b5 B7 | (4/4) Em | N.C. Am |', 'A minor'],
  ['(12/8) | E7 | A7/C# | (7/8) B7 | (5/4) E | (1/4) E7 |', 'E major'],
] as const;

const pick = <Each>(random: Random, all: readonly Each[]): Each => {
  const one = all[random.below(all.length)];
  if (one === undefined) throw new Error('nothing to pick');
  return one;
};

/** A bar of notes and silences on the grids that people write on, in and outside of the scale, on the whole neck. */
function randomNotes(random: Random, desk: Desk, bar: number): readonly LineNote[] {
  const length = lengthOf(desk, bar);
  const notes: LineNote[] = [];
  let midi = 28 + random.below(24);
  for (let at = 0; at < length; ) {
    const duration = Math.min(
      pick(random, [240, 480, 480, 960, 960, 320, 640, 720, 1440, 1920]),
      length - at,
    );
    midi = Math.min(62, Math.max(28, midi + random.below(11) - 5));
    if (random.next() < 0.8)
      notes.push({
        start: ticks(at),
        duration: ticks(duration),
        pitch: spellMidi(midiNumber(midi), { key: desk.key }),
      });
    at += duration;
  }
  const last = notes.at(-1);
  if (last === undefined || last.start + last.duration < length || random.next() < 0.5) return notes;
  return [...notes.slice(0, -1), { ...last, tiedOn: true }];
}

/** A line of random notes; where a bar ends in a tie, the next one begins with that pitch. */
function randomHand(random: Random, chart: string, key: string): Hand {
  const hand = new Hand(chart, key);
  const desk = deskNow(hand);
  let held: LineNote | undefined;
  const bars = desk.piece.bars.map((bar, index) => {
    const notes = randomNotes(random, desk, index);
    const [first, ...others] = notes;
    const tied =
      held?.tiedOn === true && first?.start === 0 ? [{ ...first, pitch: held.pitch }, ...others] : notes;
    held = tied.at(-1);
    return { ...bar, origin: 'hand' as const, kept: true, notes: tied };
  });
  // A tie into silence is none.
  const tidy = bars.map((bar, index) => {
    const next = bars[index + 1]?.notes[0];
    return {
      ...bar,
      notes: bar.notes.map((note) => (note.tiedOn === true && next?.start !== 0 ? untied(note) : note)),
    };
  });
  hand.lesson = {
    ...hand.lesson,
    pieces: hand.lesson.pieces.map((each) => (each === desk.piece ? { ...desk.piece, bars: tidy } : each)),
  };
  return hand;
}

const untied = ({ tiedOn: _, ...note }: LineNote): LineNote => note;

function deskNow({ lesson, pencil }: { lesson: Hand['lesson']; pencil: Pencil }): Desk {
  const desk = deskOf(lesson, pencil);
  if (desk === null) throw new Error('no line');
  return desk;
}

/** Half steps above C of the scale over the harmony at a tick. */
function scaleAt(desk: Desk, bar: number, tick: number): ReadonlySet<number> {
  const { chord, key } = harmonyAt(desk, { bar, tick });
  return new Set((chord === null ? keyNames(key) : scaleFor(chord, key).names).map(pitchClassOf));
}

interface Case {
  readonly desk: Desk;
  readonly bar: number;
  readonly before: readonly LineNote[];
  readonly after: readonly LineNote[];
}

const starts = (notes: readonly LineNote[]) => notes.map(({ start }) => start as number);
const midis = (notes: readonly LineNote[]) => notes.map(({ pitch }) => midiOf(pitch));

function beatsOf({ desk, bar }: Case): readonly number[] {
  const metre = desk.bars[bar]?.metre ?? desk.piece.metre;
  const beat = beatTicks(metre);
  return Array.from({ length: Math.max(1, Math.floor(barTicks(metre) / beat)) }, (_, index) => index * beat);
}

/** Whether each note's pitch is one of some names over its chord. */
const allAre = (
  { desk, bar, after }: Case,
  names: (
    chord: NonNullable<ReturnType<typeof harmonyAt>['chord']>,
  ) => readonly Parameters<typeof pitchClassOf>[0][],
) =>
  after.every(({ start, pitch }) => {
    const { chord } = harmonyAt(desk, { bar, tick: start });
    return chord !== null && names(chord).some((name) => pitchClassOf(name) === pitchClassOf(pitch));
  });

/** How many notes of a scale lie above one pitch, up to another. */
const stepsUp = (scale: ReadonlySet<number>, from: number, to: number): number => {
  let steps = 0;
  for (let midi = from + 1; midi <= to; midi += 1) if (scale.has(midi % 12)) steps += 1;
  return scale.has(to % 12) || to <= from ? steps : steps + 1;
};
const stepsDown = (scale: ReadonlySet<number>, from: number, to: number): number => {
  let steps = 0;
  for (let midi = from - 1; midi >= to; midi -= 1) if (scale.has(midi % 12)) steps += 1;
  return scale.has(to % 12) || to >= from ? steps : steps + 1;
};

function isInverted({ desk, bar, before, after }: Case, octave: number): boolean {
  const axis = midis(before)[0] ?? 0;
  const centre = axis + 12 * octave;
  return before.every(({ start, pitch }, index) => {
    const scale = scaleAt(desk, bar, start);
    const [was, is] = [midiOf(pitch), midis(after)[index] ?? 0];
    if (was === axis) return is === centre;
    return was > axis
      ? is < centre && stepsDown(scale, centre, is) === stepsUp(scale, axis, was)
      : is > centre && stepsUp(scale, centre, is) === stepsDown(scale, axis, was);
  });
}

/** The pitch that a bar leads to: the next bar's first note, else the nearest bass of its chord. */
function aimOf({ desk, bar, before }: Case): number {
  const next = (bar + 1) % desk.piece.bars.length;
  const opening = notesIn(desk, next)[0];
  if (opening !== undefined) return midiOf(opening.pitch);
  const { chord } = harmonyAt(desk, { bar: next, tick: 0 });
  const last = midis(before).at(-1) ?? 0;
  const basses = Array.from({ length: 40 }, (_, index) => 28 + index).filter(
    (midi) => chord !== null && midi % 12 === pitchClassOf(chord.bass),
  );
  return basses.reduce((best, midi) => (Math.abs(midi - last) < Math.abs(best - last) ? midi : best));
}

function leads(given: Case, how: string): boolean {
  const aim = aimOf(given);
  const last = midis(given.after).at(-1) ?? 0;
  const scale = scaleAt(given.desk, given.bar, lengthOf(given.desk, given.bar) - 1);
  const side = how.endsWith('below') ? last < aim : last > aim;
  const apart = Math.abs(last - aim);
  if (how.startsWith('by a half step')) return side && apart === 1;
  const between = Array.from({ length: apart - 1 }, (_, index) => Math.min(last, aim) + 1 + index);
  return side && scale.has(last % 12) && between.every((midi) => !scale.has(midi % 12));
}

const kept = ({ before, after }: Case, fewer: number) =>
  after.length === before.length - fewer &&
  after.every(({ start, pitch }) =>
    before.some((note) => note.start === start && samePitch(note.pitch, pitch)),
  );

function isEasier(easy: string, lost: number, given: Case): boolean {
  const { before, after } = given;
  const sameTimes = starts(after).join() === starts(before).join();
  switch (easy) {
    case 'on the beats':
      return (
        after.length === before.length - lost &&
        starts(after).every((start) => beatsOf(given).includes(start)) &&
        starts(before).some((start) => !beatsOf(given).includes(start))
      );
    case 'chord tones only':
      return sameTimes && allAre(given, ({ bass, tones }) => [bass, ...tones.map(({ name }) => name)]);
    case 'root and fifth only':
    case 'bass notes and fifths only':
      return (
        sameTimes &&
        allAre(given, ({ root, bass, tones }) => [
          easy.startsWith('root') ? root : bass,
          ...tones.filter(({ degree }) => degree.step === 5).map(({ name }) => name),
        ])
      );
    case 'roots only':
      return sameTimes && allAre(given, ({ root }) => [root]);
    case 'bass notes only':
      return sameTimes && allAre(given, ({ bass }) => [bass]);
    default:
      return false;
  }
}

/** Whether what was said of a bar is true; null where the sentence is none that is known here. */
function isTrue(said: string, given: Case): boolean | null {
  const { desk, bar, before, after } = given;
  const [, easy, gone] = /is easier: ([^,]+)(?:, (\d+) notes? fewer)?$/.exec(said) ?? [];
  if (easy !== undefined) return isEasier(easy, Number(gone ?? 0), given);
  const sameTimes = starts(after).join() === starts(before).join();
  if (said.endsWith('is busier: one more note'))
    return (
      after.length === before.length + 1 && starts(before).every((start) => starts(after).includes(start))
    );
  if (said.endsWith('is sparser: one note less')) return kept(given, 1);
  const one = / is silent on one: (.*)$/.exec(said)?.[1];
  if (one !== undefined) return silentOnOne(given, one);
  const octave = /is an octave (up|down)$/.exec(said)?.[1];
  if (octave !== undefined)
    return (
      sameTimes &&
      midis(after).every((midi, index) => midi - (midis(before)[index] ?? 0) === (octave === 'up' ? 12 : -12))
    );
  const turn = /is upside down around its first note(, an octave (up|down))?$/.exec(said);
  if (turn !== null)
    return sameTimes && isInverted(given, turn[2] === undefined ? 0 : turn[2] === 'up' ? 1 : -1);
  const [, back, how] = /leads on (back to bar 1 )?(.*)$/.exec(said) ?? [];
  if (how !== undefined)
    return (back !== undefined) === (bar + 1 === desk.piece.bars.length) && leads(given, how);
  return rhythmIsTrue(said, desk, bar, before, after);
}

function silentOnOne(given: Case, how: string): boolean {
  const { desk, bar, after } = given;
  const beat = beatsOf(given)[1] ?? 0;
  const [first] = after;
  if (first === undefined || first.start < beat) return false;
  const { chord } = harmonyAt(desk, { bar, tick: first.start });
  const sounding = pitchClassOf(first.pitch);
  const what = how.startsWith('the root')
    ? chord !== null && pitchClassOf(chord.root) === sounding
    : how.startsWith('the bass note')
      ? chord !== null && pitchClassOf(chord.bass) === sounding && pitchClassOf(chord.root) !== sounding
      : chord === null;
  return what && (how.endsWith('on two') ? first.start === beat : first.start < 2 * beat);
}

function rhythmIsTrue(
  said: string,
  desk: Desk,
  bar: number,
  before: readonly LineNote[],
  after: readonly LineNote[],
): boolean | null {
  const [, beginning, number, fewer] =
    /has (the beginning of )?the rhythm of (?:bar )?(\d+|the pickup)(?:, (\d+) notes? fewer)?$/.exec(said) ??
    [];
  if (number === undefined) return null;
  const from = desk.bars.findIndex((each) => String(each.number) === number);
  const length = lengthOf(desk, bar);
  const times = (notes: readonly LineNote[]) =>
    notes.map(({ start, duration }) => `${start}+${duration}`).join();
  const other = notesIn(desk, from);
  const cut = other
    .filter(({ start }) => start < length)
    .map((note) => ({ ...note, duration: ticks(Math.min(note.duration, length - note.start)) }));
  return (
    times(after) === times(beginning === undefined ? other : cut) &&
    (beginning !== undefined) === (times(cut) !== times(other)) &&
    Math.max(0, before.length - after.length) === Number(fewer ?? 0)
  );
}

/** No tie leads to another pitch or to nothing. */
function brokenTies(desk: Desk): number {
  return desk.piece.bars.filter(({ notes }, index) => {
    const last = notes.at(-1);
    const next = desk.piece.bars[index + 1]?.notes[0];
    return last?.tiedOn === true && (next?.start !== 0 || !samePitch(next.pitch, last.pitch));
  }).length;
}

/** What is said first, before what is at hand. */
const saidOf = (done: Done): string => announce(done).split('. ')[0] ?? '';

function expectTrue(hand: Hand, bar: number, done: Done): string | null {
  if (done.did.kind === 'refused') return null;
  const before = deskNow(hand);
  const after = deskNow(done);
  const said = saidOf(done);
  const given = { desk: before, bar, before: notesIn(before, bar), after: notesIn(after, bar) };
  const about = `${said}: ${JSON.stringify([harmonyAt(before, { bar, tick: 0 }).chord?.symbol, midis(given.before), starts(given.before), midis(given.after), starts(given.after)])}`;
  expect(isTrue(said, given), about).toBe(true);
  expect(brokenTies(after), about).toBe(0);
  for (const { start, duration } of given.after) {
    expect(start + duration, about).toBeLessThanOrEqual(lengthOf(before, bar));
  }
  return said.replace(/\d+/g, 'n').replace(/^Bar n /, '');
}

describe('what a bar was asked to become', () => {
  it.each(CHARTS)('is true of its notes: %s', (chart, key) => {
    const random = createRandom(chart.length);
    const said = new Map<string, number>();
    for (let round = 0; round < 4; round += 1) {
      let hand = randomHand(random, chart, key);
      expect(brokenTies(deskNow(hand))).toBe(0);
      for (let turn = 0; turn < 40; turn += 1) {
        const bar = random.below(deskNow(hand).piece.bars.length);
        hand.pencil = { ...hand.pencil, bar, tick: 0, next: null, from: null };
        const choices = rhythmChoices(deskNow(hand)).filter((each) => each.bar !== null);
        const gesture =
          choices.length > 0 && random.next() < 0.15
            ? pick(random, choices).gesture
            : commandById(`bar ${pick(random, BAR_WISHES)}`).gesture;
        const done = gesture(hand.lesson, hand.pencil);
        const sentence = expectTrue(hand, bar, done);
        if (sentence !== null) said.set(sentence, (said.get(sentence) ?? 0) + 1);
        hand = hand.take(done);
      }
    }
    // Every way of saying it was met.
    expect(said.size).toBeGreaterThan(12);
  });
});
