import { describe, expect, test } from 'vitest';
import { isCompound } from '../../src/core/base';
import { type FeelId, phraseBookOf } from '../../src/core/feel';
import { type ComposeRequest, composeLine, type Level } from '../../src/core/line';
import { firstAlike } from '../../src/core/line/phrase/alike';
import { cellOf } from '../../src/core/line/phrase/cells';
import { nodeRulesFor, phrasesIn } from '../../src/core/line/phrase/manner';
import { segmentsIn } from '../../src/core/line/phrase/segments';
import { shapeKey, shapeOf } from '../../src/core/line/phrase/stances';
import { modelOf } from '../../src/core/line/read-request';
import { request } from './notation';

/** One chart in several keys. */
const KEYS = [
  ['C', '| C | Dm7 | F G7 | Am | C/E | G7 | Bm7♭5 | C6 |'],
  ['E♭', '| E♭ | Fm7 | A♭ B♭7 | Cm | E♭/G | B♭7 | Dm7♭5 | E♭6 |'],
  ['F', '| F | Gm7 | B♭ C7 | Dm | F/A | C7 | Em7♭5 | F6 |'],
  ['A', '| A | Bm7 | D E7 | F♯m | A/C♯ | E7 | G♯m7♭5 | A6 |'],
  ['B', '| B | C♯m7 | E F♯7 | G♯m | B/D♯ | F♯7 | A♯m7♭5 | B6 |'],
] as const;

/** By kind of chord in its place: by contour of the book, what it costs and may show there, in text. */
function shapesIn(asked: ComposeRequest): ReadonlyMap<string, ReadonlyMap<string, string>> {
  const model = modelOf(asked);
  const book = phraseBookOf(asked.feel.id);
  const rules = nodeRulesFor(model, book);
  const found = new Map<string, ReadonlyMap<string, string>>();
  for (const bar of model.bars) {
    const { metre, themes } = phrasesIn(book, bar.metre);
    for (const segment of segmentsIn(model, metre, bar, false, bar.index)) {
      const { ladder } = segment;
      if (!ladder) continue;
      const shapes = new Map<string, string>();
      for (const contour of themes.flatMap(({ contours }) => Object.values(contours).flat())) {
        const triple = isCompound(bar.metre) && !isCompound(metre);
        const cell = cellOf(segment, contour, triple, asked.feel.bassRole);
        if (cell) shapes.set(contour.id, JSON.stringify(shapeOf(rules, segment, ladder, cell)));
      }
      found.set(shapeKey(rules, segment, ladder), shapes);
    }
  }
  return found;
}

const FEELS: readonly FeelId[] = ['early-ska', 'rocksteady', 'one-drop', 'shuffle-blues', 'funk', 'waltz'];
const LEVELS: readonly Level[] = [1, 2, 3, 5];

describe('how contours stand over chords', () => {
  test.each(FEELS)('%s: a contour costs the same over a kind of chord in every key', (feel) => {
    for (const level of LEVELS) {
      const [first, ...others] = KEYS.map(([key, chart]) => shapesIn(request(chart, { feel, level, key })));
      expect(first?.size).toBeGreaterThanOrEqual(8);
      for (const shapes of others) expect(shapes).toEqual(first);
    }
  });

  test('contours of the book that stand for one another are told apart by nothing but their names', () => {
    const { themes } = phraseBookOf('steppers').metres[0];
    const all = themes.flatMap(({ contours }) => Object.values(contours).flat());
    expect(new Set(all.map(firstAlike)).size).toBeLessThan(all.length);
    for (const contour of all) {
      const { beats, roles, leads, tags } = firstAlike(contour);
      expect({ beats, roles, leads, tags }).toEqual({
        beats: contour.beats,
        roles: contour.roles,
        leads: contour.leads,
        tags: contour.tags,
      });
    }
  });

  test('a line stays what it is, whatever was composed before it', () => {
    const lineOf = (at: number) => {
      const [key, chart] = KEYS[at] ?? KEYS[0];
      return composeLine(request(chart, { feel: 'rocksteady', level: 3, key })).bars;
    };
    const before = KEYS.map((_, at) => lineOf(at));
    for (const level of LEVELS)
      for (const [key, chart] of KEYS) composeLine(request(chart, { feel: 'rocksteady', level, key }));
    const after = KEYS.map((_, at) => KEYS.length - 1 - at).map(lineOf);
    expect(after.reverse()).toEqual(before);
  });
});
