import fc from 'fast-check';
import jsQR from 'jsqr';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { readLessonLink, writeLessonLink } from '../../src/core/exchange';
import { deriveSheets, type Lesson, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { codeOf, type LessonCode } from '../../src/handout/code/lesson-code';
import { outlineOf } from '../../src/handout/code/outline';
import { pageAddress } from '../../src/handout/layout/marks';
import { handoutPages } from '../../src/handout/layout/pages';
import { points } from '../../src/handout/layout/paper';
import { writePdf } from '../../src/handout/pdf/write';
import type { SvgElement } from '../../src/handout/svg/style';
import { engraveInSteps as engrave } from '../../src/score/engrave';
import { finished } from '../../src/score/steps';
import { measureAsPrinted } from './drawn';
import { layOut, lessonWith } from './lessons';
import { FACES, svg } from './pages';

const PAGE = 'https://example.org/bass/';
const SAMPLE = lessonWith({});

interface Upright {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly turn: 1 | -1;
}

/** The upright lines of an outline, downwards or upwards; none of its lines may slant. */
function uprightsOf(outline: string): readonly Upright[] {
  return outline
    .split('M')
    .slice(1)
    .flatMap((loop) => {
      const corners = loop
        .replace('Z', '')
        .split('L')
        .map((corner) => corner.split(' ').map(Number));
      return corners.flatMap(([x = 0, y = 0], index): Upright[] => {
        const [toX = 0, toY = 0] = corners[(index + 1) % corners.length] ?? [];
        if (x !== toX && y !== toY) throw new Error('the outline has a slanting line');
        return [{ x, top: Math.min(y, toY), bottom: Math.max(y, toY), turn: toY > y ? 1 : -1 }];
      });
    });
}

/** What is dark inside an outline, by how often it winds round every module (SVG 2, fill-rule nonzero). */
function filled(outline: string, modules: number): readonly (readonly boolean[])[] {
  const turns = Array.from({ length: modules }, () => new Array<number>(modules + 1).fill(0));
  for (const { x, top, bottom, turn } of uprightsOf(outline)) {
    for (const row of turns.slice(top, bottom)) row[x] = (row[x] ?? 0) + turn;
  }
  return turns.map((row) => {
    let winding = 0;
    return row.slice(0, modules).map((turn) => {
      winding += turn;
      return winding !== 0;
    });
  });
}

/** The text that an independent reader (jsQR) finds in a drawn code. */
function scan(outline: string, modules: number): string | null {
  const dark = filled(outline, modules);
  const [scale, quiet] = [4, 4];
  const side = (modules + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      if (dark[Math.floor(y / scale) - quiet]?.[Math.floor(x / scale) - quiet] !== true) continue;
      pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return jsQR(pixels, side, side)?.data ?? null;
}

/** The text that the reader finds in a code whose modules are `dots` dots wide, the first of them cut by `offset`. */
function scanAt({ outline, modules }: LessonCode, dots: number, offset: number): string | null {
  const dark = filled(outline, modules);
  const quiet = 4;
  const side = Math.ceil((modules + 2 * quiet) * dots + 1);
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  const steps = 4;
  const moduleAt = (dot: number, step: number): number =>
    Math.floor((dot + (step + 0.5) / steps - offset) / dots) - quiet;
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      let share = 0;
      for (let step = 0; step < steps * steps; step += 1) {
        const row = dark[moduleAt(y, Math.floor(step / steps))];
        if (row?.[moduleAt(x, step % steps)] === true) share += 1;
      }
      const grey = 255 - Math.round((255 * share) / (steps * steps));
      pixels.fill(grey, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return jsQR(pixels, side, side)?.data ?? null;
}

const samples: readonly Lesson[] = SAMPLE_TITLES.map((_, index) => sampleLesson(index, 'sample'));

describe('the code of the lesson’s link', () => {
  test.each(samples.map((lesson) => [lesson.title, lesson] as const))('opens the lesson: %s', (_, lesson) => {
    const { code, remark } = codeOf(lesson, PAGE);
    expect(remark).toBeNull();
    const read = readLessonLink(scan(code?.outline ?? '', code?.modules ?? 0) ?? '');
    expect(read).toEqual({ ok: true, value: lesson });
  });

  test('fills the largest code to the last byte; one more is too long, and is said to be', () => {
    const length = writeLessonLink(SAMPLE, PAGE).length;
    const address = `${PAGE}${'x'.repeat(2_953 - length)}`;
    const { code, remark } = codeOf(SAMPLE, address);
    expect(remark).toBeNull();
    // Version 40 has 177 modules (ISO/IEC 18004, table 1).
    expect(code?.modules).toBe(177);
    expect(scan(code?.outline ?? '', 177)).toBe(writeLessonLink(SAMPLE, address));
    expect(codeOf(SAMPLE, `${address}x`)).toEqual({
      code: null,
      remark: 'The lesson is too long for a QR code: its link has 2954 characters, and a code holds 2953.',
    });
  });

  test('goes without what only the teacher works with', () => {
    const draw = createRandom(7);
    const logo = Array.from({ length: 6_000 }, () => String.fromCharCode(65 + draw.below(26))).join('');
    const lesson = lessonWith({ logo: `data:image/png;base64,${logo}` });
    const { code, remark } = codeOf(lesson, PAGE);
    expect(remark).toBeNull();
    expect(code?.modules).toBe(codeOf(SAMPLE, PAGE).code?.modules);
    expect(code?.link.startsWith(`${PAGE}#lesson=`)).toBe(true);
  });
});

describe('the code on the page', () => {
  const place = (code: LessonCode) => {
    const tools = { measure: measureAsPrinted, engrave };
    const { pages } = finished(handoutPages(SAMPLE, deriveSheets(SAMPLE), null, tools, code));
    const page = pages.at(-1);
    return { page, mark: page?.marks.find((mark) => mark.kind === 'code') };
  };

  test.each([21, 57, 101, 145, 177])(
    '%i modules are large enough to be scanned, and on the paper',
    (modules) => {
      const { page, mark } = place({ modules, outline: '', link: PAGE });
      if (page === undefined || mark === undefined) throw new Error('there is no code');
      expect(mark.width / modules).toBeGreaterThanOrEqual(points(0.55) - 1e-9);
      expect(mark.y + mark.height).toBeLessThan(page.height - points(15));
      expect(mark.x + mark.width).toBeLessThan(page.width * 0.6);
      // Four modules round a code stay white (ISO/IEC 18004).
      const quiet = (4 * mark.width) / modules;
      const near = page.marks.filter(
        (other) =>
          other.kind === 'text' &&
          other.anchor === 'start' &&
          other.x < mark.x + mark.width + quiet - 1e-9 &&
          other.y > mark.y - quiet &&
          other.y - other.size < mark.y + mark.height + quiet - 1e-9,
      );
      expect(near).toEqual([]);
    },
  );

  // A flatbed scan or a cheap printer: 150 dots an inch, each as grey as the share of it that is dark.
  test.each(samples.map((lesson) => [lesson.title, lesson] as const))(
    'is read at 150 dots an inch, wherever the dots fall: %s',
    (_, lesson) => {
      const { code } = codeOf(lesson, PAGE);
      if (code === null) throw new Error('there is no code');
      const { mark } = place(code);
      if (mark === undefined) throw new Error('it is not on the page');
      const dots = ((mark.width / 72) * 150) / code.modules;
      for (const offset of [0, 0.2, 0.37, 0.5, 0.71]) expect(scanAt(code, dots, offset)).toBe(code.link);
    },
  );

  test('leads where it says, from the file too', async () => {
    const { code } = codeOf(SAMPLE, PAGE);
    if (code === null) throw new Error('there is no code');
    const { page } = place(code);
    const [link] = (page?.marks ?? []).filter((mark) => mark.kind === 'link');
    expect(link?.address).toBe(code.link);
    const said = (page?.marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    expect(said).toContain('it leads to the practice page with this lesson');
    const rect = svg('rect', { 'data-link': code.link, x: 60, y: 700, width: 100, height: 50, fill: 'none' });
    const { bytes } = await writePdf(
      [{ width: 595, height: 842, svg: svg('svg', {}, [rect]) }],
      { title: 'Code', author: '', language: 'en' },
      FACES,
      () => null,
    );
    const task = getDocument({ data: bytes.slice(), verbosity: 0 });
    const [found] = await (await (await task.promise).getPage(1)).getAnnotations();
    await task.destroy();
    expect(found.url).toBe(code.link);
    expect(found.rect).toEqual([60, 92, 160, 142]);
  });

  test('beside it, a link of the file itself leads to the page that it names', async () => {
    const rect = svg('rect', {
      ...{ 'data-link': pageAddress(2), x: 60, y: 700, width: 100, height: 50, fill: 'none' },
    });
    const page = (children: readonly SvgElement[]) => ({
      width: 595,
      height: 842,
      svg: svg('svg', {}, children),
    });
    const { bytes } = await writePdf(
      [page([rect]), { ...page([]), bookmark: 'Second' }],
      { title: 'Two', author: '', language: 'en' },
      FACES,
      () => null,
    );
    const task = getDocument({ data: bytes.slice(), verbosity: 0 });
    const document = await task.promise;
    const [found] = await (await document.getPage(1)).getAnnotations();
    const [leadsTo] = (await document.getDestination(found.dest)) ?? [];
    expect(await document.getPageIndex(leadsTo)).toBe(1);
    await task.destroy();
  });

  test('is not there unless it is given', () => {
    expect(layOut(SAMPLE).pages.flatMap(({ marks }) => marks.filter(({ kind }) => kind === 'code'))).toEqual(
      [],
    );
  });
});

describe('the outline of dark modules', () => {
  test('encloses them and nothing else', () => {
    const square = fc.integer({ min: 1, max: 9 }).chain((size) => {
      const row = fc.array(fc.boolean(), { minLength: size, maxLength: size });
      return fc.array(row, { minLength: size, maxLength: size });
    });
    fc.assert(
      fc.property(square, (dark) => {
        expect(filled(outlineOf(dark), dark.length)).toEqual(dark);
      }),
      { seed: 9, numRuns: 200 },
    );
  });
});
