import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp, openBench } from '../support/browser';

test('a picture of some bars stands alone: outlines only, on a transparent ground', async () => {
  const { page, expectClean } = await openBench();
  const made = await page.evaluate(async () => {
    const { deriveSheets, sampleLesson } = await window.rooms.lesson();
    const { barsPicture, pngFile, svgFile } = await window.rooms.handout();
    const line = deriveSheets(sampleLesson(0, 'test')).find((sheet) => sheet.kind === 'line');
    if (line?.kind !== 'line') throw new Error('the sample has no line');
    const picture = await barsPicture(line, 1, 2, { degrees: true, fingers: false, counting: true });
    const png = await createImageBitmap(await pngFile(picture, 2));
    const pen = new OffscreenCanvas(png.width, png.height).getContext('2d');
    if (pen === null) throw new Error('no canvas');
    pen.drawImage(png, 0, 0);
    const { data } = pen.getImageData(0, 0, png.width, png.height);
    const opaque = data.filter((value, index) => index % 4 === 3 && value > 200).length;
    const [width, height] = ['width', 'height'].map((name) => Number(picture.getAttribute(name)));
    return {
      file: svgFile(picture),
      png: [png.width, png.height],
      size: [width, height],
      opaque,
      corner: data[3],
    };
  });
  expect(made.file).toMatch(
    /^<\?xml version="1.0" encoding="UTF-8"\?>\n<svg [^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/,
  );
  expect(made.file).not.toMatch(/<text|font-family|href|style=/);
  expect(made.png).toEqual(made.size.map((side) => (side ?? 0) * 2));
  expect(made.corner).toBe(0);
  expect(made.opaque).toBeGreaterThan(2000);
  expectClean();
});

test('where it is asked, letters stay text in the place and width that their outlines have, and signs do not', async () => {
  const { page, expectClean } = await openBench();
  const made = await page.evaluate(async () => {
    const { deriveSheets, sampleLesson } = await window.rooms.lesson();
    const { barsPicture } = await window.rooms.handout();
    const line = deriveSheets(sampleLesson(0, 'test')).find((sheet) => sheet.kind === 'line');
    if (line?.kind !== 'line') throw new Error('the sample has no line');
    const rows = { degrees: true, fingers: false, counting: true };
    const picture = await barsPicture(line, 1, 2, rows, 'text');
    const outlines = await barsPicture(line, 1, 2, rows);
    document.body.append(picture);
    return {
      texts: [...picture.querySelectorAll('text')].map((text) => text.textContent),
      families: [
        ...new Set([...picture.querySelectorAll('text')].map((text) => text.getAttribute('font-family'))),
      ],
      parts: [picture, outlines].map((drawing) => drawing.querySelectorAll('text, path').length),
      // Held to it where the font is missing, and so wide by itself where it is not.
      widths: [...picture.querySelectorAll('text')].map((text) => {
        const held = Number(text.getAttribute('textLength'));
        text.removeAttribute('textLength');
        return Math.abs(text.getComputedTextLength() - held);
      }),
    };
  });
  expect(made.texts).toEqual(expect.arrayContaining(['Dm', 'Gm', 'R', '♭3', 'degree']));
  expect(made.texts.join('')).not.toMatch(/[\ue000-\uf8ff]/);
  expect(made.families).toEqual(['Academico, serif']);
  expect(made.parts[0]).toBe(made.parts[1]);
  expect(Math.max(...made.widths)).toBeLessThan(0.5);
  expectClean();
});

test('the marks of a system stand alone as outlines, every one in its place', async () => {
  const { page, expectClean } = await openBench();
  const outlines = await page.evaluate(async () => {
    const { deriveSheets, sampleLesson } = await window.rooms.lesson();
    const { drawMarks, layoutScore, loadScoreFonts } = await window.rooms.score();
    const { standAlone } = await window.rooms.handout();
    await loadScoreFonts();
    const line = deriveSheets(sampleLesson(0, 'test')).find((sheet) => sheet.kind === 'line');
    if (line?.kind !== 'line') throw new Error('the sample has no line');
    const rows = { degrees: true, fingers: true, counting: true, measureNumbers: true };
    const layout = layoutScore(line, { ...rows, width: 800, barsPerSystem: 4 });
    const alone = await standAlone(drawMarks(layout, 0));
    return [...alone.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? '');
  });
  expect(outlines.length).toBeGreaterThan(50);
  expect(outlines.filter((outline) => /NaN|undefined/.test(outline))).toEqual([]);
  expectClean();
});

test('a name without glyphs stays text in a picture, beside what follows it', async () => {
  const { page } = await openBench();
  const parts = await page.evaluate(async () => {
    const { standAlone } = await window.rooms.handout();
    const drawing = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    const text = document.createElementNS('http://www.w3.org/2000/svg', 'text');
    text.textContent = 'Μαρία 5';
    text.setAttribute('x', '10');
    text.setAttribute('font-size', '20');
    drawing.append(text);
    const alone = await standAlone(drawing);
    return [...alone.children].map((part) => ({ name: part.localName, text: part.textContent }));
  });
  expect(parts).toEqual([
    { name: 'text', text: 'Μαρία' },
    { name: 'path', text: '' },
  ]);
});

const LOGOS = {
  plain:
    '<svg xmlns="http://www.w3.org/2000/svg" width="60" height="30"><style>.ground { fill: teal }</style><rect class="ground" width="60" height="30" style="stroke: none"/></svg>',
  script: '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>',
  handler: '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" onload="alert(1)"/>',
  link: '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><image href="https://example.org/a.png"/></svg>',
  prefixed:
    '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="9" height="9"><s:script href="a.js"/></s:svg>',
  entity: '<!DOCTYPE svg [<!ENTITY x "y">]><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
  torn: '<svg xmlns="http://www.w3.org/2000/svg"><rect',
  bomb: `<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><g id="n0"><rect width="9" height="9"/></g>${Array.from(
    { length: 30 },
    (_, index) => `<g id="n${index + 1}"><use href="#n${index}"/><use href="#n${index}"/></g>`,
  ).join('')}</svg>`,
} as const;

test('a logo is taken when it is a picture, and refused with a sentence when it is not', async () => {
  const { page, expectClean } = await openBench();
  const read = await page.evaluate(async (logos) => {
    const { readLogo } = await window.rooms.handout();
    const read = (file: Blob) =>
      readLogo(file, async (picture, { width, height }) => ({
        ok: true,
        value: await createImageBitmap(picture, { resizeWidth: width, resizeHeight: height }),
      }));
    const svg = (text: string) => read(new Blob([text], { type: 'image/svg+xml' }));
    const canvas = document.createElement('canvas');
    canvas.width = 4000;
    canvas.height = 1000;
    const png = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
    if (png === null) throw new Error('no picture');
    const plain = await svg(logos.plain);
    const picture = new Image();
    picture.src = plain.ok ? plain.value : '';
    await picture.decode();
    const pen = document.createElement('canvas').getContext('2d');
    pen?.drawImage(picture, 0, 0);
    const colour = [...(pen?.getImageData(20, 20, 1, 1).data ?? [])];
    return {
      plain,
      colour,
      script: await svg(logos.script),
      handler: await svg(logos.handler),
      link: await svg(logos.link),
      prefixed: await svg(logos.prefixed),
      entity: await svg(logos.entity),
      bomb: await svg(logos.bomb),
      torn: await svg(logos.torn),
      png: await read(png),
      broken: await read(new Blob(['not a picture'], { type: 'image/png' })),
      huge: await read(new Blob([new Uint8Array(6_000_000)], { type: 'image/png' })),
    };
  }, LOGOS);
  expect(read.plain.ok && read.plain.value.startsWith('data:image/')).toBe(true);
  // Teal is 0, 128, 128 (CSS Color 4); a JPEG may be a little off.
  [0, 128, 128].forEach((wanted, index) => {
    expect(Math.abs((read.colour[index] ?? 0) - wanted)).toBeLessThan(8);
  });
  expect(read.png.ok && read.png.value.length < 400_000).toBe(true);
  for (const name of ['script', 'handler', 'link', 'prefixed', 'entity'] as const) {
    expect(read[name], name).toEqual({ ok: false, problem: expect.stringContaining('script, links') });
  }
  expect(read.bomb).toEqual({ ok: false, problem: expect.stringContaining('very many shapes') });
  for (const name of ['torn', 'broken'] as const) {
    expect(read[name], name).toEqual({ ok: false, problem: expect.stringContaining('could not be read') });
  }
  expect(read.huge).toEqual({ ok: false, problem: expect.stringContaining('larger than 5 MB') });
  expectClean();
});

test('a logo with transparency goes into the PDF, and a broken one is left out and said', async () => {
  const { page, expectClean } = await openBench();
  const made = await page.evaluate(async () => {
    const { deriveSheets, sampleLesson, setHandout } = await window.rooms.lesson();
    const { buildHandout, handoutPdf } = await window.rooms.handout();
    const canvas = document.createElement('canvas');
    canvas.getContext('2d')?.fillRect(10, 10, 50, 50);
    const lesson = sampleLesson(0, 'test');
    const withLogo = setHandout(lesson, { logo: canvas.toDataURL('image/png') });
    const broken = setHandout(lesson, { logo: 'data:image/png;base64,AAAA' });
    const { bytes } = await handoutPdf(await buildHandout(withLogo, deriveSheets(withLogo)));
    const { remarks } = await buildHandout(broken, deriveSheets(broken));
    // Few letters of a file, and more pixels than a page can draw while someone types.
    const large = document.createElement('canvas');
    large.width = 2400;
    large.height = 2400;
    const withLarge = setHandout(lesson, { logo: large.toDataURL('image/png') });
    return {
      hasImage: new TextDecoder('latin1').decode(bytes).includes('/Subtype /Image'),
      remarks,
      large: (await buildHandout(withLarge, deriveSheets(withLarge))).remarks,
    };
  });
  expect(made.hasImage).toBe(true);
  const lost = [expect.stringMatching(/logo could not be read, or is a picture of very many pixels/)];
  expect(made.remarks).toEqual(lost);
  expect(made.large).toEqual(lost);
  expectClean();
});

/** Saves with a button and reads the file. */
async function saved(page: Page, name: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name, exact: true }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** Size of a PNG, and the least of its alpha values: 0 where its ground is open. */
const readPng = (page: Page, png: Buffer) =>
  page.evaluate(
    async (data) => {
      const picture = await createImageBitmap(new Blob([Uint8Array.from(data)], { type: 'image/png' }));
      const pen = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
      if (pen === null) throw new Error('no canvas');
      pen.drawImage(picture, 0, 0);
      const pixels = pen.getImageData(0, 0, picture.width, picture.height).data;
      let [least, most] = [255, 0];
      for (let alpha = 3; alpha < pixels.length; alpha += 4) {
        least = Math.min(least, pixels[alpha] ?? 255);
        most = Math.max(most, pixels[alpha] ?? 0);
      }
      return { width: picture.width, least, most };
    },
    [...png],
  );

test('the neck is saved as a picture at the fretboard and in the designer', async () => {
  const { page, expectClean } = await openApp();
  await page.getByRole('button', { name: 'Fretboard', exact: true }).click();
  const region = page.getByRole('region', { name: 'Fretboard' });
  await region.getByRole('img').waitFor();

  const svg = await saved(page, 'Save the neck as SVG');
  expect(svg.name).toMatch(/-neck-bar-1\.svg$/);
  const drawing = svg.bytes.toString('utf8');
  expect(drawing).toContain('<path');
  expect(drawing).not.toContain('<text');
  const png = await saved(page, 'Save the neck as PNG');
  expect(await readPng(page, png.bytes)).toEqual({ width: 1920, least: 0, most: 255 });

  await page.getByRole('button', { name: 'Handout', exact: true }).click();
  await page.getByRole('region', { name: 'Preview of the handout' }).getByRole('img').first().waitFor();
  await page.getByRole('spinbutton', { name: 'Bar of the neck' }).fill('3');
  const tones = page.getByRole('combobox', { name: 'The neck shows' });
  await tones.selectOption({ index: 1 });
  const other = await saved(page, 'Neck as SVG');
  expect(other.name).toMatch(/-neck-bar-3\.svg$/);
  expect(other.bytes.toString('utf8')).not.toBe(drawing);
  const bars = await saved(page, 'Save as PNG');
  expect((await readPng(page, bars.bytes)).least).toBe(0);
  expectClean();
});
