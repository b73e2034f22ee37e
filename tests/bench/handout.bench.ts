import { describe } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { deriveSheets, type Lesson, newLesson, setChartText } from '../../src/core/lesson';
import { writePdf } from '../../src/handout/pdf/write';
import { drawnPages, layOutForPrint } from '../handout/drawn';
import { FACES } from '../handout/pages';
import { AT_ONCE, benchWithin, UNBROKEN } from './within';

/** A composed line over a round of four chords. */
function lessonOf(bars: number): Lesson {
  const fresh = newLesson('bench', 'Bench');
  const id = fresh.pieces[0]?.id ?? '';
  const chart = Array.from({ length: bars / 4 }, () => '| C | Am | Dm | G7 |').join('\n');
  return composePiece(setChartText(fresh, id, chart), id).lesson;
}

const noPicture = () => null;
const facts = { title: 'Bench', author: '', language: 'en' };

describe('layout of the handout', () => {
  for (const [bars, budget] of [
    [8, AT_ONCE],
    [32, AT_ONCE],
    [128, UNBROKEN],
  ] as const) {
    const lesson = lessonOf(bars);
    deriveSheets(lesson);
    benchWithin({ what: `The handout of ${bars} bars laid out`, name: `${bars} bars`, budget }, () => {
      layOutForPrint(lesson);
    });
  }
});

/** The shortest round of chords that needs so many pages, laid out. */
function layoutOfPages(pages: number) {
  for (let bars = 8; ; bars += pages < 5 ? 4 : 24) {
    const layout = layOutForPrint(lessonOf(bars));
    if (layout.pages.length >= pages) return layout;
  }
}

describe('PDF of the handout, the fonts at hand', () => {
  for (const [pages, most] of [
    [1, 400],
    [2, 400],
    [10, 1000],
  ] as const) {
    const drawn = drawnPages(layoutOfPages(pages));
    const name = `${drawn.length} ${drawn.length === 1 ? 'page' : 'pages'}`;
    benchWithin({ what: `The PDF of ${name}, the fonts at hand`, name, budget: { most } }, async () => {
      await writePdf(drawn, facts, FACES, noPicture);
    });
  }
});
