import { expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { minutesOf, tell } from './minutes';

const MINUTES = minutesOf('SOAK_MEMORY_MINUTES', 30);

/** What a page needs to settle after the first sound: its code, its sounds, its first collections. */
const SETTLED = 2;

/** Bytes of the page's own objects by which they may differ after a collection. */
const SLACK = 1_500_000;

test(`${MINUTES} minutes in a loop leave no more in memory than ${SETTLED}`, async () => {
  const { page, expectClean } = await openApp();
  await page.getByRole('switch', { name: 'Loop' }).click();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const status = page.getByRole('status', { name: 'Playback' });
  await status.getByText(/Playing bar/).waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const look = async () => {
    await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    const { nodes, jsEventListeners } = await session.send('Memory.getDOMCounters');
    const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN;
    return { heap, nodes, listeners: jsEventListeners };
  };
  const looks: Awaited<ReturnType<typeof look>>[] = [];
  for (let minute = 1; minute <= MINUTES; minute += 1) {
    await page.waitForTimeout(60_000);
    const now = await look();
    looks.push(now);
    tell(`${minute} min: ${(now.heap / 1e6).toFixed(2)} MB, ${now.nodes} nodes, ${now.listeners} listeners`);
  }
  expect(await status.textContent()).toMatch(/Playing bar/);
  expectClean();
  const settled = looks[Math.min(SETTLED, looks.length - 1)];
  const last = looks.at(-1);
  if (settled === undefined || last === undefined) throw new Error('Nothing was measured.');
  expect(last.heap - settled.heap).toBeLessThan(SLACK);
  expect(last.nodes - settled.nodes).toBeLessThan(200);
  expect(last.listeners - settled.listeners).toBeLessThan(20);
});
