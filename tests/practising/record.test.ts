import { describe, expect, test } from 'vitest';
import {
  addEntry,
  closed,
  diaryText,
  EMPTY_RECORD,
  hear,
  hearingDelay,
  type LastPractice,
  lastWords,
  loadAfter,
  type Moment,
  NO_LOAD,
  type PracticeEntry,
  parseRecord,
  remember,
  restStanding,
  type Stretch,
  settingsOf,
  withHearingDelay,
} from '../../src/core/practising';
import { lessonOf, lineOf } from '../pages/lines';

const LAST: LastPractice = {
  day: '2026-11-28',
  lessonId: 'lesson',
  pieceId: 'piece-1',
  bass: false,
  drums: true,
  chops: true,
  organ: true,
  click: false,
  loop: true,
  passage: { first: 2, last: 3 },
  tempoShare: 75,
  rung: null,
};

const ENTRY: PracticeEntry = {
  day: '2026-11-28',
  lesson: 'Week 3',
  piece: 'Ferry queue',
  bars: 'bars 2 to 3',
  seconds: 40,
  rounds: 4,
  tempo: 90,
};

describe('what is remembered', () => {
  test('is read as it was written, and a lesson has one place', () => {
    const first = remember(EMPTY_RECORD, LAST);
    const second = remember(remember(first, { ...LAST, lessonId: 'other' }), { ...LAST, tempoShare: 80 });
    expect(second.last.map(({ lessonId, tempoShare }) => [lessonId, tempoShare])).toEqual([
      ['lesson', 80],
      ['other', 75],
    ]);
    const whole = addEntry(second, ENTRY);
    expect(parseRecord(JSON.stringify(whole))).toEqual(whole);
  });

  test('each input keeps its own delay, and one that was not measured has none', () => {
    const cable = withHearingDelay(EMPTY_RECORD, 'cable', 12);
    const both = withHearingDelay(withHearingDelay(cable, 'lid', 140), '', 90);
    expect(hearingDelay(both, 'cable')).toBe(12);
    expect(hearingDelay(both, 'lid')).toBe(140);
    expect(hearingDelay(both, '')).toBe(90);
    expect(hearingDelay(both, 'another')).toBe(null);
    expect(hearingDelay(cable, '')).toBe(null);
    expect(hearingDelay(withHearingDelay(both, 'cable', 15), 'cable')).toBe(15);
    expect(parseRecord(JSON.stringify(both))).toEqual(both);
  });

  test('the inputs that were measured last are kept, as many as are read again', () => {
    const names = Array.from({ length: 12 }, (_, index) => `${'long '.repeat(60)}${index}`.slice(-220));
    const many = names.reduce((record, name, index) => withHearingDelay(record, name, index), EMPTY_RECORD);
    expect(parseRecord(JSON.stringify(many))).toEqual(many);
    const few = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'].reduce(
      (record, name) => withHearingDelay(record, name, 10),
      EMPTY_RECORD,
    );
    expect(few.inputs?.map(({ input }) => input).join('')).toBe('ihgfedcb');
  });

  test('what is none is refused', () => {
    const spoilt = [
      'not JSON',
      '{}',
      'null',
      JSON.stringify({ ...EMPTY_RECORD, version: 2 }),
      JSON.stringify({ ...EMPTY_RECORD, diary: [{ ...ENTRY, seconds: -1 }] }),
      JSON.stringify({ ...EMPTY_RECORD, last: [{ ...LAST, day: 'yesterday' }] }),
    ];
    for (const text of spoilt) expect(parseRecord(text), text).toBeNull();
  });

  test('grows no further than its limits, whatever the lesson is called', () => {
    let record = EMPTY_RECORD;
    for (let index = 0; index < 400; index += 1) {
      record = remember(record, { ...LAST, lessonId: `${index}`.padEnd(300, 'x') });
      record = addEntry(record, { ...ENTRY, piece: `${index}`.padEnd(300, 'x') });
    }
    expect(parseRecord(JSON.stringify(record))).toEqual(record);
    expect(record.diary.at(-1)?.piece).toMatch(/^399/);
  });

  test('is said in words and played again', () => {
    const { piece, sheet } = lineOf(lessonOf());
    expect(lastWords(LAST, piece, sheet)).toBe(
      `${piece.name}, bars 2 to 3, 95 bpm, without the bass, on 28 November 2026`,
    );
    expect(settingsOf(LAST, piece)).toMatchObject({ bass: false, passage: { first: 2, last: 3 } });
  });
});

describe('the diary', () => {
  test('adds up what goes on on the same day, and leaves out a trial of the button', () => {
    const record = [
      ENTRY,
      { ...ENTRY, seconds: 60, rounds: 2, tempo: 95 },
      { ...ENTRY, seconds: 3 },
      { ...ENTRY, bars: 'all bars', seconds: 150, rounds: 0, tempo: null },
    ].reduce(addEntry, EMPTY_RECORD);
    expect(diaryText(record.diary)).toBe(
      [
        'Practice diary',
        '',
        '28 November 2026, Week 3',
        '  Ferry queue, bars 2 to 3: 2 minutes, 6 rounds to the end, the fastest at 95 bpm without stopping.',
        '  Ferry queue, all bars: 3 minutes, no round to its end.',
        '',
      ].join('\n'),
    );
  });
});

const moment = (at: number, round: number, playedBar: number | null, more: Partial<Moment> = {}): Moment => ({
  at,
  rung: 0,
  round,
  playedBar,
  notes: 4,
  breathes: false,
  tempo: 100,
  ending: false,
  ...more,
});

const play = (...moments: readonly Moment[]): Stretch => {
  const stretch = moments.reduce<Stretch | null>(hear, null);
  if (stretch === null) throw new Error('Nothing was played.');
  return stretch;
};

describe('what is played', () => {
  test('counts the notes of each bar once, and a round when the next one begins', () => {
    const stretch = play(
      moment(0, 0, null),
      moment(2, 0, 0),
      moment(3, 0, 0),
      moment(4, 0, 1),
      moment(6, 1, 0),
    );
    expect(stretch).toMatchObject({ notes: 12, rounds: 1, tempo: 100 });
  });

  test('a round is finished where it came to its last beat, not where it was broken off', () => {
    const broken = play(moment(0, 0, 0), moment(2, 0, 1));
    expect(closed(broken)).toMatchObject({ rounds: 0, tempo: null });
    const whole = play(moment(0, 0, 0), moment(2, 0, 1, { ending: true, tempo: 90 }));
    expect(closed(whole)).toMatchObject({ rounds: 1, tempo: 90 });
  });

  test('a bar with a silent beat ends a stretch without a rest', () => {
    const stretch = play(
      moment(0, 0, 0),
      moment(50, 0, 1),
      moment(60, 0, 2, { breathes: true }),
      moment(80, 0, 3),
    );
    expect(stretch.longest).toBe(50);
  });
});

describe('a rest', () => {
  const stretch = (began: number, seconds: number, notes: number, longest: number): Stretch => ({
    ...play(moment(began, 0, 0), moment(began + seconds, 0, 1)),
    notes,
    longest,
  });

  test('is proposed by the time, by the notes, and by how long there was none', () => {
    const load = (...stretches: readonly Stretch[]) =>
      restStanding(null, stretches.reduce(loadAfter, NO_LOAD));
    expect(load(stretch(0, 300, 300, 20))).toBeNull();
    expect(load(stretch(0, 600, 300, 20))).toMatch(
      /^Let the hand rest .*300 notes in 10 minutes without a break, 30 a minute\. .* Rest five to ten minutes in every hour\. Pain means stop\./,
    );
    expect(load(stretch(0, 300, 1300, 20))).toMatch(/1300 notes in 5 minutes/);
    expect(load(stretch(0, 300, 300, 200))).toMatch(/the longest stretch without a rest 3 minutes/);
    // Two halves with half a minute between them are one; with a minute between them the hand has rested.
    expect(load(stretch(0, 300, 300, 0), stretch(330, 300, 300, 0))).not.toBeNull();
    expect(load(stretch(0, 300, 300, 0), stretch(360, 300, 300, 0))).toBeNull();
  });

  test('stands with the figures it came with, goes after a break, and is said anew', () => {
    const tired = loadAfter(NO_LOAD, stretch(0, 600, 300, 20));
    const said = restStanding(null, tired);
    expect(said).toMatch(/300 notes in 10 minutes/);
    expect(restStanding(said, loadAfter(tired, stretch(610, 60, 90, 0)))).toBe(said);
    const rested = loadAfter(tired, stretch(720, 60, 90, 0));
    expect(restStanding(said, rested)).toBeNull();
    expect(restStanding(null, loadAfter(rested, stretch(785, 600, 210, 0)))).toMatch(
      /300 notes in 11 minutes/,
    );
  });
});
