import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedOfBlank, promptsFor, promptWords } from '../../src/core/asking';
import { barTicks, beatTicks, type LineNote, midiNumber, midiOf, ticks } from '../../src/core/base';
import { harmonyText } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  addPiece,
  type BlankPiece,
  type BlankPrompt,
  changeBarAims,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
  lineRequest,
  overChordsOf,
  parseLesson,
  printLesson,
  readPiece,
  type SheetBar,
  setAim,
  setBlankBars,
  setBlankPrompt,
  setLevel,
  transposeTo,
} from '../../src/core/lesson';
import { checkLine, LEVELS, musicFindings, TECHNIQUES, type Technique } from '../../src/core/line';
import { parseKey, spellMidi } from '../../src/core/theory';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

function parsedKey(text: string) {
  const key = parseKey(text);
  if (!key.ok) throw new Error(`Not a key: ${text}`);
  return key.value;
}

const CHARTS = [
  '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |',
  '(1) | C | Am | C | Dm | G7 | % |',
  '|: B♭ | N.C. | Cm7 F7 | B♭ |1. E♭ :|2. B♭ |',
  'Verse:\n| Em | Bm7♭5 |\nChorus: (key: A)\n| A | E5 |\nVerse',
  '| D♭ | <G♭ | A♭sus4 | D♭/F |',
  '(3/4) | G | Em | Am | D7 |',
];

/** With blank bars behind the line. */
const lessonOf = (typed: Parameters<typeof typedLesson>[1]): Lesson =>
  addPiece(typedLesson('own', typed), 'blank', null);

const blankIn = (lesson: Lesson): BlankPiece => {
  const piece = lesson.pieces.find((each): each is BlankPiece => each.kind === 'blank');
  if (piece === undefined) throw new Error('There are blank bars.');
  return piece;
};

const lessons = fc
  .record({
    chart: fc.constantFrom(...CHARTS),
    feel: fc.constantFrom<FeelId>('one-drop', 'rocksteady', 'soul-backbeat', 'early-ska'),
    level: fc.constantFrom(...LEVELS),
    techniques: fc.subarray([...TECHNIQUES]),
  })
  .map(lessonOf);

/** A silence is asked of every bar, anything else of one at least. */
const isOfEveryBar = (technique: Technique): boolean =>
  technique === 'beat one silent' || technique === 'long silences';

/** A line that does what the prompt asks, as the composer writes it over the same chords. */
function answered(lesson: Lesson, { wanted = [], ...terms }: BlankPrompt, bars: number): LinePiece {
  const line = linePiece(lesson, LINE);
  const written = line && overChordsOf(line, lesson, LINE, bars);
  if (written === null) throw new Error('There is a line with chords.');
  const inOne = wanted.filter((each) => !isOfEveryBar(each));
  const asked = setAim(written, LINE, { kind: 'line' }, { ...terms, wanted: inOne });
  const places = linePiece(asked, LINE)?.bars.map((_, index) => index) ?? [];
  const task = changeBarAims(asked, LINE, places, () => ({ wanted: wanted.filter(isOfEveryBar) }));
  const piece = linePiece(composePiece(task, LINE).lesson, LINE);
  if (piece === null) throw new Error('There is a line.');
  return piece;
}

/** What of a line is against the rules or beyond its level, in sentences. */
function faultsOf(lesson: Lesson, piece: LinePiece): readonly string[] {
  const { chart, key } = readPiece(piece);
  const request = lineRequest(piece, chart, key, lesson.instrument);
  const notes = piece.bars.map((bar) => bar.notes);
  return [
    ...musicFindings(request, notes).filter(({ kind }) => kind === 'level'),
    ...checkLine(request, notes),
  ].map(({ message }) => message);
}

/** Half steps above the root that a bar's chords have for some steps. */
const tonesOf = (bar: SheetBar, steps: readonly number[], at: number): readonly number[] => {
  const span = bar.written.spans.findLast(({ start }) => start <= at);
  if (span?.harmony.kind !== 'chord') return [];
  const { root, tones } = span.harmony.chord;
  const from = midiOf({ ...root, octave: 2 });
  return tones
    .filter(({ degree }) => steps.includes(degree.step))
    .map(({ name }) => (midiOf({ ...name, octave: 2 }) - from + 24) % 12);
};

/** Whether a bar keeps to some degrees, read from its pitches. */
const keepsTo = (bar: SheetBar, steps: readonly number[]): boolean =>
  bar.notes.every(({ note }) => {
    const span = bar.written.spans.findLast(({ start }) => start <= note.start);
    if (span?.harmony.kind !== 'chord') return false;
    const above = (midiOf(note.pitch) - midiOf({ ...span.harmony.chord.root, octave: 0 }) + 240) % 12;
    // The note behind a slash counts as the root.
    const { root, bass } = span.harmony.chord;
    const below = (midiOf({ ...bass, octave: 2 }) - midiOf({ ...root, octave: 2 }) + 12) % 12;
    return tonesOf(bar, steps, note.start).includes(above) || (steps.includes(1) && above === below);
  });

const soundsOnOne = ({ notes }: SheetBar): boolean => notes.some(({ note }) => note.start === 0);

const longestSilence = ({ notes, written }: SheetBar): number => {
  const ends = [0, ...notes.map(({ note }) => note.start + note.duration)];
  const starts = [...notes.map(({ note }) => Number(note.start)), barTicks(written.metre)];
  return Math.max(...starts.map((start, index) => start - (ends[index] ?? 0))) / barTicks(written.metre);
};

/** What of a prompt the bars of a line do not do. */
function missing({ degrees, silentOnes, wanted = [] }: BlankPrompt, { bars }: LineSheet): readonly string[] {
  const all = (does: (bar: SheetBar, index: number) => boolean) => bars.every(does);
  const does: Readonly<Record<Technique, boolean>> = {
    'chord tones': true,
    'beat one silent': all((bar) => !soundsOnOne(bar)),
    'long silences': all((bar) => longestSilence(bar) >= 0.5),
    octave: bars.some(({ analysis }) => analysis.techniques.includes('octave')),
    'scale steps': bars.some(({ analysis }) => analysis.techniques.includes('scale steps')),
    'approach note': bars.some(({ analysis }) => analysis.techniques.includes('approach note')),
    anticipation: bars.some(({ analysis }) => analysis.techniques.includes('anticipation')),
  };
  return [
    ...(all(({ notes }) => notes.length > 0) ? [] : ['notes']),
    ...(degrees === undefined || all((bar) => keepsTo(bar, degrees)) ? [] : ['degrees']),
    ...(silentOnes !== 'never' || all(soundsOnOne) ? [] : ['beat one']),
    ...(silentOnes !== 'every second bar' || all((bar, index) => soundsOnOne(bar) === (index % 2 === 0))
      ? []
      : ['every second one']),
    ...wanted.filter((technique) => !does[technique]),
  ];
}

/** Plain bars of one or two notes that keep to some degrees: from the first beat, from the second, from the middle. */
function plainBars(
  sheet: LineSheet,
  bar: SheetBar,
  steps: readonly number[],
): readonly (readonly LineNote[])[] {
  const { metre } = bar.written;
  const [beat, whole] = [beatTicks(metre), barTicks(metre)];
  const middle = beat * Math.ceil(whole / beat / 2);
  const pitches = Array.from({ length: 16 }, (_, above) =>
    spellMidi(midiNumber(28 + above), { key: sheet.key }),
  );
  const notesAt = (start: number, duration: number): readonly LineNote[] =>
    pitches
      .map((pitch) => ({ pitch, start: ticks(start), duration: ticks(duration) }))
      .filter((note) => keepsTo({ ...bar, notes: [{ note, fingered: null, degreeText: '' }] }, steps));
  const pairs = (one: readonly LineNote[], other: readonly LineNote[]) =>
    one.flatMap((first) => other.map((second) => [first, second]));
  // Of equal ones the first is taken: the middle of the bar sounds where it can.
  return [
    ...pairs(notesAt(0, beat), notesAt(middle, beat)),
    ...(middle > beat ? pairs(notesAt(beat, beat), notesAt(middle, beat)) : []),
    ...[notesAt(middle, beat), notesAt(beat, beat), notesAt(0, beat), notesAt(0, whole)].flatMap((notes) =>
      notes.map((note) => [note]),
    ),
  ];
}

/** What stands between a line and a prompt: what is missing, and what rules and level have against it. */
const against = (lesson: Lesson, prompt: BlankPrompt, piece: LinePiece): readonly string[] => [
  ...missing(prompt, lineSheetIn(lesson, piece)),
  ...faultsOf(lesson, piece),
];

/** The line with plain bars by hand where the composer does not keep the prompt. */
function byHand(lesson: Lesson, prompt: BlankPrompt, from: LinePiece): LinePiece {
  let piece = from;
  for (const index of [...from.bars.keys(), ...from.bars.keys()]) {
    const sheet = lineSheetIn(lesson, piece);
    const bar = sheet.bars[index];
    if (bar === undefined || against(lesson, prompt, piece).length === 0) return piece;
    const silent =
      (prompt.wanted ?? []).includes('beat one silent') ||
      (prompt.silentOnes === 'every second bar' && index % 2 === 1);
    const sounding = prompt.silentOnes !== undefined;
    const rested = (prompt.wanted ?? []).includes('long silences');
    const does = (notes: readonly LineNote[]) =>
      (silent ? notes[0]?.start !== 0 : notes[0]?.start === 0 || !sounding) &&
      (!rested || notes.length === 1);
    const tries = plainBars(sheet, bar, prompt.degrees ?? [1, 3, 5])
      .filter(does)
      .map((notes): LinePiece => {
        const bars = piece.bars.map((each, place) => (place === index ? { ...each, notes } : each));
        return { ...piece, bars };
      });
    const scored = tries.map((each) => ({ each, left: against(lesson, prompt, each).length }));
    const [best] = scored.sort((one, other) => one.left - other.left);
    if (best !== undefined && best.left <= against(lesson, prompt, piece).length) piece = best.each;
  }
  return piece;
}

describe('a prompt for blank bars', () => {
  it('can be kept by a line of the level over the same chords', () => {
    fc.assert(
      fc.property(lessons, fc.nat(), (lesson, draw) => {
        const blank = blankIn(lesson);
        const prompts = promptsFor(lesson, blank);
        const prompt = prompts[draw % prompts.length];
        if (prompt === undefined) throw new Error('There is a prompt for every line with chords.');
        const line = byHand(lesson, prompt, answered(lesson, prompt, blank.bars));
        const found = { over: line.chartText, prompt };
        expect({ ...found, against: against(lesson, prompt, line) }).toEqual({ ...found, against: [] });
      }),
      { numRuns: Number(process.env.PROMPTS ?? 40), seed: 22 },
    );
  }, 600_000);

  it('says what to keep to over the chords of the line beside it, as its level and key have it', () => {
    const lesson = lessonOf({
      ...{ chart: '(1) F | F | Dm |: B♭ | C7 :|', feel: 'one-drop', level: 2 },
      techniques: ['chord tones', 'beat one silent'],
    });
    const blank = blankIn(lesson);
    const reading = { key: parsedKey('F'), naming: 'letters' } as const;
    const words = promptsFor(lesson, blank).map((prompt) => promptWords(prompt, reading));
    expect(words).toContain('root and third only, beat one silent');
    expect(words).toContain('root and fifth only, beat one silent in every second bar');
    expect(new Set(words).size).toBe(words.length);
    expect(askedOfBlank(lesson, blank)).toBeNull();

    const prompt = promptsFor(lesson, blank)[words.indexOf('root and third only, beat one silent')];
    const asking = setBlankPrompt(setBlankBars(lesson, blank.id, 6), blank.id, prompt ?? null);
    const asked = askedOfBlank(asking, blankIn(asking));
    expect(asked?.words).toBe(
      'Write a line of your own over these chords: root and third only, beat one silent.',
    );
    const chordsOf = (sheet: LineSheet | undefined) =>
      sheet?.bars.flatMap(({ written: bar }) =>
        bar.spans.map(({ harmony }) => harmonyText(harmony, 'letters')),
      );
    // Whole bars of the chart, from its first again where it is too short; the pickup is none.
    expect(chordsOf(asked?.sheet)).toEqual(['F', 'Dm', 'B♭', 'C7', 'F', 'Dm']);
    expect(asked?.sheet.bars.every(({ notes }) => notes.length === 0)).toBe(true);
    expect(asked?.sheet.toWrite).toEqual([0, 1, 2, 3, 4, 5]);

    // A beginner is asked for what a beginner can, and another key brings its chords.
    expect(askedOfBlank(setLevel(asking, LINE, 1), blankIn(asking))?.words).toContain('root only, beat one');
    const moved = transposeTo(asking, LINE, { letter: 'G', alteration: 0 });
    expect(chordsOf(askedOfBlank(moved, blankIn(moved))?.sheet)?.slice(0, 4)).toEqual(['G', 'Em', 'C', 'D7']);

    const read = parseLesson(printLesson(asking));
    expect(read.ok && blankIn(read.value)).toEqual(blankIn(asking));
    const free = setBlankPrompt(asking, blank.id, null);
    expect(askedOfBlank(free, blankIn(free))).toBeNull();
  });

  it('is offered only where a line beside the bars has chords', () => {
    for (const chart of ['', '| N.C. | N.C. |']) {
      const lesson = lessonOf({ chart, feel: 'one-drop', level: 2, techniques: ['chord tones'] });
      expect(promptsFor(lesson, blankIn(lesson))).toEqual([]);
      const asking = setBlankPrompt(lesson, blankIn(lesson).id, { degrees: [1] });
      expect(askedOfBlank(asking, blankIn(asking))).toBeNull();
    }
  });
});
