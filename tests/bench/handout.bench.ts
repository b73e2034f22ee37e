import { bench, describe } from 'vitest';
import { composePiece, deriveSheets, type Lesson, newLesson, setChartText } from '../../src/core/lesson';
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
const facts = { title: 'Bench', language: 'en' };

describe('layout of the handout', () => {
  for (const bars of [8, 32, 128]) {
    const lesson = lessonOf(bars);
    deriveSheets(lesson);
    bench(`${bars} bars`, () => {
      layOutForPrint(lesson);
    });
  }
});

describe('PDF of the handout', () => {
  for (const bars of [8, 32, 200]) {
    const layout = layOutForPrint(lessonOf(bars));
    const pages = drawnPages(layout);
    bench(`${pages.length} ${pages.length === 1 ? 'page' : 'pages'}, ${bars} bars`, async () => {
      await writePdf(pages, facts, FACES, noPicture);
    });
  }
});
