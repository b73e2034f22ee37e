import type { Page } from 'playwright-core';

/**
 * Tells how many milliseconds a page's main thread has worked so far, by the processor's time: what other programs take
 * is not counted.
 */
export async function workedIn(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
  };
}
