import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import {
  countOf,
  deriveSheet,
  type Lesson,
  newLesson,
  newLinePiece,
  type PlayingSettings,
  parseLesson,
  printLesson,
  setChartText,
  setCount,
  setPlaying,
  setTempo,
  toldBeat,
  toldTempo,
  writtenTempo,
} from '../../src/core/lesson';

const EMPTY = newLesson('lesson', 'Lesson');
const ID = EMPTY.pieces[0]?.id ?? '';
const withPlaying = (change: Partial<PlayingSettings>): Lesson =>
  setPlaying(setChartText(EMPTY, ID, '| C | F |'), ID, change);

const SETTINGS: readonly Partial<PlayingSettings>[] = [
  { bassPlan: { kind: 'every round' } },
  { bassPlan: { kind: 'every second round' } },
  { bassPlan: { kind: 'call and response', bars: 2 } },
  { clickPlan: { beats: 'two and four', dropOut: null } },
  { clickPlan: { beats: 'off-beats', dropOut: { sounding: 2, silent: 1 } } },
  { emptyBar: true, humanised: false },
  { intro: true, ending: false },
  { drumWay: 'snare on two and four' },
  { volumes: { bass: 40, click: 100 } },
  { tempoShare: 78.57 },
  { ladder: { climbed: true, rungs: [{ tempo: bpm(37.5), rounds: 3 }] } },
];

describe('the practice settings of a lesson', () => {
  test.each(SETTINGS)('come back from the lesson file as they were: %j', (change) => {
    const lesson = withPlaying(change);
    expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  });

  test('a lesson without them is a lesson', () => {
    const lesson = withPlaying({});
    expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  });

  test.each([
    [{ bassPlan: { kind: 'call and response', bars: 0 } }],
    [{ bassPlan: { kind: 'now and then' } }],
    [{ clickPlan: { beats: 'every beat', dropOut: { sounding: 0, silent: 1 } } }],
    [{ tempoShare: 5 }],
    [{ volumes: { bass: 0 } }],
    [{ volumes: { drums: 101 } }],
    [{ ladder: { climbed: true, rungs: [] } }],
    [{ ladder: { climbed: true, rungs: [{ tempo: 4000, rounds: 3 }] } }],
    [{ ladder: { climbed: true, rungs: [{ tempo: 80, rounds: 0 }] } }],
  ])('what no page could have made is refused with its place: %j', (change) => {
    const [piece] = withPlaying({}).pieces;
    const text = JSON.stringify({
      ...EMPTY,
      pieces: [{ ...piece, playing: { ...newLinePiece(ID, 'Line').playing, ...change } }],
    });
    expect(parseLesson(text)).toMatchObject({
      ok: false,
      problem: { kind: 'damaged', where: expect.stringContaining('playing') },
    });
  });
});

describe('music that is counted two ways', () => {
  const COMMON = { count: 4, unit: 4 } as const;

  test.each([
    // One-drop music: fast bpm = 2 × slow bpm (raggaemusicinfo.blogspot.com 2013/04).
    ['one-drop', 138, 'fast', 138, 960],
    ['one-drop', 138, 'slow', 69, 1920],
    ['one-drop', 139, 'slow', 69.5, 1920],
    ['steppers', 126, 'slow', 63, 1920],
    ['rocksteady', 84, 'slow', 84, 960],
    ['rocksteady', 84, 'fast', 168, 480],
    ['early-ska', 126, 'slow', 126, 960],
  ] as const)('%s at %i, told in the %s count', (feel, tempo, count, told, beat) => {
    const line = { feel, metre: COMMON, count };
    expect(toldTempo(line, tempo)).toBe(told);
    expect(toldBeat(line)).toBe(beat);
    expect(writtenTempo(line, told)).toBe(tempo);
  });

  test('a count that would cut a bar in two halves of a beat is not offered', () => {
    expect(countOf({ feel: 'one-drop', metre: COMMON })).toBe('fast');
    expect(countOf({ feel: 'one-drop', metre: { count: 3, unit: 4 }, count: 'slow' })).toBe(null);
    expect(countOf({ feel: 'rocksteady', metre: { count: 12, unit: 8 }, count: 'fast' })).toBe(null);
    expect(countOf({ feel: 'walking-swing', metre: COMMON, count: 'slow' })).toBe(null);
  });

  test('a tempo told in the fast count is kept to its half, and the sheet knows the count', () => {
    const lesson = setCount(setTempo(withPlaying({}), ID, 75.5), ID, 'fast');
    const [piece] = lesson.pieces;
    const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
    expect(sheet).toMatchObject({ kind: 'line', tempo: 75.5, count: 'fast' });
    expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  });
});
