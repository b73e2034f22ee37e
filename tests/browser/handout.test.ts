import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../handout/pages';
import { openBench } from '../support/browser';

const MARGIN = (15 * 72) / 25.4;
// ISO 216 and ANSI/ASME Y14.1, in points.
const PAPERS = {
  A4: { width: (210 * 72) / 25.4, height: (297 * 72) / 25.4 },
  Letter: { width: 612, height: 792 },
} as const;
type PaperName = keyof typeof PAPERS;

interface LessonWanted {
  readonly chart: string;
  readonly notes?: string;
  readonly paper?: PaperName;
}

/** Makes a lesson's handout in the page and keeps it there as `window.handout`; gives its PDF. */
async function makePdf(page: Page, wanted: LessonWanted) {
  const made = await page.evaluate(async ({ chart, notes, paper }) => {
    const rooms = window.rooms;
    const { deriveSheets, newLesson, setChartText, setHandout, setNotes } = await rooms.lesson();
    const { composePiece } = await rooms.composing();
    const { buildHandout, handoutPdf } = await rooms.handout();
    const fresh = setHandout(setNotes(newLesson('test', 'Tuesday class, week 3'), notes ?? ''), {
      paper: paper ?? 'A4',
    });
    const id = fresh.pieces[0]?.id ?? '';
    const { lesson } = composePiece(setChartText(fresh, id, chart), id);
    const handout = await buildHandout(lesson, deriveSheets(lesson));
    Object.assign(window, { handout });
    const { bytes, missing } = await handoutPdf(handout);
    return { bytes: [...bytes], missing, remarks: handout.remarks, pages: handout.pages.length };
  }, wanted);
  return { ...made, bytes: Uint8Array.from(made.bytes) };
}

const EIGHT_BARS = '| F#m7b5 | B7 | Em | Em |\n| Am7 | D7 | Gmaj7 Bb7 | Em |\n';
const lines = (count: number) => Array.from({ length: count }, () => '| C | Am | Dm | G7 |').join('\n');

describe.each<PaperName>(['A4', 'Letter'])('the handout on %s', (paper) => {
  test('is a PDF of the right size with its words, its fonts, and nothing in the margins', async () => {
    const { page, expectClean } = await openBench();
    const { bytes, missing, remarks } = await makePdf(page, {
      chart: EIGHT_BARS,
      paper,
      notes: 'Clap bar 2.',
    });
    const { pages, info } = await readPdf(bytes);
    const { width, height } = PAPERS[paper];

    expect(pages.length).toBe(1);
    expect(pages[0]?.width).toBeCloseTo(width, 1);
    expect(pages[0]?.height).toBeCloseTo(height, 1);
    expect(info).toMatchObject({ Title: 'Tuesday class, week 3', Language: 'en' });

    const words = pages[0]?.texts.map(({ text }) => text) ?? [];
    const said = words.join(' ');
    // Extensions are raised: a reader finds them right behind their root.
    const together = words.join('');
    for (const chord of ['F♯m7♭5', 'B7', 'Em', 'Am7', 'Gmaj7', 'B♭7']) expect(together).toContain(chord);
    expect(said).toContain('E minor: one sharp (F♯)');
    expect(said).toContain('Clap bar 2.');
    expect(said).toContain('Pain means stop.');
    expect(said).toContain('Page 1 of 1');
    expect({ missing, remarks }).toEqual({ missing: [], remarks: [] });

    for (const { text, x, y, width: length } of pages[0]?.texts ?? []) {
      expect(x, text).toBeGreaterThanOrEqual(MARGIN - 0.1);
      expect(x + length, text).toBeLessThanOrEqual(width - MARGIN + 0.1);
      expect(y, text).toBeGreaterThanOrEqual(MARGIN - 0.1);
      expect(y, text).toBeLessThanOrEqual(height - MARGIN);
    }

    const raw = Buffer.from(bytes).toString('latin1');
    expect(raw.match(/\/FontFile3 /g)?.length).toBe(3);
    expect(raw).not.toMatch(/\/Subtype \/Type1\b/);
    expectClean();
  });

  test('comes out of the browser’s own print as the same page', async () => {
    const { page, expectClean } = await openBench();
    const { bytes } = await makePdf(page, { chart: lines(8), paper });
    await page.evaluate(async () => {
      const { preparePrint } = await window.rooms.handout();
      const handout: unknown = Reflect.get(window, 'handout');
      preparePrint(handout as Parameters<typeof preparePrint>[0]);
    });
    const printed = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    const written = await readPdf(bytes);
    expect(printed.pages.length).toBe(written.pages.length);
    expect(written.pages.length).toBe(2);
    for (const [index, own] of written.pages.entries()) {
      const other = printed.pages[index];
      expect(Math.abs((other?.width ?? 0) - own.width)).toBeLessThan(1);
      expect(Math.abs((other?.height ?? 0) - own.height)).toBeLessThan(1);
      for (const text of ['Em', 'Dm', 'G7', `Page ${index + 1} of 2`]) {
        const mine = own.texts.filter((one) => one.text === text);
        const theirs = other?.texts.filter((one) => one.text === text) ?? [];
        expect(theirs.length, text).toBe(mine.length);
        mine.forEach((one, place) => {
          expect(Math.abs((theirs[place]?.x ?? 0) - one.x), text).toBeLessThan(1);
          expect(Math.abs((theirs[place]?.y ?? 0) - one.y), text).toBeLessThan(1);
        });
      }
    }
    expectClean();
  });
});

test('no ink of any page lies in the margins', async () => {
  const { page } = await openBench();
  await makePdf(page, { chart: lines(12), notes: 'Practise slowly. '.repeat(40) });
  const outside = await page.evaluate((margin) => {
    const { pages } = Reflect.get(window, 'handout') as { pages: { svg: SVGSVGElement; width: number }[] };
    return pages.flatMap(({ svg, width }) => {
      document.body.replaceChildren(svg);
      const scale = width / svg.getBoundingClientRect().width;
      const page = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('path, text, rect:not([fill="#fff"])')].flatMap((mark) => {
        const box = mark.getBoundingClientRect();
        const [left, right] = [(box.left - page.left) * scale, (page.right - box.right) * scale];
        return Math.min(left, right) < margin - 0.5
          ? [`${mark.outerHTML.slice(0, 90)}: ${left}, ${right}`]
          : [];
      });
    });
  }, MARGIN);
  expect(outside).toEqual([]);
});

test('a name in letters that the fonts lack is shown, and said', async () => {
  const { page, expectClean } = await openBench();
  const { bytes, missing } = await makePdf(page, { chart: '| C |', notes: 'Για τη Μαρία, №5' });
  expect(missing).toContain('Μ');
  const { pages } = await readPdf(bytes);
  expect(pages[0]?.texts.some(({ text }) => text.includes('5'))).toBe(true);
  expect(Buffer.from(bytes).toString('latin1')).toMatch(/\/Subtype \/Image/);
  expectClean();
});

type Reader = typeof import('pdfjs-dist');

/** Serves pdf.js to the page from its own origin, as its security policy asks. */
async function letInReader(page: Page): Promise<void> {
  const folder = createRequire(import.meta.url)
    .resolve('pdfjs-dist/legacy/build/pdf.mjs')
    .replace('pdf.mjs', '');
  await page.route('**/reader/*.mjs', async (route) => {
    const name = route.request().url().split('/').at(-1) ?? '';
    await route.fulfill({ contentType: 'text/javascript', body: await readFile(`${folder}${name}`) });
  });
}

/** The first page of each PDF, drawn by pdf.js at 96 dots an inch, as data addresses. */
const drawnByReader = (page: Page, files: readonly Uint8Array[]) =>
  page.evaluate(
    async (files) => {
      const reader = Reflect.get(window, 'pdfjsLib') as Reader;
      reader.GlobalWorkerOptions.workerSrc = new URL('reader/pdf.worker.mjs', location.href).href;
      const drawn: string[] = [];
      for (const data of files) {
        const task = reader.getDocument({ data: Uint8Array.from(data), isEvalSupported: false });
        const sheet = await (await task.promise).getPage(1);
        const canvas = document.createElement('canvas');
        canvas.width = 794;
        canvas.height = 1123;
        await sheet.render({ canvas, viewport: sheet.getViewport({ scale: 96 / 72 }) }).promise;
        drawn.push(canvas.toDataURL('image/png'));
      }
      return drawn;
    },
    files.map((file) => [...file]),
  );

/** How far two pictures of an A4 page are apart, in grey levels: the most of any cell of 12 pixels a side. */
const apart = (page: Page, one: string | undefined, other: string | undefined) =>
  page.evaluate(
    async ({ sources, width, height, cell }) => {
      const greys = async (source: string) => {
        const image = new Image();
        image.src = source;
        await image.decode();
        const pen = new OffscreenCanvas(width, height).getContext('2d');
        if (pen === null) throw new Error('no canvas');
        pen.drawImage(image, 0, 0);
        const { data } = pen.getImageData(0, 0, width, height);
        const columns = Math.ceil(width / cell);
        const cells = new Float64Array(columns * Math.ceil(height / cell));
        for (let y = 0; y < height; y += 1) {
          for (let x = 0; x < width; x += 1) {
            const place = Math.floor(y / cell) * columns + Math.floor(x / cell);
            cells[place] = (cells[place] ?? 0) + (data[(y * width + x) * 4] ?? 0) / cell ** 2;
          }
        }
        return cells;
      };
      const [mine, theirs] = await Promise.all(sources.map(greys));
      return Math.max(...(mine ?? []).map((grey, index) => Math.abs(grey - (theirs?.[index] ?? 0))));
    },
    { sources: [one ?? '', other ?? ''], width: 794, height: 1123, cell: 12 },
  );

test('handouts on different paper come out of the printer in one go, each on its own', async () => {
  const { page } = await openBench();
  await page.evaluate(async () => {
    const { deriveSheets, sampleLesson, setHandout } = await window.rooms.lesson();
    const { buildHandout, joinHandouts, preparePrint } = await window.rooms.handout();
    const parts = [];
    for (const paper of ['A4', 'Letter', 'A4'] as const) {
      const lesson = setHandout(sampleLesson(0, 'test'), { paper });
      parts.push({ words: paper, handout: await buildHandout(lesson, deriveSheets(lesson)) });
    }
    preparePrint(joinHandouts('All of them', parts, false));
  });
  const { pages } = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
  const widths = pages.map(({ width }) => Math.round(width));
  expect([...new Set(widths)]).toEqual([595, 612]);
  expect(widths.filter((width) => width === 612).length * 2).toBe(
    widths.filter((width) => width === 595).length,
  );
});

test('what was asked to be printed is printed, though the page makes another ready meanwhile, and then that one is', async () => {
  const { page } = await openBench();
  await page.evaluate(async () => {
    const { deriveSheets, sampleLesson } = await window.rooms.lesson();
    const { buildHandout, preparePrint, printHandout } = await window.rooms.handout();
    const [asked, other] = await Promise.all(
      ([0, 1] as const).map((which) => {
        const lesson = sampleLesson(which, 'test');
        return buildHandout(lesson, deriveSheets(lesson));
      }),
    );
    if (!asked || !other) throw new Error('no handouts');
    window.print = () => {};
    void printHandout(asked);
    preparePrint(other);
  });
  const words = async (): Promise<string> => {
    const { pages } = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    return pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  };
  expect(await words()).toContain('Ferry queue');
  // The browser says by itself that it is through with printing.
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  expect(await words()).toContain('Last tram home');
});

/** Each draws its edges in its own way, up to about 35 of 255 grey levels a cell; a missing notehead makes 75. */
const SAME_PICTURE = 50;

test('the PDF and the browser’s own print look like the page on the screen', async () => {
  const { page } = await openBench({ prepare: letInReader, width: 800, height: 1200 });
  const { bytes } = await makePdf(page, { chart: EIGHT_BARS, notes: 'Whisper the rests.' });
  await page.addScriptTag({ url: 'reader/pdf.mjs', type: 'module' });
  await page.evaluate(async () => {
    const { preparePrint } = await window.rooms.handout();
    const handout = Reflect.get(window, 'handout') as Parameters<typeof preparePrint>[0];
    Object.assign(window, { stopPrinting: preparePrint(handout) });
  });
  const printed = new Uint8Array(await page.pdf({ preferCSSPageSize: true }));
  await page.evaluate(() => {
    Reflect.get(window, 'stopPrinting')();
    const handout = Reflect.get(window, 'handout') as { pages: { svg: SVGSVGElement }[] };
    const svg = handout.pages[0]?.svg;
    if (svg === undefined) throw new Error('no page');
    svg.setAttribute('width', '794');
    svg.setAttribute('height', '1123');
    document.body.replaceChildren(svg);
    document.body.style.margin = '0';
  });
  const shot = await page.screenshot({ clip: { x: 0, y: 0, width: 794, height: 1123 } });
  const screen = `data:image/png;base64,${shot.toString('base64')}`;
  const [written, paper] = await drawnByReader(page, [bytes, printed]);
  expect(await apart(page, written, screen), 'PDF and screen').toBeLessThan(SAME_PICTURE);
  expect(await apart(page, written, paper), 'PDF and print').toBeLessThan(SAME_PICTURE);
});

test('a character that the fonts lack moves nothing else on the page', async () => {
  const { page } = await openBench();
  const [plain, strange] = await page.evaluate(async () => {
    const { deriveSheets, sampleLesson, setHandout, setNotes } = await window.rooms.lesson();
    const { buildHandout } = await window.rooms.handout();
    const placesOf = async (notes: string, student: string) => {
      const lesson = setHandout(setNotes(sampleLesson(0, 'test'), notes), { student });
      const { pages } = await buildHandout(lesson, deriveSheets(lesson));
      const svg = pages[0]?.svg;
      if (svg === undefined) throw new Error('no page');
      document.body.replaceChildren(svg);
      return [...svg.querySelectorAll('text')].map((text) => {
        const { x, y, width } = text.getBBox();
        const same = text.textContent !== notes && text.textContent !== student;
        return same ? `${text.textContent} ${x.toFixed(1)} ${y.toFixed(1)}` : `own ${width > 0}`;
      });
    };
    return [await placesOf('Page 5, slowly', 'Maria'), await placesOf('№ 5 ☃, slowly', 'Μαρία 子')] as const;
  });
  expect(strange).toEqual(plain);
  expect(plain.filter((text) => text === 'own true').length).toBe(2);
});
