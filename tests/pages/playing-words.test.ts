import { describe, expect, test } from 'vitest';
import { changeByKey } from '../../src/app/pages/playing/keys';
import { inShort, rungWords } from '../../src/app/pages/playing/words';
import { bpm } from '../../src/core/base';
import type { FeelId } from '../../src/core/feel';
import {
  type PlayingSettings,
  setCount,
  setFeel,
  setPlaying,
  setTempo,
  setTitle,
} from '../../src/core/lesson';
import { performanceOf, stepsOf } from '../../src/core/performance';
import { practiceTempo, soundsTheSame } from '../../src/core/playing';
import { lessonOf, lineOf } from './lines';

const line = (playing: Partial<PlayingSettings> = {}) => lineOf(lessonOf({ playing }));
const RUNGS = [
  { tempo: bpm(60), rounds: 2 },
  { tempo: bpm(90), rounds: 1 },
];

describe('the sentence in short', () => {
  const said = (playing: Partial<PlayingSettings>): string => {
    const { piece, sheet } = line(playing);
    return inShort(piece, sheet);
  };

  test.each<[Partial<PlayingSettings>, string]>([
    [{}, 'All bars, 126 bpm.'],
    [{ passage: { first: 2, last: 3 }, loop: true, tempoShare: 75 }, 'Bars 2 to 3, looped, 95 bpm.'],
    [{ bass: false, organ: false }, 'All bars, 126 bpm, without bass and organ.'],
    [{ bassPlan: { kind: 'every second round' } }, 'All bars, 126 bpm, the bass plays every second round.'],
    [
      { bassPlan: { kind: 'call and response', bars: 1 } },
      'All bars, 126 bpm, the bass plays one bar, then rests for one bar.',
    ],
    [
      { click: true, clickPlan: { beats: 'two and four', dropOut: { sounding: 2, silent: 1 } } },
      'All bars, 126 bpm, the click sounds on 2 and 4, out for one bar after every 2 bars.',
    ],
    [{ clickPlan: { beats: 'off-beats', dropOut: null } }, 'All bars, 126 bpm.'],
    [{ emptyBar: true }, 'All bars, 126 bpm.'],
    [{ emptyBar: true, loop: true }, 'All bars, looped, 126 bpm, an empty bar follows every round.'],
    [{ volumes: { drums: 60, bass: 100 } }, 'All bars, 126 bpm, drums at 60 %.'],
    [{ intro: true }, 'All bars, 126 bpm, an intro of one bar.'],
    [{ ending: false }, 'All bars, 126 bpm, no last hit.'],
    [{ ending: false, loop: true }, 'All bars, looped, 126 bpm.'],
    [{ humanised: false }, 'All bars, 126 bpm, everything falls exactly on the beat.'],
    [{ ladder: { climbed: true, rungs: RUNGS } }, 'All bars, up a ladder from 60 to 90 bpm.'],
    [{ ladder: { climbed: false, rungs: RUNGS } }, 'All bars, 126 bpm.'],
  ])('%j', (playing, words) => {
    expect(said(playing)).toBe(words);
  });

  test('tells the tempo in the chosen count', () => {
    const lesson = lessonOf({ feel: 'one-drop', tempo: 138 });
    const { piece, sheet } = lineOf(lesson);
    expect(inShort(piece, sheet)).toBe('All bars, 138 bpm in the fast count.');
    const slow = lineOf(setCount(lesson, piece.id, 'slow'));
    expect(inShort(slow.piece, slow.sheet)).toBe('All bars, 69 bpm in the slow count.');
  });

  test('says where on the ladder the student is', () => {
    const { piece } = line({ ladder: { climbed: true, rungs: RUNGS } });
    expect(rungWords(piece, 0, 1)).toBe('Rung 1 of 2: 60 bpm, time 2 of 2');
    const looped = line({ loop: true, ladder: { climbed: true, rungs: RUNGS } }).piece;
    expect(rungWords(looped, 1, 6)).toBe('Rung 2 of 2: 90 bpm, time 7');
    expect(rungWords(line().piece, 0, 0)).toBe('');
  });
});

describe('the tempo in force', () => {
  test('every whole number of beats a minute can be had', () => {
    for (let wanted = 63; wanted <= 190; wanted += 1) {
      const tempoShare = Math.round((wanted / 126) * 10_000) / 100;
      expect(practiceTempo(line({ tempoShare }).piece)).toBe(wanted);
    }
  });

  test('is whole in the count it is told in, and the piece’s own at 100 %', () => {
    const lesson = lessonOf({ feel: 'one-drop', tempo: 139, playing: { tempoShare: 75 } });
    const { piece } = lineOf(lesson);
    expect(practiceTempo(piece)).toBe(104);
    expect(practiceTempo(lineOf(setCount(lesson, piece.id, 'slow')).piece)).toBe(104);
    const whole = setPlaying(setTempo(lesson, piece.id, 139), piece.id, { tempoShare: 100 });
    expect(practiceTempo(lineOf(setCount(whole, piece.id, 'slow')).piece)).toBe(139);
  });
});

describe('what is played', () => {
  const steps = (playing: Partial<PlayingSettings>) => {
    const { piece, sheet } = line(playing);
    return stepsOf(piece, sheet);
  };
  const beats = (playing: Partial<PlayingSettings>): number[] =>
    steps(playing).map(
      ({ performance: { end, ending, countIn } }) => (Number(ending ?? end) - Number(countIn)) / 960,
    );

  test('once, or round and round', () => {
    expect(steps({}).map(({ rounds }) => rounds)).toEqual([1]);
    expect(steps({ loop: true }).map(({ rounds }) => rounds)).toEqual(['endless']);
  });

  test('up the ladder, counted in once; the last rung goes round in a loop', () => {
    const climbed = steps({ countIn: 2, ladder: { climbed: true, rungs: RUNGS } });
    expect(
      climbed.map(({ performance, rounds }) => [performance.tempo, performance.countIn, rounds]),
    ).toEqual([
      [60, 2 * 3840, 2],
      [90, 0, 1],
    ]);
    const looped = steps({ loop: true, ladder: { climbed: true, rungs: RUNGS } });
    expect(looped.map(({ rounds }) => rounds)).toEqual([2, 'endless']);
  });

  test('a last hit comes where nothing goes round, after the last round of all', () => {
    const hits = (playing: Partial<PlayingSettings>) =>
      steps(playing).map(({ performance }) => performance.ending);
    expect(hits({ countIn: 0 })).toEqual([4 * 3840]);
    expect(hits({ loop: true })).toEqual([null]);
    expect(hits({ ending: false })).toEqual([null]);
    const [first, last] = steps({ ladder: { climbed: true, rungs: [...RUNGS].reverse() } });
    expect(first?.performance.ending).toBeNull();
    expect(last?.performance.ending).toBeNull();
    expect(last?.again?.(1).ending).toBe(4 * 3840);
  });

  test('an intro comes once, at the very beginning', () => {
    const all = steps({ intro: true, countIn: 1, ladder: { climbed: true, rungs: RUNGS } });
    expect(all.map(({ performance }) => [performance.countIn, performance.intro])).toEqual([
      [2 * 3840, 3840],
      [0, 0],
    ]);
    expect(all[0]?.again?.(1).countIn).toBe(0);
  });

  test('every round is played anew, the same at every time, unless everything falls exactly on the beat', () => {
    const [endless] = steps({ loop: true, countIn: 0 });
    const drums = (round: number) =>
      endless
        ?.again?.(round)
        .events.flatMap((event) => (event.part === 'drums' ? [[event.sound, event.start]] : []));
    expect(drums(1)).not.toEqual(drums(2));
    expect(drums(2)).toEqual(drums(2));
    expect(endless?.again?.(0)).toEqual(endless?.performance);
    const { piece, sheet } = line({ loop: true, countIn: 0 });
    expect(performanceOf(piece, sheet, 'sound')).toEqual(endless?.performance);
    expect(steps({ loop: true, humanised: false })[0]?.again).toBeUndefined();
  });

  test('an empty bar comes between rounds only', () => {
    expect(beats({ emptyBar: true })).toEqual([16]);
    expect(beats({ emptyBar: true, loop: true })).toEqual([20]);
    expect(beats({ emptyBar: true, ladder: { climbed: true, rungs: RUNGS } })).toEqual([20, 16]);
  });

  test('bass and click follow their plans', () => {
    expect(beats({ bassPlan: { kind: 'every second round' } })).toEqual([32]);
    const clicks = steps({
      countIn: 0,
      clickPlan: { beats: 'two and four', dropOut: { sounding: 1, silent: 1 } },
    })[0]?.performance.events.flatMap((event) => (event.part === 'click' ? [event.start / 960] : []));
    expect(clicks).toEqual([1, 3, 9, 11]);
  });

  test('people are a little early or late, unless it is switched off; a file of notes stays on the grid', () => {
    const { piece, sheet } = line();
    const startsOf = (part: 'chops' | 'drums', performance: ReturnType<typeof performanceOf>) =>
      performance.events.flatMap((event) => (event.part === part ? [Number(event.start)] : []));
    const strict = lineOf(lessonOf({ playing: { humanised: false } }));
    const exact = performanceOf(strict.piece, strict.sheet, 'sound');
    const notes = performanceOf(piece, sheet, 'notes');
    expect(startsOf('chops', performanceOf(piece, sheet, 'sound'))).not.toEqual(startsOf('chops', exact));
    expect(startsOf('chops', notes)).toEqual(startsOf('chops', exact));
    // The drummer plays what is heard: more than the plain pattern, on its grid.
    const grid = new Set(startsOf('drums', notes).map((start) => start % 960));
    expect(startsOf('drums', notes)).not.toEqual(startsOf('drums', exact));
    expect(grid.size).toBeLessThanOrEqual(4);
  });

  test('only what is heard is computed again', () => {
    const lesson = lessonOf();
    const { piece } = lineOf(lesson);
    expect(soundsTheSame(piece, lineOf(setTitle(lesson, 'Another')).piece)).toBe(true);
    expect(soundsTheSame(piece, line({ drums: false }).piece)).toBe(false);
    const muted = lineOf(setPlaying(lesson, piece.id, { drums: false })).piece;
    expect(soundsTheSame(piece, muted)).toBe(true);
    for (const change of [{ emptyBar: true }, { humanised: false }, { tempoShare: 50 }, { loop: true }]) {
      expect(soundsTheSame(piece, lineOf(setPlaying(lesson, piece.id, change)).piece)).toBe(false);
    }
  });
});

/** What becomes of a setting: whether it changes the notes and times, and whether the sentence in short tells it. */
interface Change {
  readonly to: Partial<PlayingSettings>;
  readonly beside?: Partial<PlayingSettings>;
  /** In a feel that has it. */
  readonly feel?: FeelId;
  readonly heard: boolean;
  readonly said: boolean;
}

/** Each setting as it is not when nobody has changed it: the compiler asks for that of a new one. */
const CHANGES: { readonly [Name in keyof Required<PlayingSettings>]: Change } = {
  bass: { to: { bass: false }, heard: false, said: true },
  drums: { to: { drums: false }, heard: false, said: true },
  chops: { to: { chops: false }, heard: false, said: true },
  organ: { to: { organ: false }, heard: false, said: true },
  // What the click adds to the sound says for itself that it is there.
  click: { to: { click: true }, heard: false, said: false },
  volumes: { to: { volumes: { bass: 50 } }, heard: false, said: true },
  // Before the first bar, and gone by then.
  countIn: { to: { countIn: 2 }, heard: true, said: false },
  loop: { to: { loop: true }, heard: true, said: true },
  passage: { to: { passage: { first: 2, last: 3 } }, heard: true, said: true },
  tempoShare: { to: { tempoShare: 50 }, heard: true, said: true },
  bassPlan: { to: { bassPlan: { kind: 'every second round' } }, heard: true, said: true },
  clickPlan: {
    to: { clickPlan: { beats: 'two and four', dropOut: null } },
    beside: { click: true },
    heard: true,
    said: true,
  },
  emptyBar: { to: { emptyBar: true }, beside: { loop: true }, heard: true, said: true },
  intro: { to: { intro: true }, heard: true, said: true },
  ending: { to: { ending: false }, heard: true, said: true },
  drumWay: { to: { drumWay: 'kick on every eighth' }, feel: 'rockers', heard: true, said: true },
  humanised: { to: { humanised: false }, heard: true, said: true },
  ladder: { to: { ladder: { climbed: true, rungs: RUNGS } }, heard: true, said: true },
};

describe('every setting', () => {
  const played = ({ piece, sheet }: ReturnType<typeof line>) =>
    JSON.stringify(stepsOf(piece, sheet).map((step) => [step, step.again?.(1)]));

  test.each(Object.entries(CHANGES))(
    '%s is played, compared and said',
    (_, { to, beside = {}, feel, heard, said }) => {
      const plain = lessonOf({ playing: beside });
      const lesson = feel === undefined ? plain : setFeel(plain, lineOf(plain).piece.id, feel);
      const before = lineOf(lesson);
      const after = lineOf(setPlaying(lesson, before.piece.id, to));
      expect(played(after) !== played(before)).toBe(heard);
      expect(soundsTheSame(before.piece, after.piece)).toBe(!heard);
      expect(inShort(after.piece, after.sheet) !== inShort(before.piece, before.sheet)).toBe(said);
    },
  );
});

describe('the keys at Play and Stop', () => {
  const { piece, sheet } = line({ passage: { first: 2, last: 3 }, tempoShare: 78.57 });
  test.each([
    ['ArrowUp', { tempoShare: 85 }],
    ['ArrowDown', { tempoShare: 75 }],
    ['ArrowLeft', { passage: { first: 1, last: 2 } }],
    ['ArrowRight', { passage: { first: 3, last: 4 } }],
    ['r', { loop: true }],
    ['B', { bass: false }],
    ['c', { click: true }],
    ['x', null],
    ['Enter', null],
    ['constructor', null],
  ])('%s', (key, change) => {
    expect(changeByKey(key, piece, sheet)).toEqual(change);
  });

  test('the passage stays in the chart, and the tempo within its bounds', () => {
    const { piece: whole } = line();
    expect(changeByKey('ArrowRight', whole, sheet)).toBe(null);
    const last = line({ passage: { first: 3, last: 4 }, tempoShare: 200 });
    expect(changeByKey('ArrowRight', last.piece, last.sheet)).toBe(null);
    expect(changeByKey('ArrowUp', last.piece, last.sheet)).toEqual({ tempoShare: 200 });
  });
});
