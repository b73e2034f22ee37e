import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LineNote, midiOf, pitchClassOf, samePitch } from '../../src/core/base';
import {
  analyseLine,
  type BuildUpWish,
  buildUp,
  type LineNotes,
  type LineRequest,
  MOVABLE_THINGS,
  musicFindings,
  STAGE_THINGS,
  type Stage,
  type StageThing,
  stagesCounted,
  thingsOf,
} from '../../src/core/line';
import { composedWide } from './composed';
import { line, request } from './notation';
import { randomLines } from './random-lines';
import { wideWishes } from './wide-charts';

/** `STAGED_LINES=300` looks at so many lines. */
const MANY = process.env.STAGED_LINES;
const RUNS = { numRuns: Number(MANY ?? 24), seed: 20261129 };

interface Case {
  readonly asked: LineRequest;
  readonly bars: LineNotes;
}

const composedLines: fc.Arbitrary<Case> = wideWishes.map((wish) => {
  const { asked, line: made } = composedWide(wish);
  return { asked, bars: made.bars };
});

const startsOf = (notes: readonly LineNote[]): readonly number[] => notes.map(({ start }) => start);

/** Notes at the same places; their pitches alone may differ. */
const samePlaces = (one: LineNote, other: LineNote): boolean =>
  one.start === other.start && one.duration === other.duration;

/** Every pair of neighbours with what the second adds. */
const steps = (stages: readonly Stage[]) =>
  stages.slice(1).map((stage, index) => ({
    before: stages[index]?.bars ?? [],
    after: stage.bars,
    thing: stage.things[0],
  }));

/** The pitch classes of the chords over a bar, and over every bar that its last note may be tied into. */
function classesOver(asked: LineRequest, bar: number): ReadonlySet<number> {
  return new Set(
    (asked.chart.bars[bar]?.spans ?? []).flatMap(({ harmony }) =>
      harmony.kind === 'chord'
        ? [...harmony.chord.tones.map(({ name }) => pitchClassOf(name)), pitchClassOf(harmony.chord.bass)]
        : [],
    ),
  );
}

const isFill = (own: readonly LineNote[], note: LineNote): boolean =>
  note.start === 0 && (own[0]?.start ?? 0) > 0;

/** Whatever its order: a stage's notes are the line's or tones of the chord, in the line's places, and nothing is beyond the level that was not. */
function keepsLine({ asked, bars }: Case, stages: readonly Stage[]): void {
  // What a careful colleague says of the level, by bar, of the line itself.
  const beyond = (notes: LineNotes) =>
    new Set(
      musicFindings(asked, notes)
        .filter(({ kind }) => kind === 'level' || kind === 'fret')
        .flatMap(({ bar }) => bar ?? []),
    );
  const ownBeyond = beyond(bars);
  for (const stage of stages) {
    stage.bars.forEach((notes, bar) => {
      const own = bars[bar] ?? [];
      let end = 0;
      for (const note of notes) {
        expect(note.start).toBeGreaterThanOrEqual(end);
        end = note.start + note.duration;
        const twin = own.find((other) => samePlaces(other, note));
        if (twin === undefined) expect(isFill(own, note)).toBe(true);
        const theirs = twin !== undefined && samePitch(twin.pitch, note.pitch);
        const ofChord = [bar, ...(note.tiedOn ? asked.chart.bars.map((_, index) => index) : [])].some(
          (each) => classesOver(asked, each).has(midiOf(note.pitch) % 12),
        );
        expect(theirs || ofChord).toBe(true);
      }
    });
    expect([...beyond(stage.bars)].filter((bar) => !ownBeyond.has(bar))).toEqual([]);
  }
}

function checkStages({ asked, bars }: Case): void {
  const stages = buildUp(asked, bars);
  if (bars.every((notes) => notes.length === 0)) {
    expect(stages).toEqual([]);
    return;
  }
  expect(stages.at(-1)?.bars).toEqual(bars);
  expect(stages.length).toBeLessThanOrEqual(6);
  expect(stages.every(({ things }) => things.length === 1)).toBe(true);
  const things = stages.map(({ things: [thing] }) => thing);
  expect(things).toEqual(STAGE_THINGS.filter((thing) => things.includes(thing)));

  keepsLine({ asked, bars }, stages);
  for (const { before, after, thing } of steps(stages)) {
    before.forEach((notes, bar) => {
      differsIn(thing, notes, after[bar] ?? [], bars[bar] ?? []);
    });
  }
}

/** Bar by bar, what a thing may change and nothing else. */
function differsIn(
  thing: StageThing | undefined,
  before: readonly LineNote[],
  after: readonly LineNote[],
  own: readonly LineNote[],
): void {
  if (thing === 'rhythm' || thing === 'strong beats') {
    const kept = after.filter(({ start }) => startsOf(before).includes(start));
    expect(kept).toEqual(before);
  } else if (thing === 'silence on one') {
    expect(after).toEqual(before.filter((note) => !isFill(own, note)));
  } else {
    expect(startsOf(after)).toEqual(startsOf(before));
    after.forEach((note, index) => {
      const was = before[index];
      if (was === undefined) return;
      expect(samePlaces(note, was)).toBe(true);
      if (thing === 'touch') expect(note.pitch).toEqual(was.pitch);
      else expect(note.marks).toEqual(was.marks);
      // A pitch that changes becomes the line's.
      if (!samePitch(note.pitch, was.pitch))
        expect(own.some((each) => each.start === note.start && samePitch(each.pitch, note.pitch))).toBe(true);
    });
  }
}

describe('the stages of any line', () => {
  test('a composed one', () => {
    fc.assert(fc.property(composedLines, checkStages), { numRuns: Number(MANY ?? 12), seed: 20260213 });
  });

  test('any notes over any chart', () => {
    fc.assert(fc.property(randomLines, checkStages), RUNS);
  });

  test('in any order, with any of them left out, end with the line and name each thing once', () => {
    const wishes = fc.record({
      order: fc.shuffledSubarray([...MOVABLE_THINGS]),
      leftOut: fc.subarray([...STAGE_THINGS]),
    });
    fc.assert(
      fc.property(randomLines, wishes, ({ asked, bars }, wish) => {
        const stages = buildUp(asked, bars, wish);
        const things = thingsOf(asked, bars, wish);
        expect(stages.flatMap((stage) => stage.things)).toEqual(things);
        expect(new Set(things).size).toBe(things.length);
        if (things.length === 0) return;
        expect(stages.at(-1)?.bars).toEqual(bars);
        keepsLine({ asked, bars }, stages);
        for (const stage of stages.slice(0, -1)) expect(wish.leftOut).not.toContain(stage.things.at(-1));
      }),
      RUNS,
    );
  });

  test('the chord tones are where the analysis has them', () => {
    fc.assert(
      fc.property(composedLines, ({ asked, bars }) => {
        const stages = buildUp(asked, bars);
        const at = stages.findIndex(({ things }) => things.includes('chord tones'));
        const [before, after] = [stages[at - 1], stages[at]];
        if (!before || !after) return;
        const analysis = analyseLine(asked, bars);
        after.bars.forEach((notes, bar) => {
          for (const note of notes) {
            const was = before.bars[bar]?.find(({ start }) => start === note.start);
            if (was === undefined || samePitch(was.pitch, note.pitch)) continue;
            const index = (bars[bar] ?? []).findIndex(({ start }) => start === note.start);
            const tied = note.tiedOn === true;
            expect(tied || analysis[bar]?.notes[index]?.function === 'chord tone').toBe(true);
          }
        });
      }),
      { numRuns: Number(MANY ?? 12), seed: 20260213 },
    );
  });
});

describe('the stages of a line', () => {
  const CHART = '| C | F | G7 | C |';
  const LINE = 'C2 . E2 . G1 . E1 . | - . F1 A1 C2 . A1 . | G1 . B1 . D2 . B1 . | C2 . D2 . E2 . D2 .';
  const asked = request(CHART, { level: 3, feel: 'rocksteady' });
  const stages = buildUp(asked, line(LINE));

  test('come in the order in which a teacher builds it up', () => {
    expect(stages.map(({ things }) => things)).toEqual([
      ['roots'],
      ['rhythm'],
      ['chord tones'],
      ['silence on one'],
      ['steps and leads'],
    ]);
  });

  test.each([
    [0, 'C2 . - - - - - - | F1 . - - - - - - | G1 . - - - - - - | C2 . - - - - - -'],
    [1, 'C2 . C2 . C2 . C2 . | F1 . F1 F1 F1 . F1 . | G1 . G1 . G1 . G1 . | C2 . C2 . C2 . C2 .'],
    [2, 'C2 . E2 . G1 . E1 . | F1 . F1 A1 C2 . A1 . | G1 . B1 . D2 . B1 . | C2 . C2 . E2 . C2 .'],
    [3, 'C2 . E2 . G1 . E1 . | - . F1 A1 C2 . A1 . | G1 . B1 . D2 . B1 . | C2 . C2 . E2 . C2 .'],
    [4, LINE],
  ])('stage %i', (index, notes) => {
    expect(stages[index]?.bars).toEqual(line(notes));
  });

  test('a line of roots comes with its strong beats first', () => {
    const roots = line(
      'C2 . C2 . C2 . C2 . | F1 . F1 . F1 . F1 . | G1 . G1 . G1 . G1 . | C2 . C2 . C2 . C2 .',
    );
    expect(buildUp(asked, roots).map(({ things }) => things[0])).toEqual(['roots', 'strong beats', 'rhythm']);
  });

  test('another order', () => {
    const silentFirst = buildUp(asked, line(LINE), { order: ['silence on one', 'rhythm'] });
    expect(silentFirst.map(({ things }) => things[0])).toEqual([
      'roots',
      'silence on one',
      'rhythm',
      'chord tones',
      'steps and leads',
    ]);
    expect(silentFirst[1]?.bars[1]).toEqual(line('- - F1 - - - - -')[0]);
  });

  test('a push over the bar line is built from the root that it anticipates', () => {
    const pushed = line(
      'C2 . E2 . G1 . - F1~ | F1 . A1 . C2 . A1 . | G1 . B1 . D2 . B1 . | C2 . . . . . . .',
    );
    const rhythm = buildUp(asked, pushed)[1];
    expect(rhythm?.bars[0]).toEqual(line('C2 . C2 . C2 . - F1~')[0]);
  });

  test('a push round the end of the line stands at no stage on a root that the level does not have there', () => {
    const round = request('| E♭ | A7 |', { level: 3, feel: 'soul-backbeat', key: 'E♭' });
    const pushed = line('G1 . . . E♭2 . . . | A1 . . . - . G1~ .');
    const beyond = (notes: LineNotes) => musicFindings(round, notes).filter(({ kind }) => kind === 'level');
    expect(beyond(pushed)).toEqual([]);
    for (const { bars } of buildUp(round, pushed)) expect(beyond(bars)).toEqual([]);
  });

  test('a line of one root a bar has one stage, itself', () => {
    const whole = line('C2 . . . . . . . | F1 . . . . . . . | G1 . . . . . . . | C2 . . . . . . .');
    expect(buildUp(asked, whole)).toEqual([{ things: ['roots'], bars: whole }]);
  });

  test('few stages say why they are few', () => {
    const few = line('C2 . . . G1 . . . | F1 . . . C2 . . . | G1 . . . D2 . . . | C2 . . . G1 . . .');
    const counted = (wish?: BuildUpWish) =>
      stagesCounted(buildUp(asked, few, wish).length, thingsOf(asked, few).length);
    expect(thingsOf(asked, few)).toEqual(['roots', 'rhythm', 'chord tones']);
    expect(counted()).toBe('3 stages');
    expect(counted({ leftOut: ['rhythm'] })).toBe('Two stages: what is left out comes with the next');
    expect(counted({ leftOut: ['roots', 'rhythm'] })).toBe('One stage: what is left out comes with it');
    expect(stagesCounted(2, 2)).toBe('Two stages: the line has no more to add');
    expect(stagesCounted(1, 1)).toBe('One stage: the line is as simple as that');
  });
});
