import { describe, expect, test } from 'vitest';
import { newLesson } from '../../src/core/lesson';
import type { HandoutLayout } from '../../src/handout/layout/pages';
import { handoutPages } from '../../src/handout/layout/pages';
import { points } from '../../src/handout/layout/paper';
import { writePdf } from '../../src/handout/pdf/write';
import { engraveInSteps as engrave } from '../../src/score/engrave';
import { finished } from '../../src/score/steps';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { drawnPages, layOutForPrint, measureAsPrinted } from './drawn';
import { lessonWith } from './lessons';
import { FACES, readPdf } from './pages';

interface Box {
  readonly what: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The ink of every row of a page, a box a system and a box a text, in points from the page's top left corner. */
function boxesOf(layout: HandoutLayout, page: number): readonly Box[] {
  return (layout.pages[page]?.marks ?? []).flatMap((mark): readonly Box[] => {
    if (mark.kind === 'text') {
      const width = measureAsPrinted(mark.text, mark);
      const left = mark.anchor === 'end' ? mark.x - width : mark.x;
      // Capital height and descender depth of the face, in shares of its size.
      return [
        {
          what: mark.text,
          left,
          right: left + width,
          top: mark.y - mark.size * 0.72,
          bottom: mark.y + mark.size * 0.21,
        },
      ];
    }
    if (mark.kind !== 'system') return [];
    const system = layout.scores[mark.score]?.systems[mark.system];
    if (system === undefined) throw new Error('a mark shows a system that is not there');
    const boxes = system.ink.map(({ box }) => box);
    return [
      {
        what: `system ${mark.system}`,
        left: mark.x + Math.min(...boxes.map(({ left }) => left)) * system.scale,
        right: mark.x + Math.max(...boxes.map(({ right }) => right)) * system.scale,
        top: mark.y + Math.min(...boxes.map(({ top }) => top)) * system.scale,
        bottom: mark.y + Math.max(...boxes.map(({ bottom }) => bottom)) * system.scale,
      },
    ];
  });
}

const overlap = (one: Box, other: Box): boolean =>
  one.left < other.right - 0.3 &&
  other.left < one.right - 0.3 &&
  one.top < other.bottom - 0.3 &&
  other.top < one.bottom - 0.3;

describe.each(Object.entries(SCORE_FIXTURES))('%s', (_, make) => {
  const sheet = make();
  test.each(['normal', 'large'] as const)(
    'in %s print lies inside the margins and meets nothing else',
    (print) => {
      const lesson = newLesson('ink', 'A title over the music');
      const tools = { measure: measureAsPrinted, engrave };
      const printed = { ...lesson, handout: { ...lesson.handout, print } };
      const layout = finished(handoutPages(printed, [sheet], null, tools));
      layout.pages.forEach((page, index) => {
        const boxes = boxesOf(layout, index);
        for (const box of boxes) {
          expect(box.left, box.what).toBeGreaterThanOrEqual(points(15) - 0.6);
          expect(box.right, box.what).toBeLessThanOrEqual(page.width - points(15) + 0.6);
          expect(box.top, box.what).toBeGreaterThanOrEqual(points(15) - 0.6);
          expect(box.bottom, box.what).toBeLessThanOrEqual(page.height - points(15) + 0.6);
        }
        const collisions = boxes.flatMap((one, place) =>
          boxes
            .slice(place + 1)
            .filter((other) => overlap(one, other))
            .map((other) => `${one.what} and ${other.what}`),
        );
        expect(collisions).toEqual([]);
      });
    },
  );
});

test('two full pages make a small file that says what the page says', async () => {
  const layout = layOutForPrint(
    lessonWith({ blocks: ['facts', 'chart', 'rhythm', 'music', 'practice', 'diary', 'notes', 'cautions'] }),
  );
  expect(layout.pages.length).toBe(2);
  const { bytes, missing } = await writePdf(
    drawnPages(layout),
    { title: layout.title, author: '', language: 'en' },
    FACES,
    () => null,
  );
  expect(missing).toEqual([]);
  expect(bytes.length).toBeLessThan(300_000);
  const said = (await readPdf(bytes)).pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  for (const text of [
    'Ferry queue, week 3',
    'F major: one flat (B♭)',
    'Gm',
    'B♭',
    'Practice',
    'Pain means stop.',
  ]) {
    expect(said).toContain(text);
  }
});
