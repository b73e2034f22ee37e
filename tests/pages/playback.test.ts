import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createPlayback, type PlaybackSource } from '../../src/app/pages/playing';
import { bpm, failure, type Result, success } from '../../src/core/base';
import {
  type Lesson,
  type PlayingSettings,
  setChartText,
  setFeel,
  setPlaying,
  setTitle,
} from '../../src/core/lesson';
import type { PlayStep } from '../../src/core/performance';
import type { Mix, Player, PlayerState, PlayPosition, PlayRequest } from '../../src/sound';
import { lessonOf, lineOf } from './lines';

type Answer = Result<null, string>;

/** A player that sounds nothing and writes down what it is asked for; its answers can be kept waiting. */
function fakePlayer() {
  const listeners = new Set<(state: PlayerState) => void>();
  const asked: string[] = [];
  const requests: PlayRequest[] = [];
  const changes: (readonly PlayStep[])[] = [];
  const mixes: Mix[] = [];
  const prepared: PlayStep[] = [];
  const answers: { play: Promise<Answer>; change: Promise<Answer> } = {
    play: Promise.resolve(success(null)),
    change: Promise.resolve(success(null)),
  };
  let state: PlayerState = { kind: 'stopped', fault: null };
  let place: PlayPosition | null = null;
  const become = (next: PlayerState): void => {
    state = next;
    for (const listener of listeners) listener(next);
  };
  const player: Player = {
    play: async (request) => {
      asked.push('play');
      requests.push(request);
      become({ kind: 'preparing' });
      const answer = await answers.play;
      become(answer.ok ? { kind: 'playing' } : { kind: 'stopped', fault: answer.problem });
      return answer;
    },
    prepare: (step) => {
      asked.push('prepare');
      prepared.push(step);
    },
    stop: () => {
      asked.push('stop');
      if (state.kind !== 'stopped') become({ kind: 'stopped', fault: null });
    },
    change: (steps) => {
      asked.push('change');
      changes.push(steps);
      return answers.change;
    },
    setMix: (mix) => {
      mixes.push(mix);
    },
    setFurtherDelay: () => {},
    position: () => place,
    output: () => null,
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    dispose: () => {},
  };
  const stand = (step: number, round: number, bar: number | null): void => {
    const now = (changes.at(-1) ?? requests.at(-1)?.steps)?.[step];
    if (now === undefined) return;
    const begins = now.begins ?? { rung: step, round: 0, playedBar: 0 };
    place = {
      place: { ...begins, round: begins.round + round, playedBar: bar ?? 0 },
      performance: now.performance,
      tick: 0,
      playedBar: bar,
      bar: bar === null ? null : (now.performance.bars[bar]?.bar ?? null),
    };
  };
  return { player, asked, requests, changes, mixes, prepared, answers, become, stand };
}

function deskOf(lesson: Lesson, open?: () => Promise<Player>) {
  const fake = fakePlayer();
  const lessons = createStore<{ readonly lesson: Lesson }>(() => ({ lesson }));
  const editor = createStore(() => ({ pieceId: 'piece-1' }));
  const source: PlaybackSource = { lessons, editor };
  const playback = createPlayback(source, open ?? (async () => fake.player));
  const edit = (command: (lesson: Lesson) => Lesson): void =>
    lessons.setState({ lesson: command(lessons.getState().lesson) });
  const id = lesson.pieces[0]?.id ?? '';
  const set = (change: Partial<PlayingSettings>): void => edit((now) => setPlaying(now, id, change));
  return { ...fake, playback, editor, edit, set, id };
}

/** The frames of the page, drawn by hand. */
const frames: (() => void)[] = [];
const frame = (): void => {
  for (const draw of frames.splice(0)) draw();
};

beforeEach(() => {
  vi.useFakeTimers();
  frames.length = 0;
  vi.stubGlobal('requestAnimationFrame', (draw: () => void) => frames.push(draw));
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('play', () => {
  test('plays the piece at hand with its parts', async () => {
    const { playback, requests } = deskOf(lessonOf({ playing: { organ: false, loop: true } }));
    await playback.play();
    expect(requests).toMatchObject([{ mix: { bass: true, organ: false }, steps: [{ rounds: 'endless' }] }]);
    expect(playback.getState()).toMatchObject({ kind: 'playing', fault: null, first: 0 });
  });

  test('says so where there is nothing to play, and opens no sound', async () => {
    const open = vi.fn();
    const { playback } = deskOf(lessonOf({ chart: '' }), open);
    await playback.play();
    expect(playback.getState()).toMatchObject({
      kind: 'stopped',
      fault: expect.stringMatching(/nothing to play/),
    });
    expect(open).not.toHaveBeenCalled();
  });

  test('a sound that cannot be fetched is a sentence, and is asked for again', async () => {
    const { player } = fakePlayer();
    const open = vi.fn<() => Promise<Player>>().mockRejectedValueOnce(new TypeError('Failed to fetch'));
    const { playback } = deskOf(lessonOf(), open.mockResolvedValue(player));
    await playback.play();
    expect(playback.getState()).toMatchObject({
      kind: 'stopped',
      fault: expect.stringMatching(/could not be loaded/),
    });
    await playback.play();
    expect(playback.getState()).toMatchObject({ kind: 'playing', fault: null });
    expect(open).toHaveBeenCalledTimes(2);
  });

  test('a device that cannot play is told in its own words, until the next attempt', async () => {
    const { playback, answers } = deskOf(lessonOf());
    answers.play = Promise.resolve(failure('No loudspeaker.'));
    await playback.play();
    expect(playback.getState()).toMatchObject({ kind: 'stopped', fault: 'No loudspeaker.' });
    answers.play = Promise.resolve(success(null));
    const again = playback.play();
    expect(playback.getState()).toMatchObject({ kind: 'preparing', fault: null });
    await again;
    expect(playback.getState()).toMatchObject({ kind: 'playing', fault: null });
  });

  test('a stop while the sound is fetched is a stop', async () => {
    let arrive = (_: Player): void => {};
    const { player, requests } = fakePlayer();
    const { playback } = deskOf(lessonOf(), () => new Promise((resolve) => (arrive = resolve)));
    const playing = playback.play();
    playback.stop();
    arrive(player);
    await playing;
    expect(requests).toEqual([]);
    expect(playback.getState().kind).toBe('stopped');
  });

  test('of two that overtake each other, the later one is played', async () => {
    let arrive = (_: Player): void => {};
    const fake = fakePlayer();
    const lesson = lessonOf();
    const { playback } = deskOf(lesson, () => new Promise((resolve) => (arrive = resolve)));
    const { piece, sheet } = lineOf(lesson);
    const all = playback.play();
    const idea = playback.hear(piece, sheet, 1, 'idea');
    arrive(fake.player);
    await Promise.all([all, idea]);
    expect(fake.requests.map(({ steps }) => steps[0]?.performance.bars.map(({ bar }) => bar))).toEqual([
      [0, 1, 2],
    ]);
    expect(playback.getState().heard).toMatchObject({ kind: 'idea', ideaId: 'idea' });
  });
});

describe('while it plays', () => {
  test('a part is switched at once, and nothing is computed anew', async () => {
    const { playback, set, mixes, changes } = deskOf(lessonOf());
    await playback.play();
    set({ drums: false });
    expect(mixes.at(-1)).toMatchObject({ drums: false, bass: true });
    expect(changes).toEqual([]);
  });

  test('tempo, loop and passage go on without a stop', async () => {
    const { playback, set, asked, changes } = deskOf(lessonOf());
    await playback.play();
    set({ tempoShare: 50 });
    set({ loop: true });
    set({ passage: { first: 2, last: 3 } });
    expect(
      changes.map(([step]) => [step?.performance.tempo, step?.rounds, step?.performance.bars.length]),
    ).toEqual([
      [63, 1, 4],
      [63, 'endless', 4],
      [63, 'endless', 2],
    ]);
    expect(asked).toEqual(['play', 'change', 'change', 'change']);
    expect(playback.getState()).toMatchObject({ kind: 'playing', first: 1 });
  });

  test('a change of title or notes changes nothing that is heard', async () => {
    const { playback, edit, asked } = deskOf(lessonOf());
    await playback.play();
    edit((lesson) => setTitle(lesson, 'Another'));
    expect(asked).toEqual(['play']);
  });

  test('a change that cannot be had is a sentence, and what plays goes on', async () => {
    const { playback, set, answers } = deskOf(lessonOf());
    await playback.play();
    answers.change = Promise.resolve(failure('Too large.'));
    set({ tempoShare: 50 });
    await vi.waitFor(() => expect(playback.getState().fault).toBe('Too large.'));
    expect(playback.getState().kind).toBe('playing');
    answers.change = Promise.resolve(success(null));
    set({ tempoShare: 60 });
    await vi.waitFor(() => expect(playback.getState().fault).toBe(null));
  });

  test('the answer to an overtaken change says nothing', async () => {
    const { playback, set, answers } = deskOf(lessonOf());
    await playback.play();
    let late = (_: Answer): void => {};
    answers.change = new Promise((resolve) => (late = resolve));
    set({ tempoShare: 50 });
    answers.change = Promise.resolve(success(null));
    set({ tempoShare: 60 });
    late(failure('Too late.'));
    await vi.advanceTimersByTimeAsync(10);
    expect(playback.getState()).toMatchObject({ kind: 'playing', fault: null });
  });

  test('it stops where the chart is emptied or the piece taken away', async () => {
    const { playback, edit, id, asked } = deskOf(lessonOf());
    await playback.play();
    edit((lesson) => setChartText(lesson, id, ''));
    vi.runOnlyPendingTimers();
    expect(asked).toEqual(['play', 'stop']);
    expect(playback.getState().kind).toBe('stopped');
  });

  test('a chart that is typed into is heard once the typing rests', async () => {
    const { playback, edit, id, changes } = deskOf(lessonOf({ chart: '| C | F |' }));
    await playback.play();
    for (const text of ['| C | F ', '| C | F | G', '| C | F | G |']) {
      edit((lesson) => setChartText(lesson, id, text));
      vi.advanceTimersByTime(120);
    }
    expect(changes).toHaveLength(0);
    vi.runOnlyPendingTimers();
    expect(changes).toHaveLength(1);
    expect(changes[0]?.[0]?.performance.bars).toHaveLength(3);

    edit((lesson) => setChartText(lesson, id, '| C | F | Am |'));
    playback.stop();
    vi.runOnlyPendingTimers();
    expect(changes).toHaveLength(1);
  });

  test('another feel is heard from the next bar on', async () => {
    const { playback, edit, id, asked } = deskOf(lessonOf());
    await playback.play();
    edit((lesson) => setFeel(lesson, id, 'steppers'));
    expect(asked).toEqual(['play', 'change']);
  });

  test('a device taken away ends it with a sentence, and the next Play goes on', async () => {
    const { playback, become } = deskOf(lessonOf());
    const ends: unknown[] = [];
    playback.follow((position) => ends.push(position));
    await playback.play();
    become({ kind: 'stopped', fault: 'The headphones are gone.' });
    expect(playback.getState()).toMatchObject({
      kind: 'stopped',
      fault: 'The headphones are gone.',
      bar: null,
    });
    expect(ends).toEqual([null]);
    await playback.play();
    expect(playback.getState()).toMatchObject({ kind: 'playing', fault: null });
  });
});

describe('the ladder', () => {
  const rungs = [60, 80, 100].map((tempo) => ({ tempo: bpm(tempo), rounds: 2 }));
  const climbing = () => deskOf(lessonOf({ playing: { ladder: { climbed: true, rungs } } }));

  test('where the student is on it can be followed', async () => {
    const { playback, requests, stand } = climbing();
    await playback.play();
    expect(requests[0]?.steps.map(({ performance }) => Number(performance.tempo))).toEqual([60, 80, 100]);
    stand(1, 1, 3);
    frame();
    expect(playback.getState()).toMatchObject({ step: 1, round: 1, bar: 3 });
  });

  test('a change goes on from the rung that is climbed', async () => {
    const { playback, set, changes, stand } = climbing();
    await playback.play();
    stand(1, 0, 0);
    frame();
    set({ passage: { first: 1, last: 2 } });
    expect(changes[0]?.map(({ performance }) => Number(performance.tempo))).toEqual([80, 100]);
    stand(1, 0, 0);
    frame();
    expect(playback.getState().step).toBe(2);
    set({ ladder: { climbed: false, rungs } });
    expect(changes[1]?.map(({ performance }) => Number(performance.tempo))).toEqual([126]);
  });
});

describe('a pause', () => {
  const barsOf = (steps: readonly PlayStep[] = []) =>
    steps.map(({ performance, rounds }) => [performance.bars.map(({ bar }) => bar), rounds]);

  test('goes on with the bar it was paused in, counted in, and then round as before', async () => {
    const { playback, requests, stand } = deskOf(lessonOf({ playing: { loop: true } }));
    await playback.play();
    stand(0, 3, 2);
    frame();
    playback.pause();
    expect(playback.getState()).toMatchObject({ kind: 'stopped', paused: { bar: 2 } });
    await playback.goOn();
    const [step] = requests[1]?.steps ?? [];
    expect(barsOf(requests[1]?.steps)).toEqual([[[2, 3], 'endless']]);
    expect(step?.again?.(1).bars.map(({ bar }) => bar)).toEqual([0, 1, 2, 3]);
    expect(step?.performance.countIn).toBe(4 * 960);
    expect(step?.again?.(1).countIn).toBe(0);
    expect(playback.getState()).toMatchObject({ kind: 'playing', paused: null });
    stand(0, 0, 0);
    frame();
    expect(playback.getState().round).toBe(3);
  });

  test('goes on with the second time of a bar that is repeated', async () => {
    const { playback, requests, stand } = deskOf(lessonOf({ chart: '|: C | F :| G |' }));
    await playback.play();
    stand(0, 0, 3);
    playback.pause();
    await playback.goOn();
    expect(barsOf(requests[1]?.steps)).toEqual([[[1, 2], 1]]);
  });

  test('goes on from the rung and the round that were climbed', async () => {
    const rungs = [60, 80].map((tempo) => ({ tempo: bpm(tempo), rounds: 2 }));
    const { playback, requests, stand } = deskOf(lessonOf({ playing: { ladder: { climbed: true, rungs } } }));
    await playback.play();
    stand(1, 1, 3);
    playback.pause();
    await playback.goOn();
    expect(requests[1]?.steps.map(({ performance, begins }) => [performance.tempo, begins])).toEqual([
      [80, { rung: 1, round: 1, playedBar: 3 }],
    ]);
  });

  test('is forgotten with Stop and with a new beginning', async () => {
    const { playback, requests, stand } = deskOf(lessonOf());
    await playback.play();
    stand(0, 0, 1);
    playback.pause();
    playback.stop();
    expect(playback.getState().paused).toBeNull();
    await playback.play(2);
    expect(barsOf(requests[1]?.steps)).toEqual([[[2, 3], 1]]);
  });
});

describe('a rest', () => {
  const TEN_MINUTES = 10 * 60 * 1000;

  test('is proposed after ten minutes without a break, not before, and only once it has gone on', async () => {
    const { playback, set } = deskOf(lessonOf({ playing: { loop: true } }));
    await playback.play();
    vi.advanceTimersByTime(TEN_MINUTES - 1000);
    set({ drums: false });
    expect(playback.getState().restDue).toBe(false);
    vi.advanceTimersByTime(1000);
    expect(playback.getState()).toMatchObject({ kind: 'playing', restDue: true });
    playback.stop();
    expect(playback.getState().restDue).toBe(false);
    vi.advanceTimersByTime(TEN_MINUTES);
    expect(playback.getState().restDue).toBe(false);
  });

  test('a stop begins the ten minutes anew', async () => {
    const { playback } = deskOf(lessonOf({ playing: { loop: true } }));
    await playback.play();
    vi.advanceTimersByTime(TEN_MINUTES - 1000);
    playback.stop();
    await playback.play();
    vi.advanceTimersByTime(TEN_MINUTES - 1000);
    expect(playback.getState().restDue).toBe(false);
  });
});

describe('what is made ready while nothing sounds', () => {
  const second = 1000;

  test('is what Play plays then, the very same steps', async () => {
    const { playback, asked, prepared, requests } = deskOf(lessonOf());
    playback.warmUp();
    await vi.waitFor(() => expect(asked).toEqual(['prepare']));
    await playback.play();
    expect(requests[0]?.steps[0]).toBe(prepared[0]);
  });

  test('is made anew when a change has rested for a second, and after each stop', async () => {
    const { playback, set, asked, prepared, requests } = deskOf(lessonOf());
    playback.warmUp();
    await vi.waitFor(() => expect(asked).toEqual(['prepare']));
    set({ tempoShare: 50 });
    vi.advanceTimersByTime(second - 1);
    set({ tempoShare: 60 });
    vi.advanceTimersByTime(second - 1);
    expect(prepared).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(prepared.map(({ performance }) => Number(performance.tempo))).toEqual([126, 76]);
    await playback.play();
    expect(requests[0]?.steps[0]).toBe(prepared[1]);
    set({ tempoShare: 100 });
    vi.advanceTimersByTime(second);
    expect(prepared).toHaveLength(2);
    playback.stop();
    vi.advanceTimersByTime(second);
    expect(prepared.map(({ performance }) => Number(performance.tempo))).toEqual([126, 76, 126]);
  });

  test('is what a pause goes on with', async () => {
    const { playback, stand, prepared, requests } = deskOf(lessonOf());
    await playback.play();
    stand(0, 0, 2);
    playback.pause();
    vi.advanceTimersByTime(second);
    await playback.goOn();
    expect(requests[1]?.steps[0]?.performance.bars.map(({ bar }) => bar)).toEqual([2, 3]);
    expect(requests[1]?.steps[0]).toBe(prepared[0]);
  });

  test('is nothing before the sound was fetched, nor once it is over', async () => {
    const { playback, editor, set, asked } = deskOf(lessonOf());
    set({ tempoShare: 50 });
    vi.advanceTimersByTime(second);
    expect(asked).toEqual([]);
    await playback.play();
    playback.stop();
    playback.end();
    editor.setState({ pieceId: 'piece-2' });
    vi.advanceTimersByTime(second);
    expect(asked).toEqual(['play', 'stop']);
  });

  test('is the other piece when one goes to that', async () => {
    const one = lessonOf();
    const [piece] = one.pieces;
    if (piece === undefined) throw new Error('A lesson has a piece.');
    const lesson = { ...one, pieces: [piece, { ...piece, id: 'piece-2', tempo: bpm(80) }] } as Lesson;
    const { playback, editor, asked, prepared } = deskOf(lesson);
    playback.warmUp();
    await vi.waitFor(() => expect(asked).toEqual(['prepare']));
    editor.setState({ pieceId: 'piece-2' });
    vi.advanceTimersByTime(second);
    expect(prepared.map(({ performance }) => Number(performance.tempo))).toEqual([126, 80]);
  });
});
