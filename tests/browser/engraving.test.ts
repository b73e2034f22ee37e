import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/core/lesson';
import type { ScoreOptions } from '../../src/score';
import { openBench } from '../support/browser';
import { SCORE_FIXTURES } from '../support/score-fixtures';

const OPTIONS: ScoreOptions = {
  width: 800,
  degrees: true,
  fingers: true,
  counting: true,
  barsPerSystem: 4,
  measureNumbers: true,
};

/** How far a letter may lean over the width it takes on the line, as a share of its size. */
const SIDE_BEARING = 0.07;

/** Lays a sheet out, draws it into the bench, and gives back what the browser makes of it. */
const drawInPage = (page: Page, sheet: Sheet, options: ScoreOptions) =>
  page.evaluate(
    async ([sheet, options]) => {
      const score = await window.rooms.score();
      await score.loadScoreFonts();
      const layout = score.layoutScore(sheet, options);
      const pictures = layout.systems.map(({ index }) => score.drawSystem(layout, index));
      for (const picture of pictures) picture.style.display = 'block';
      document.body.replaceChildren(...pictures);
      const canvas = document.createElement('canvas').getContext('2d');
      if (!canvas) throw new Error('No canvas to measure on.');
      /** Raised extensions are smaller: their width is that of the runs, side by side, and they hang from where each is raised to. */
      const ofRuns = (
        from: number,
        runs: readonly { text: string; size: number; rise: number; back?: number }[],
        style: string,
        font: string,
      ) => {
        let [right, below] = [from, Number.NEGATIVE_INFINITY];
        for (const run of runs) {
          canvas.font = `${style}${run.size}px ${font}`;
          const { width, actualBoundingBoxDescent } = canvas.measureText(run.text);
          right += width - (run.back ?? 0);
          below = Math.max(below, actualBoundingBoxDescent - run.rise);
        }
        return { right, below };
      };
      const texts = layout.systems.flatMap((system) =>
        system.ink.flatMap((ink) => {
          if (ink.kind !== 'text') return [];
          const bold = ink.bold ? 'bold ' : '';
          canvas.font = `${ink.italic ? 'italic ' : ''}${bold}${ink.size}px ${ink.font}`;
          const seen = canvas.measureText(ink.text);
          const raised = ink.runs && ofRuns(ink.x, ink.runs, bold, ink.font);
          return [
            {
              text: ink.text,
              role: ink.role,
              size: ink.size,
              laidOut: ink.box,
              seen: {
                left: ink.x - seen.actualBoundingBoxLeft,
                right: raised?.right ?? ink.x + seen.actualBoundingBoxRight,
                top: ink.y - seen.actualBoundingBoxAscent,
                bottom: ink.y + (raised?.below ?? seen.actualBoundingBoxDescent),
              },
            },
          ];
        }),
      );
      return {
        texts,
        systems: layout.systems.map(({ width, height }) => ({ width, height })),
        drawn: pictures.map((picture) => {
          const { width, height } = picture.getBoundingClientRect();
          return { width, height };
        }),
      };
    },
    [sheet, options] as const,
  );

/** What stands in the page of a sheet's first systems: marks that share elements, and each by itself. */
const drawBothWays = (page: Page, sheet: Sheet, options: ScoreOptions) =>
  page.evaluate(
    async ([sheet, options]) => {
      const { drawMarks, drawSystem, layoutScore, loadScoreFonts } = await window.rooms.score();
      await loadScoreFonts();
      const kindOf = (element: Element, names: readonly string[]) =>
        names.map((name) => element.getAttribute(name)).join();
      const lettersOf = (text: SVGTextElement) =>
        Array.from({ length: text.getNumberOfChars() }, (_, index) => {
          const [from, to] = [text.getStartPositionOfChar(index), text.getEndPositionOfChar(index)];
          const look = kindOf(text, ['class', 'font-family', 'font-size', 'font-weight', 'font-style']);
          return { kind: `${look} ${text.textContent?.[index]}`, places: [from.y, from.x, to.x] };
        });
      const linesOf = (path: SVGPathElement) => {
        const look = kindOf(path, ['class', 'fill', 'stroke', 'stroke-width']);
        return (path.getAttribute('d') ?? '').split(/(?=M)/).map((line) => `${look} ${line}`);
      };
      const seenIn = (drawings: readonly SVGElement[]) => {
        const all = <Kind extends Element>(selector: string) =>
          drawings.flatMap((drawing) => [...drawing.querySelectorAll<Kind>(selector)]);
        return {
          elements: all('*').length,
          letters: all<SVGTextElement>('text')
            .flatMap(lettersOf)
            .toSorted(
              (one, other) =>
                one.kind.localeCompare(other.kind) ||
                (one.places[0] ?? 0) - (other.places[0] ?? 0) ||
                (one.places[1] ?? 0) - (other.places[1] ?? 0),
            ),
          lines: all<SVGPathElement>('path').flatMap(linesOf).toSorted(),
        };
      };
      const layout = layoutScore(sheet, options);
      const systems = layout.systems.slice(0, 2);
      const pictures = systems.map(({ index }) => drawSystem(layout, index));
      const apart = systems.map(({ index }) => drawMarks(layout, index));
      // What the page draws by its outline is a text where marks stand apart.
      const outlined = systems.flatMap(({ ink }) =>
        ink.flatMap((one) =>
          one.kind === 'text' && one.outline !== undefined
            ? [`${one.role},,, M${one.x} ${one.y}${one.outline}`]
            : [],
        ),
      );
      const words = apart.map((drawing, system) => {
        const copy = document.importNode(drawing, true);
        systems[system]?.ink.forEach((one, index) => {
          if (one.kind === 'text' && one.outline !== undefined)
            drawing.children[index]?.classList.add('gone');
        });
        copy.replaceChildren(
          ...[...drawing.children].flatMap((each) => (each.matches('.gone') ? [] : [each.cloneNode(true)])),
        );
        return copy;
      });
      document.body.replaceChildren(...pictures, ...words);
      return { shared: seenIn(pictures), single: seenIn(words), outlined, marks: seenIn(apart).elements };
    },
    [sheet, options] as const,
  );

/** The page as it looks when it shows a sheet's systems one way or the other: how dark each pixel is, from 0 to 255. */
async function darknessOf(page: Page, sheet: Sheet, way: 'drawSystem' | 'drawMarks') {
  await page.evaluate(
    async ([sheet, options, way]) => {
      const score = await window.rooms.score();
      await score.loadScoreFonts();
      const layout = score.layoutScore(sheet, options);
      const pictures = layout.systems.slice(0, 3).map(({ index }) => score[way](layout, index));
      for (const picture of pictures) picture.style.display = 'block';
      document.body.replaceChildren(...pictures);
    },
    [sheet, OPTIONS, way] as const,
  );
  return (await page.screenshot()).toString('base64');
}

/** How many dark pixels of each of two pictures have no ink of the other within a pixel of them; and how many are dark. */
const strayInk = (page: Page, pictures: readonly [string, string]) =>
  page.evaluate(async (pictures) => {
    const seen = await Promise.all(
      pictures.map(async (picture) => {
        const bytes = Uint8Array.from(atob(picture), (one) => one.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
        const canvas = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
        if (!canvas) throw new Error('No canvas to look at pictures on.');
        canvas.drawImage(bitmap, 0, 0);
        return canvas.getImageData(0, 0, bitmap.width, bitmap.height);
      }),
    );
    const [one, other] = seen;
    if (!one || !other) throw new Error('Two pictures are looked at.');
    const { width, height } = one;
    const dark = ({ data }: ImageData, x: number, y: number) => 255 - (data[4 * (y * width + x)] ?? 255);
    const around = [-1, 0, 1].flatMap((down) => [-1, 0, 1].map((right) => [right, down] as const));
    const isAlone = (beside: ImageData, x: number, y: number): boolean =>
      around.every(([right, down]) => dark(beside, x + right, y + down) < 40);
    const stray = (of: ImageData, beside: ImageData): number => {
      let count = 0;
      for (let y = 1; y < height - 1; y += 1)
        for (let x = 1; x < width - 1; x += 1) if (dark(of, x, y) >= 160 && isAlone(beside, x, y)) count += 1;
      return count;
    };
    let inked = 0;
    for (let y = 0; y < height; y += 1)
      for (let x = 0; x < width; x += 1) if (dark(one, x, y) >= 160) inked += 1;
    return { stray: stray(one, other) + stray(other, one), inked };
  }, pictures);

describe('the drawn score', () => {
  test('covers the room that the layout gave every glyph and word, and no more', async () => {
    const { page, expectClean } = await openBench({ width: 800 });
    for (const [name, make] of Object.entries(SCORE_FIXTURES)) {
      const { texts, systems, drawn } = await drawInPage(page, make(), OPTIONS);
      // The canvas rounds to whole pixels; kerning makes words a little narrower than their letters.
      const outside = texts.filter(
        ({ laidOut, seen, size }) =>
          seen.left < laidOut.left - size * SIDE_BEARING - 1 ||
          seen.right > laidOut.right + size * SIDE_BEARING + 1 ||
          seen.top < laidOut.top - 1.2 ||
          seen.bottom > laidOut.bottom + 1.2 ||
          seen.right < laidOut.right - size * 0.35 - (laidOut.right - laidOut.left) * 0.05,
      );
      expect(outside, name).toEqual([]);
      drawn.forEach((size, index) => {
        expect(size.width).toBeCloseTo(systems[index]?.width ?? 0, 0);
        expect(size.height).toBeCloseTo(systems[index]?.height ?? 0, 0);
      });
    }
    expectClean();
  });

  test('is the same picture, letter by letter and line by line, where marks share an element', async () => {
    const { page, expectClean } = await openBench({ width: 800 });
    for (const [name, make] of Object.entries(SCORE_FIXTURES)) {
      const { shared, single, outlined, marks } = await drawBothWays(page, make(), OPTIONS);
      expect(shared.letters.length, name).toBe(single.letters.length);
      const astray = shared.letters.filter(({ kind, places }, index) => {
        const other = single.letters[index];
        const isThere = places.every((place, at) => Math.abs(place - (other?.places[at] ?? 1e9)) < 0.03);
        return other?.kind !== kind || !isThere;
      });
      expect(astray, name).toEqual([]);
      expect(shared.lines, name).toEqual([...single.lines, ...outlined].toSorted());
      expect(outlined.length, name).toBeGreaterThan(0);
      expect(shared.elements, name).toBeLessThan(marks);
    }
    expectClean();
  });

  test('looks the same where signs are outlines and where they are letters of the fonts', async () => {
    const { page, expectClean } = await openBench({ width: 800 });
    for (const name of ['f-major', 'busy-16', 'triplets', 'seven-flats', 'five-strings', 'playing-signs']) {
      const sheet = SCORE_FIXTURES[name]?.();
      if (!sheet) throw new Error(`There is no fixture ${name}.`);
      const pictures = [
        await darknessOf(page, sheet, 'drawSystem'),
        await darknessOf(page, sheet, 'drawMarks'),
      ] as const;
      const { stray, inked } = await strayInk(page, pictures);
      expect(inked, name).toBeGreaterThan(3000);
      expect(stray, name).toBe(0);
    }
    expectClean();
  });

  test('is brought up to date in the page exactly as if it were drawn anew', async () => {
    const { page, expectClean } = await openBench({ width: 800 });
    const sheets = Object.entries(SCORE_FIXTURES).map(([name, make]) => [name, make()] as const);
    const faults = await page.evaluate(
      async ([sheets, options]) => {
        const { drawSystem, layoutScore, loadScoreFonts, redrawSystem } = await window.rooms.score();
        await loadScoreFonts();
        const [first] = sheets;
        if (first === undefined) throw new Error('No fixtures.');
        const picture = drawSystem(layoutScore(first[1], options), 0);
        const found: string[] = [];
        // From the first system of each to that of the next, and back again.
        for (const [name, sheet] of [...sheets, ...sheets.toReversed()]) {
          const layout = layoutScore(sheet, options);
          const staying = picture.querySelector('path.staff-line');
          const done = redrawSystem(picture, layout, 0);
          if (!done || picture.outerHTML !== drawSystem(layout, 0).outerHTML) found.push(name);
          if (staying?.parentNode !== picture) found.push(`${name}: nothing stayed`);
        }
        if (redrawSystem(document.createElement('p'), layoutScore(first[1], options), 0))
          found.push('any element');
        return found;
      },
      [sheets, OPTIONS] as const,
    );
    expect(faults).toEqual([]);
    expectClean();
  });

  test('keeps chord names as text that can be searched and copied', async () => {
    const { page } = await openBench({ width: 800 });
    const make = SCORE_FIXTURES['seven-flats'];
    if (!make) throw new Error('The fixture is gone.');
    await drawInPage(page, make(), OPTIONS);
    const chords = await page.$$eval('text.chord', (all) => all.map((one) => one.textContent));
    expect(chords).toEqual(['C♭', 'D♭m7', 'E♭m7♭5', 'A♭7♭9', 'G♭7sus4', 'G♭7']);
  });

  test('puts nothing typed into the page but text', async () => {
    const { page, expectClean } = await openBench({ width: 800 });
    const make = SCORE_FIXTURES['thirteen-bars'];
    const sheet = make?.();
    if (sheet?.kind !== 'line') throw new Error('The fixture is gone.');
    const name = '<img src=x onerror="document.title=1">';
    const sections = sheet.chart.sections.map((section) => ({ ...section, name }));
    await drawInPage(page, { ...sheet, chart: { ...sheet.chart, sections } }, OPTIONS);
    expect(await page.$('img')).toBeNull();
    expect(await page.$$eval('text.section', (all) => all[0]?.textContent)).toBe(name);
    expectClean();
  });
});
