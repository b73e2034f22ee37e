import { expect, inject, test } from 'vitest';
import { printLesson, sampleLesson } from '../../src/core/lesson';
import { tellFigure } from '../bench/told';
import { launchBrowser } from '../support/launch';
import { minutesOf, tell } from './minutes';
import { ownMemory, threadsAreKnown, timesOfThreads } from './threads';

const MINUTES = minutesOf('SOAK_PRACTICE_MINUTES', 30);

/** Bytes that the page may take, and the share of one processor beside the browser's own sound. */
const MOST_MEMORY = 150e6;
const MOST_WORK = 0.1;

/** Bytes by which the page's own objects may differ between the second and the last minute. */
const SLACK = 1_500_000;

/** The browser's own threads that play what is computed. */
const SOUND = /audio/i;

const share = (value: number): string => `${(value * 100).toFixed(1)} %`;

test.skipIf(!threadsAreKnown)(
  `${MINUTES} minutes of practising on a telephone's page stay small and leave the processor alone`,
  async () => {
    const browser = await launchBrowser();
    try {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
      const page = await context.newPage();
      await page.goto(`${inject('site').app}practice.html`);
      await page.locator('input[type="file"]').setInputFiles({
        name: 'week-3.lesson.json',
        mimeType: 'application/json',
        buffer: Buffer.from(printLesson(sampleLesson(0, 'practising'))),
      });
      await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
      const play = page.getByRole('button', { name: 'Play', exact: true });
      await play.click();
      const session = await context.newCDPSession(page);
      await session.send('Performance.enable');
      const ofBrowser = await browser.newBrowserCDPSession();
      const { processInfo } = await ofBrowser.send('SystemInfo.getProcessInfo');
      const pids = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
      const times = pids.map(timesOfThreads);
      const pid = pids[times.findIndex((each) => each.size === Math.max(...times.map(({ size }) => size)))];
      if (pid === undefined) throw new Error('The process of the page was not found.');
      const look = async () => {
        const { metrics } = await session.send('Performance.getMetrics');
        const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN;
        return { memory: ownMemory(pid), heap, threads: timesOfThreads(pid), at: performance.now() };
      };
      let before = await look();
      const heaps: number[] = [];
      const works: number[] = [];
      const memories: number[] = [];
      for (let minute = 1; minute <= MINUTES; minute += 1) {
        await page.waitForTimeout(60_000);
        // Where it has come to its end the student plays on.
        if (await play.isVisible()) await play.click();
        const now = await look();
        const seconds = (now.at - before.at) / 1000;
        let [sound, work] = [0, 0];
        for (const [name, time] of now.threads) {
          const used = (time - (before.threads.get(name) ?? 0)) / seconds;
          if (SOUND.test(name)) sound += used;
          else work += used;
        }
        before = now;
        await session.send('HeapProfiler.collectGarbage');
        heaps.push((await look()).heap);
        works.push(work);
        memories.push(now.memory);
        tell(
          `${minute} min: ${(now.memory / 1e6).toFixed(0)} MB, of it ${((heaps.at(-1) ?? 0) / 1e6).toFixed(2)} MB objects; ` +
            `${share(work)} of a core beside the sound's ${share(sound)}`,
        );
      }
      const most = Math.max(...memories);
      const inMegabytes = memories.map((memory) => memory / 1e6);
      tellFigure('Memory of a telephone’s practice page', 'MB', { most: MOST_MEMORY / 1e6 }, inMegabytes);
      const inPercent = works.map((work) => work * 100);
      tellFigure('Work beside the browser’s own sound', '% of a core', { most: MOST_WORK * 100 }, inPercent);
      tell(`Memory ${(most / 1e6).toFixed(0)} MB at most.`);
      works.sort((one, other) => one - other);
      expect(most).toBeLessThan(MOST_MEMORY);
      expect(works[works.length >> 1]).toBeLessThan(MOST_WORK);
      expect((heaps.at(-1) ?? 0) - (heaps[Math.min(1, heaps.length - 1)] ?? 0)).toBeLessThan(SLACK);
    } finally {
      await browser.close();
    }
  },
);
