import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { readLessonLink } from '../../src/core/exchange';
import { sampleLesson, setHandout } from '../../src/core/lesson';
import { openBench } from '../support/browser';

const ADDRESS = 'https://example.org/bass/practice.html';

test('a page that asks for it has a code that an independent reader (jsQR) scans and the app opens', async () => {
  const lesson = setHandout(sampleLesson(0, 'sample'), { code: true });
  const { page, expectClean } = await openBench();
  const scanned = await page.evaluate(
    async ({ given, address }) => {
      const { deriveSheets } = await window.rooms.lesson();
      const { buildHandout } = await window.rooms.handout();
      const handout = await buildHandout(given, deriveSheets(given), address);
      const last = handout.pages.at(-1);
      if (last === undefined) throw new Error('there are no pages');
      // 150 dots an inch: a cheap printer or a scan.
      const [width, height] = [last.width, last.height].map((side) => Math.round((side / 72) * 150));
      if (width === undefined || height === undefined) throw new Error('no size');
      const copy = document.importNode(last.svg, true);
      copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
      copy.setAttribute('width', String(width));
      copy.setAttribute('height', String(height));
      const picture = new Image();
      picture.src = `data:image/svg+xml,${encodeURIComponent(copy.outerHTML)}`;
      await picture.decode();
      const canvas = document.createElement('canvas');
      canvas.width = width;
      canvas.height = height;
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('no canvas');
      pen.drawImage(picture, 0, 0);
      const { data } = pen.getImageData(0, 0, width, height);
      const grey = Array.from({ length: width * height }, (_, index) =>
        (data[index * 4] ?? 0) < 128 ? '1' : '0',
      );
      return { width, height, grey: grey.join(''), remarks: handout.remarks };
    },
    { given: lesson, address: ADDRESS },
  );
  const pixels = new Uint8ClampedArray(scanned.width * scanned.height * 4).fill(255);
  [...scanned.grey].forEach((dark, index) => {
    if (dark === '1') pixels.fill(0, index * 4, index * 4 + 3);
  });
  const link = jsQR(pixels, scanned.width, scanned.height)?.data ?? '';
  expect(link.startsWith(`${ADDRESS}#lesson=`)).toBe(true);
  expect(readLessonLink(link)).toEqual({ ok: true, value: lesson });
  // Nothing is said of the code; what was left out for the sake of a page is.
  expect(scanned.remarks.filter((remark) => /\bcode\b/.test(remark))).toEqual([]);
  expectClean();
});
