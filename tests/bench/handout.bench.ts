import { bench, describe } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { deriveSheets, type Lesson, newLesson, setChartText } from '../../src/core/lesson';
import { writePdf } from '../../src/handout/pdf/write';
import { drawnPages, layOutForPrint } from '../handout/drawn';
import { FACES } from '../handout/pages';

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
  for (const bars of [8, 32, 128]) {
    const lesson = lessonOf(bars);
    deriveSheets(lesson);
    bench(`${bars} bars`, () => {
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
  for (const pages of [1, 2, 10]) {
    const drawn = drawnPages(layoutOfPages(pages));
    bench(`${drawn.length} ${drawn.length === 1 ? 'page' : 'pages'}`, async () => {
      await writePdf(drawn, facts, FACES, noPicture);
    });
  }
});
