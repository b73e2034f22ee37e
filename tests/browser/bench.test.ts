import { expect, test } from 'vitest';
import { openBench } from '../support/browser';

test('the bench hands out a room inside the page', async () => {
  const { page, expectClean } = await openBench({ width: 800, height: 600 });
  const middleC = await page.evaluate(async () => {
    const base = await window.rooms.base();
    return base.midiOf({ letter: 'C', alteration: 0, octave: 4 });
  });
  expect(middleC).toBe(60);
  expectClean();
});

test('text has a width without fonts of the machine', async () => {
  const { page } = await openBench();
  const width = await page.evaluate(() => {
    const word = document.createElement('span');
    word.textContent = 'Handout';
    document.body.append(word);
    return word.getBoundingClientRect().width;
  });
  expect(width).toBeGreaterThan(30);
});

test('what should not happen is noticed', async () => {
  const { page, complaints, expectClean } = await openBench();
  await page.evaluate(async () => {
    // biome-ignore lint/suspicious/noConsole: the warning is what must be noticed
    console.warn('a warning');
    const script = document.createElement('script');
    script.textContent = 'window.injected = true';
    document.body.append(script);
    await fetch('missing.json');
    await fetch('http://127.0.0.1:9/elsewhere').catch(() => undefined);
    setTimeout(() => {
      throw new Error('thrown aside');
    });
    await new Promise((resolve) => setTimeout(resolve, 50));
  });
  expect(await page.evaluate(() => Reflect.has(window, 'injected'))).toBe(false);
  const noticed = complaints.join('\n');
  expect(noticed).toContain('console warning: a warning');
  expect(noticed).toContain('against the policy: script-src-elem inline');
  expect(noticed).toContain('answered 404');
  expect(noticed).toContain('against the policy: connect-src http://127.0.0.1:9/elsewhere');
  expect(noticed).toContain('uncaught: Error: thrown aside');
  expect(expectClean).toThrow();
});

test('the clock of an audio context runs', async () => {
  const { page, expectClean } = await openBench();
  const seconds = await page.evaluate(async () => {
    const context = new AudioContext();
    await context.resume();
    await new Promise((resolve) => setTimeout(resolve, 200));
    return context.currentTime;
  });
  expect(seconds).toBeGreaterThan(0.05);
  expectClean();
});
