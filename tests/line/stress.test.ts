/** Accents and ghost notes of composed lines and of ideas. Where a style leans: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { hasMark, type LineNote, marksOf, ticks } from '../../src/core/base';
import { FEEL_IDS, type FeelId } from '../../src/core/feel';
import { composeLine, ideasForBar, type Level } from '../../src/core/line';
import { modelOf } from '../../src/core/line/read-request';
import { stressed } from '../../src/core/line/stress';
import { composed } from './composed';
import { request } from './notation';

/** Notes of a bar in sixteenths: `C..C` is an eighth and a half of C2, then a sixteenth; `-` is silence. */
function sixteenths(text: string): readonly LineNote[] {
  const signs = [...text];
  return signs.flatMap((sign, step): LineNote[] => {
    if (sign !== 'C' && sign !== 'E' && sign !== 'G') return [];
    const held = signs.slice(step + 1).findIndex((other) => other !== '.');
    const length = 1 + (held < 0 ? signs.length - step - 1 : held);
    const pitch = { letter: sign, alteration: 0, octave: 2 } as const;
    return [{ start: ticks(step * 240), duration: ticks(length * 240), pitch }];
  });
}

/** The same bar four times, marked; what stands on each sixteenth: `>` an accent, `x` a ghost note. */
function marksIn(feel: FeelId, level: Level, text: string): readonly string[] {
  const model = modelOf(request('| C | C | C | C |', { feel, level }));
  return model.bars.map((bar) => {
    const notes = stressed(model, bar, sixteenths(text));
    expect(notes.map(({ marks: _, ...note }) => note)).toEqual(sixteenths(text));
    return [...text]
      .map((_, step) => {
        const note = notes.find(({ start }) => start === step * 240);
        return note && hasMark(note, 'accent') ? '>' : note && hasMark(note, 'ghost') ? 'x' : '-';
      })
      .join('');
  });
}

describe('what a bassist leans on', () => {
  const EIGHTHS = 'C.C.E.E.G.G.C.C.';
  const PUSH = 'C...E.G...--C.C.';

  test.each([
    ['funk', EIGHTHS, '>---------------'],
    ['one-drop', EIGHTHS, '-------->-------'],
    ['bossa', EIGHTHS, '-------->-------'],
    ['walking-swing', 'C...E...G...E...', '---->-----------'],
    ['calypso', PUSH, '------>---------'],
    ['calypso', EIGHTHS, '----------------'],
    ['two-beat', 'C.......G.......', '----------------'],
  ] as const)('%s over %s', (feel, text, marks) => {
    const none = '-'.repeat(16);
    expect(marksIn(feel, 3, text)).toEqual([marks, none, marks, none]);
  });

  test('beginners’ lines have no marks', () => {
    for (const feel of FEEL_IDS)
      expect(new Set(marksIn(feel, 2, EIGHTHS))).toEqual(new Set(['-'.repeat(16)]));
  });
});

describe('ghost notes', () => {
  // Short notes between two eighths whose pitch the bar has had; never two in a row, never the last one.
  const SOUL = 'C..CE.CCG.-CE.-E';

  test('of soul lie between the eighths from level 4 on', () => {
    expect(marksIn('soul-backbeat', 3, SOUL)[1]).toBe('----------------');
    expect(marksIn('soul-backbeat', 4, SOUL)[1]).toBe('---x---x---x----');
    expect(marksIn('rockers', 5, SOUL)[1]).toBe('----------------');
  });

  test('of a shuffle lie between the beats', () => {
    expect(marksIn('shuffle-blues', 4, 'C.C.E.C.G...C.E.')[1]).toBe('--x---x---------');
  });

  test('are no new pitch, nor two in a row', () => {
    expect(marksIn('funk', 5, 'C..E..C.C.......')[1]).toBe('----------------');
    expect(marksIn('funk', 5, 'CCCCCCCCCCCCCCCC')[1]).toBe('-x-x-x-x-x-x-x--');
  });
});

describe('a composed line', () => {
  test.each(['funk', 'soul-backbeat', 'one-drop'] as const)('%s: is marked, and its ideas alike', (feel) => {
    const { asked, line } = composed('| C | Am | F | G7 |', { feel, level: 4 });
    const marks = line.bars.map((notes) => notes.flatMap(marksOf));
    expect(marks.flat().filter((mark) => mark !== 'accent' && mark !== 'ghost')).toEqual([]);
    const model = modelOf(asked);
    const plain = (notes: readonly LineNote[]) => notes.map(({ marks: _, ...note }) => note);
    for (const bar of model.bars) {
      const notes = line.bars[bar.index] ?? [];
      expect(stressed(model, bar, plain(notes))).toEqual(notes);
    }
    for (const { notes } of ideasForBar(asked, line.bars, 2)) {
      const bar = model.bars[2];
      if (bar) expect(stressed(model, bar, plain(notes))).toEqual(notes);
    }
  });

  test('leans in funk where an idea begins on one, and leaves kept bars as they are', () => {
    const { asked, line } = composed('| C | Am | F | G7 |', { feel: 'funk', level: 4 });
    expect(line.bars.map(([first]) => first !== undefined && hasMark(first, 'accent'))).toEqual([
      true,
      false,
      true,
      false,
    ]);
    const kept = line.bars.map((notes) => notes.map(({ marks: _, ...note }) => note));
    expect(composeLine({ ...asked, kept }).bars).toEqual(kept);
    const ideas = ideasForBar(asked, line.bars, 2).filter(({ notes }) => notes[0]?.start === 0);
    expect(ideas.length).toBeGreaterThan(0);
    for (const { notes } of ideas) expect(notes[0] && hasMark(notes[0], 'accent')).toBe(true);
  });
});
