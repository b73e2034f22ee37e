import { describe, expect, test } from 'vitest';
import { analyseLine, type LineNotes } from '../../src/core/line';
import { line, request } from './notation';

const analyse = (chart: string, notes: string, key?: string) =>
  analyseLine(request(chart, key === undefined ? {} : { key }), line(notes));

describe('what a note does', () => {
  /** Definitions: Open Music Theory, "Embellishing tones" (CC BY-SA 4.0); the examples are ours. */
  test.each([
    [
      'chord tones only',
      '| C | C |',
      'C2 . E2 . G2 . E2 . | C2 . - - - - - -',
      'chord tone, chord tone, chord tone, chord tone',
    ],
    [
      'passing between chord tones',
      '| C | C |',
      'C2 . D2 . E2 . G2 . | C2 . - - - - - -',
      'chord tone, passing, chord tone, chord tone',
    ],
    [
      'passing over the bar line',
      '| C | G |',
      'C2 . C2 . C2 . A1 . | G1 . - - - - - -',
      'chord tone, chord tone, chord tone, approach',
    ],
    [
      'passing by step into the next chord',
      '| C | F |',
      'C2 . D2 . E2 . D2 . | C2 . - - - - - -',
      'chord tone, passing, chord tone, passing',
    ],
    [
      'neighbour above',
      '| C | C |',
      'E2 . F2 . E2 . C2 . | C2 . - - - - - -',
      'chord tone, neighbour, chord tone, chord tone',
    ],
    [
      'neighbour below over the bar line',
      '| C | C |',
      'G1 . G1 . C2 . B1 . | C2 . - - - - - -',
      'chord tone, chord tone, chord tone, neighbour',
    ],
    [
      'approach by leap',
      '| C | F |',
      'C2 . E2 . C2 - G♭1 - | F1 . - - - - - -',
      'chord tone, chord tone, chord tone, approach',
    ],
    [
      'two passing notes in a row',
      '| C | C |',
      'C2 . G1 . A1 . B1 . | C2 . - - - - - -',
      'chord tone, chord tone, passing, passing',
    ],
    [
      'anticipation with a tie',
      '| C | D |',
      'C2 . E2 . G2 . . D2~ | D2 . - - - - - -',
      'chord tone, chord tone, chord tone, anticipation',
    ],
    [
      'anticipation before silence',
      '| C | D |',
      'C2 . E2 . G2 . . D2 | - - D2 . - - - -',
      'chord tone, chord tone, chord tone, anticipation',
    ],
    [
      'left by leap',
      '| C | C |',
      'C2 . D2 . G2 . C2 . | C2 . - - - - - -',
      'chord tone, scale step, chord tone, chord tone',
    ],
  ])('%s', (_name, chart, notes, expected) => {
    expect(
      analyse(chart, notes)[0]
        ?.notes.map((note) => note.function)
        .join(', '),
    ).toBe(expected);
  });

  test('what holds for one of two bars that can follow is not said', () => {
    const straight = analyse('| C | D | G |', 'C2 . E2 . C2 . . C♯2 | D2 . . . . . . . | G1 . . . . . . .');
    expect(straight[0]?.notes[3]?.function).toBe('passing');
    const [repeated] = analyse(
      '|: C :| D | G |',
      'C2 . E2 . C2 . . C♯2 | D2 . . . . . . . | G1 . . . . . . .',
    );
    expect(repeated?.notes[3]?.function).toBe('scale step');
  });

  test('there is no function without a chord', () => {
    expect(analyse('| N.C. | C |', 'C2 . - - - - - - | C2 . - - - - - -')[0]?.notes[0]).toEqual({
      degree: null,
      degreeText: '',
      function: null,
    });
  });
});

describe('degrees', () => {
  test.each([
    ['| F |', 'F1 . A1 . C2 . F2 .', 'R 3 5 8'],
    ['| Fm7 |', 'F1 . A♭1 . C2 . E♭2 .', 'R ♭3 5 ♭7'],
    ['| B♭ |', 'F1 . B♭1 . D2 . F2 .', '5 R 3 5'],
    ['| C7 F |', 'C2 . B♭1 . A1 . F1 .', 'R ♭7 3 R'],
    ['| F♯dim7 |', 'F♯1 . A1 . C2 . E♭2 .', 'R ♭3 ♭5 ♭♭7'],
  ])('%s %s', (chart, notes, expected) => {
    expect(
      analyse(chart, notes)[0]
        ?.notes.map((note) => note.degreeText)
        .join(' '),
    ).toBe(expected);
  });
});

describe('techniques', () => {
  test.each([
    ['| C | F |', 'C2 . E2 . G2 . E2 . | F1 . - - - - - -', 'chord tones'],
    ['| C | C |', 'C2 . D2 . C2 . C2 . | C2 . - - - - - -', 'scale steps'],
    ['| C | F |', 'C2 . D2 . E2 . E2 . | F1 . - - - - - -', 'chord tones, scale steps'],
    ['| C | F |', '- - C2 . G1 . E2 . | F1 . - - - - - -', 'chord tones, beat one silent'],
    ['| C | F |', 'C2 . - - - - - E2 | F1 . - - - - - -', 'chord tones, long silences'],
    ['| F | C |', 'F1 . F2 . F1 . A1 . | C2 . - - - - - -', 'chord tones, octave'],
    ['| C | F |', 'C2 . E2 . C2 - G♭1 - | F1 . - - - - - -', 'chord tones, approach note'],
    ['| C | D |', 'C2 . E2 . G2 . . D2~ | D2 . - - - - - -', 'chord tones, anticipation'],
    ['| C | C |', '- - - - - - - - | C2 . - - - - - -', ''],
  ])('%s %s', (chart, notes, expected) => {
    expect(analyse(chart, notes)[0]?.techniques.join(', ')).toBe(expected);
  });

  test('a note tied over from the bar before leaves no silence on one', () => {
    const [, second] = analyse('| C | D |', 'C2 . E2 . G2 . . D2~ | D2 . . . F♯2 . A2 .');
    expect(second?.techniques).toEqual(['chord tones']);
  });
});

describe('reasons', () => {
  test.each([
    [
      '| F | C |',
      'F1 . F1 . A1 . B♭1 . | C2 . - - - - - -',
      'A–B♭–C',
      'A–B♭ walks up by step to C; R–3 climbs through F; listen for A, the major third of F.',
    ],
    [
      '| C | F |',
      'C2 . G1 . C2 . E1 . | F1 . - - - - - -',
      'lead',
      'R–5–R–3 outlines C; E on beat four leads up a half step to F; listen for E, the major third of C.',
    ],
    [
      '| F | C7 | F |',
      'F1 . . . . . . . | - - C2 . C2 . G1 . | F1 . - - - - - -',
      'second',
      'Beat one is silent and the figure answers bar 1 from beat two; G on beat four steps down to F.',
    ],
  ])('%s %s', (chart, notes, kind, expected) => {
    expect(analyse(chart, notes)[kind === 'second' ? 1 : 0]?.reason).toBe(expected);
  });
});

describe('under another chart', () => {
  const bars = new Map<string, LineNotes[number]>();
  /** A line in which bars of the same notes are the same object, as they are in a lesson that is edited. */
  const sharedLine = (notes: string): LineNotes =>
    notes.split(' | ').map((bar) => {
      const known = bars.get(bar) ?? line(bar)[0] ?? [];
      bars.set(bar, known);
      return known;
    });

  /** A bar as it was analysed, as it is when the chart changes around it, and as it is analysed from nothing. */
  function aroundBar(bar: number, before: string, after: string, notes: string, notesAfter: string) {
    const [earlier, later] = [request(before, { key: 'C' }), request(after, { key: 'C' })];
    const was = analyseLine(earlier, sharedLine(notes))[bar];
    const is = analyseLine(later, sharedLine(notesAfter), earlier);
    return { was, is, afresh: analyseLine(request(after, { key: 'C' }), sharedLine(notesAfter)) };
  }

  const LONG = 'C2 . - - - - - -';
  const FOUR = 'C2 . C2 . C2 . C2 .';
  const LEADING = 'F1 . - - - - F♯1 -';
  test.each([
    {
      name: 'leads elsewhere, too, where a repeat ends with it',
      before: '| C | F | G |',
      after: '|: C | F :| G |',
      notes: `${LONG} | ${LEADING} | G1 . - - - - - -`,
      bar: 1,
    },
    {
      name: 'is reached from elsewhere, too, where a repeat begins with it',
      before: '| C | F | G |',
      after: '| C |: F | G :|',
      notes: 'D2 . - - - - C2 . | D2 . E2 . D2 . G1 . | G1 . - - - - - -',
      bar: 1,
    },
    {
      name: 'has another bar to take its rhythm from, where a section begins before it',
      before: 'A:\n| C | F | C | F | C | F |',
      after: 'A:\n| C | F |\nB:\n| C | F | C | F |',
      notes: `${FOUR} | ${LONG} | ${LONG} | ${LONG} | ${FOUR} | ${LONG}`,
      bar: 4,
    },
    {
      name: 'takes its rhythm from a bar of another number, where one comes before both',
      before: 'A:\n| C | F | F | F |\nB:\n| G | C | F | C |',
      after: 'A:\n| C | F | F | F | F |\nB:\n| G | C | F | C |',
      notes: `${LONG} | ${LONG} | ${LONG} | ${LONG} | ${FOUR} | ${LONG} | ${FOUR} | ${LONG}`,
      notesAfter: `${LONG} | ${LONG} | ${LONG} | ${LONG} | ${LONG} | ${FOUR} | ${LONG} | ${FOUR} | ${LONG}`,
      bar: 6,
      moved: 7,
    },
    {
      name: 'has another note after it, where the next bar is gone',
      before: '| C | F | N.C. | N.C. | N.C. |',
      after: '| C | F | N.C. | N.C. |',
      notes: `${LONG} | ${LEADING} | G1 . - - - - - - | A1 . - - - - - - | ${LONG}`,
      notesAfter: `${LONG} | ${LEADING} | A1 . - - - - - - | ${LONG}`,
      bar: 1,
    },
    {
      name: 'has another harmony for the same note',
      before: '| C | F | G |',
      after: '| C | F | Em |',
      notes: `${LONG} | ${LONG} | G1 . - - - - - -`,
      bar: 2,
    },
  ])('a bar $name', ({ bar, before, after, notes, ...other }) => {
    const { was, is, afresh } = aroundBar(bar, before, after, notes, other.notesAfter ?? notes);
    expect(is).toEqual(afresh);
    expect(is[other.moved ?? bar]).not.toEqual(was);
  });
});
