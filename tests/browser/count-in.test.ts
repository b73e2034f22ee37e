import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

/** The digit's rectangle, worked out from its style, and what is written of the score under it. */
const underTheDigit = () => {
  const head = document.querySelector('.playhead[data-count]:not([data-count=""])');
  if (head === null) return null;
  const line = head.getBoundingClientRect();
  const style = getComputedStyle(head, '::before');
  const [right, bottom] = [
    line.right - Number.parseFloat(style.right),
    line.bottom - Number.parseFloat(style.bottom),
  ];
  const [left, top] = [right - Number.parseFloat(style.width), bottom - Number.parseFloat(style.height)];
  const words = [...document.querySelectorAll('.score :is(.feel, .swing, .chord, .section)')];
  const met = words.filter((each) => {
    const box = each.getBoundingClientRect();
    return box.left < right && box.right > left && box.top < bottom - 1 && box.bottom > top + 1;
  });
  const staff = document.querySelector('.score .staff-line')?.getBoundingClientRect().top ?? 0;
  return { high: bottom - top, apart: staff - bottom, met: met.map(({ textContent }) => textContent) };
};

test.each([1440, 1024, 390])(
  'the beat that is counted in covers nothing that is written, %i px wide',
  async (width) => {
    const { page, expectClean } = await openApp({ width });
    await page.locator('.score .feel').first().waitFor();
    await page.getByRole('button', { name: 'Play', exact: true }).click();
    // Measured in the frame in which it is found: the count-in is over in two seconds, on a busy machine, too.
    const seen = await (await page.waitForFunction(underTheDigit)).jsonValue();
    expect(seen?.high).toBeGreaterThan(15);
    expect(seen?.met).toEqual([]);
    // The metre's digits reach up to the staff's first line.
    expect(seen?.apart).toBeGreaterThan(3.5);
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    expectClean();
  },
);
