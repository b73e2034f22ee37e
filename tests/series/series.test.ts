import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  parseLesson,
  printLesson,
  SAMPLE_TITLES,
  sampleLesson,
  transposeLesson,
} from '../../src/core/lesson';
import { LEVELS, levelLimits, TECHNIQUE_ROWS, TECHNIQUES } from '../../src/core/line';
import {
  addWeek,
  isShown,
  type LessonShown,
  lessonFrom,
  markThing,
  moveWeek,
  proposals,
  proposalWords,
  type ReadWeek,
  removeWeek,
  seriesTable,
  shownBy,
  thingKey,
  thingName,
} from '../../src/core/series';
import { newSeries, readEntry, type Thing } from '../../src/core/students';
import { composedLesson } from './composed';

const read = (things: readonly Thing[], tempo = 120): LessonShown => ({
  things,
  difficulty: { asked: 2, measured: 2, notesPerSecond: 2, tempo },
});

const week = (title: string, things: readonly Thing[] | null, marks: ReadWeek['marks'] = []): ReadWeek => ({
  lesson: title,
  version: null,
  title,
  marks,
  read: things === null ? null : read(things),
});

const technique = (name: string): Thing => ({ kind: 'technique', name });
const degree = (name: string): Thing => ({ kind: 'degree', name });
const key = (name: string): Thing => ({ kind: 'key', name });
const position = (name: string): Thing => ({ kind: 'position', name });
const feel = (name: string): Thing => ({ kind: 'feel', name });

const anyThing: fc.Arbitrary<Thing> = fc.oneof(
  fc.constantFrom(...TECHNIQUES).map(technique),
  fc.constantFrom('R', '5', '8', '3', '♭3', '6', '♭7').map(degree),
  fc.constantFrom('C major', 'G major', 'B♭ major', 'A minor', 'D dorian').map(key),
  fc.constantFrom('1', '3', '5').map(position),
  fc.constantFrom('early-ska', 'rocksteady', 'waltz').map(feel),
);
const anyThings = fc.uniqueArray(anyThing, { maxLength: 8, selector: thingKey });
const anyWeek: fc.Arbitrary<ReadWeek> = fc.record({
  lesson: fc.string({ minLength: 1, maxLength: 5 }),
  version: fc.constant(null),
  title: fc.string({ maxLength: 10 }),
  marks: fc
    .uniqueArray(anyThing, { maxLength: 3, selector: thingKey })
    .chain((things) =>
      fc.tuple(...things.map((thing) => fc.boolean().map((shown) => ({ ...thing, shown })))),
    ),
  read: fc.option(
    anyThings.map((things) => read(things)),
    { nil: null },
  ),
});
const anyWeeks = fc.array(anyWeek, { maxLength: 8 });

describe('what a lesson shows', () => {
  it('is read off its notes, not off what is ticked', () => {
    const shown = shownBy(composedLesson('roots', { level: 0, chart: '| C | Am | F | G |' }));
    expect(shown?.things.filter(({ kind }) => kind === 'degree')).toEqual([degree('R')]);
    expect(shown?.things).toContainEqual(key('C major'));
    expect(shown?.things).toContainEqual(feel('early-ska'));
    expect(shown?.things).not.toContainEqual(technique('scale steps'));
    expect(shown?.difficulty).toMatchObject({ asked: 0, measured: 0 });
  });

  it('is in the key and the positions in which it stands now', () => {
    const lesson = composedLesson('moved', { level: 3 });
    const moved = shownBy(transposeLesson(lesson, { steps: 2, halfSteps: 3 }));
    expect(moved?.things).toContainEqual(key('E♭ major'));
    expect(moved?.things).not.toContainEqual(key('C major'));
    const degrees = (shown: LessonShown | null) => shown?.things.filter(({ kind }) => kind === 'degree');
    expect(degrees(moved)).toEqual(degrees(shownBy(lesson)));
  });

  it('is nothing where no note is written', () => {
    expect(shownBy({ ...composedLesson('empty', { chart: 'C' }), pieces: [] })).toBeNull();
  });

  it('has only techniques that the analysis finds in two bars at least', () => {
    for (const index of SAMPLE_TITLES.keys()) {
      const things = shownBy(sampleLesson(index, 'sample'))?.things ?? [];
      expect(things.filter(({ kind }) => kind === 'technique').length).toBeGreaterThan(0);
      expect(new Set(things.map(thingKey)).size).toBe(things.length);
    }
  });
});

describe('the table of a term', () => {
  it('says when a thing was new, when it came again and when it was left out', () => {
    const rows = seriesTable([
      week('One', [technique('chord tones'), key('C major')]),
      week('Two', [technique('scale steps'), technique('chord tones'), key('F major')]),
      week('Three', [technique('scale steps')]),
    ]);
    expect(rows.map(({ thing, cells }) => [thing.name, ...cells])).toEqual([
      ['chord tones', 'new', 'again', 'none'],
      ['scale steps', 'none', 'new', 'again'],
      ['C major', 'new', 'none', 'none'],
      ['F major', 'none', 'new', 'none'],
    ]);
  });

  it('takes the teacher’s word against the notes, and lets it go again', () => {
    const empty = newSeries('series', 'Autumn', null);
    const one = addWeek(empty, { lesson: 'one', version: null, title: 'One' });
    if (one === null) throw new Error('There is room for a first week.');
    const octave = technique('octave');
    const marked = markThing(one, 0, octave, true);
    const readWeeks = (series: typeof marked) =>
      series.weeks.map((each) => ({ ...each, read: read([technique('chord tones')]) }));
    expect(readWeeks(marked).map((each) => isShown(each, octave))).toEqual([true]);
    expect(seriesTable(readWeeks(marked)).find(({ thing }) => thing.name === 'octave')?.marked).toEqual([
      true,
    ]);
    const denied = markThing(marked, 0, technique('chord tones'), false);
    expect(readWeeks(denied).map((each) => isShown(each, technique('chord tones')))).toEqual([false]);
    expect(markThing(markThing(denied, 0, octave, null), 0, technique('chord tones'), null)).toEqual(one);
  });

  it('has each thing new once at most, and shown whenever the week shows it', () => {
    fc.assert(
      fc.property(anyWeeks, (weeks) => {
        for (const { thing, cells } of seriesTable(weeks)) {
          expect(cells.filter((cell) => cell === 'new').length).toBeLessThanOrEqual(1);
          expect(cells.map((cell) => cell !== 'none')).toEqual(weeks.map((each) => isShown(each, thing)));
          if (cells.includes('again')) expect(cells.indexOf('new')).toBeLessThan(cells.indexOf('again'));
        }
      }),
    );
  });
});

describe('what next week could bring', () => {
  it('is the same once more where it was reached too slowly, or something is to be mended', () => {
    const weeks = [week('One', [technique('chord tones')]), week('Ferry', [technique('scale steps')])];
    const [first] = proposals(weeks, 3, { tempo: 80, mend: 'the rest in bar 4.' });
    expect(first && proposalWords(first, weeks, 'letters')).toBe(
      'Week 2, “Ferry” once more, with nothing new: it was reached at 80 of 120 bpm, and to mend is: the rest in bar 4.',
    );
    expect(proposals(weeks, 3, { tempo: 110, mend: '' })[0]?.kind).toBe('new');
    expect(proposals(weeks, 3, null).some(({ kind }) => kind === 'again')).toBe(false);
  });

  it('goes to the kind that had nothing new for longest', () => {
    const weeks = [
      week('One', [
        technique('chord tones'),
        degree('R'),
        degree('5'),
        key('C major'),
        position('1'),
        feel('rocksteady'),
      ]),
      week('Two', [technique('octave'), degree('8'), key('C major'), position('2'), feel('one-drop')]),
    ];
    const [first] = proposals(weeks, 3, null);
    expect(first).toMatchObject({ kind: 'new', thing: { kind: 'key' }, since: 1 });
    expect(first && proposalWords(first, weeks, 'fixed do')).toBe(
      'One new thing, the key of Sol major: of keys nothing was new for 1 week.',
    );
  });

  it('is a key next to those that were shown, on the circle of fifths', () => {
    const keyAfter = (...shown: string[]) =>
      proposals(
        shown.map((name) => week(name, [key(name)])),
        3,
        null,
      ).flatMap((each) => (each.kind === 'new' && each.thing.kind === 'key' ? [each.thing.name] : []))[0];
    expect(keyAfter('G major')).toBe('C major');
    expect(keyAfter('C major', 'G major')).toBe('F major');
    expect(keyAfter('A minor')).toBe('E minor');
    expect(keyAfter('B♭ major')).toBe('F major');
  });

  it('is never shown before, is one that the level has, and is said in one sentence', () => {
    fc.assert(
      fc.property(anyWeeks, fc.constantFrom(...LEVELS), (weeks, level) => {
        const shown = new Set(
          seriesTable(weeks).flatMap(({ thing, cells }) => (cells.includes('new') ? [thingKey(thing)] : [])),
        );
        for (const proposal of proposals(weeks, level, null)) {
          expect(proposalWords(proposal, weeks, 'letters')).toMatch(/^[A-Z“].*\.$/);
          if (proposal.kind !== 'new') continue;
          const { thing } = proposal;
          expect(shown.has(thingKey(thing))).toBe(false);
          if (thing.kind === 'technique')
            expect(TECHNIQUE_ROWS.find((row) => row.technique === thing.name)?.from).toBeLessThanOrEqual(
              level,
            );
          if (thing.kind === 'position')
            expect(Number(thing.name) + 3).toBeLessThanOrEqual(levelLimits(level).highestFret);
        }
      }),
    );
  });

  it('is the next level where the level has no technique and no degree left', () => {
    const all = [technique('chord tones'), ...['R'].map(degree)];
    const techniques = TECHNIQUE_ROWS.filter(({ from }) => from === 0).map((row) => technique(row.technique));
    expect(proposals([week('One', [...all, ...techniques])], 0, null).at(-1)).toEqual({
      kind: 'level',
      level: 1,
    });
  });
});

describe('a series', () => {
  it('can be kept and read again, whatever was done to it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(3), fc.nat(5), anyThing, fc.option(fc.boolean(), { nil: null })), {
          maxLength: 30,
        }),
        (steps) => {
          const series = steps.reduce(
            (standing, [what, at, thing, shown]) => {
              if (what === 0)
                return addWeek(standing, { lesson: `l${at}`, version: null, title: 'x' }) ?? standing;
              if (what === 1) return removeWeek(standing, at);
              return what === 2
                ? moveWeek(standing, at, at % 2 === 0 ? 1 : -1)
                : markThing(standing, at, thing, shown);
            },
            newSeries('series', 'Autumn', 'student-1'),
          );
          expect(readEntry(JSON.parse(JSON.stringify(series)))).toEqual({ ok: true, value: series });
        },
      ),
    );
  });

  it('keeps its weeks when they change places', () => {
    const titles = ['One', 'Two', 'Three'];
    const series = titles.reduce(
      (standing, title) => addWeek(standing, { lesson: title, version: null, title }) ?? standing,
      newSeries('series', 'Autumn', null),
    );
    const order = (each: typeof series) => each.weeks.map(({ title }) => title);
    expect(order(moveWeek(series, 0, 1))).toEqual(['Two', 'One', 'Three']);
    expect(order(moveWeek(series, 2, -1))).toEqual(['One', 'Three', 'Two']);
    expect(moveWeek(series, 0, -1)).toBe(series);
    expect(moveWeek(series, 2, 1)).toBe(series);
  });

  it('names things in the names that the lesson chose', () => {
    expect(thingName(key('B♭ major'), 'german')).toBe('B major');
    expect(thingName(position('5'), 'letters')).toBe('position V');
    expect(thingName(feel('one-drop'), 'letters')).toBe('One drop');
  });
});

describe('a lesson that starts from a proposal', () => {
  const last = composedLesson('last', { level: 3, feel: 'rocksteady' });
  const line = (lesson: typeof last) => lesson.pieces.find((piece) => piece.kind === 'line');
  const started = (thing: Thing) => lessonFrom(last, { kind: 'new', thing, since: null }, 'next');

  it('is for the same hand, level and feel, asks for the new thing, and leaves the tune to the teacher', () => {
    const lesson = started(technique('octave'));
    expect(line(lesson)).toMatchObject({
      feel: 'rocksteady',
      level: 3,
      chartText: '',
      hand: line(last)?.hand,
    });
    expect(line(lesson)?.techniques).toContain('octave');
    expect(line(lesson)?.aims).toEqual([{ where: { kind: 'line' }, wanted: ['octave'] }]);
    expect(line(started(key('E♭ major')))?.key).toEqual({
      tonic: { letter: 'E', alteration: -1 },
      mode: 'major',
    });
    expect(line(started(position('5')))?.aims).toEqual([{ where: { kind: 'line' }, position: 5 }]);
    expect(line(started(feel('one-drop')))?.feel).toBe('one-drop');
    expect(line(lessonFrom(last, { kind: 'level', level: 4 }, 'next'))?.level).toBe(4);
  });

  it('can be kept and read again', () => {
    fc.assert(
      fc.property(anyThing, (thing) => {
        const lesson = started(thing);
        expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
      }),
    );
  });
});
