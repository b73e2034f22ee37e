import { gzipSync } from 'node:zlib';
import { describe, expect, inject, test } from 'vitest';
import { openApp } from '../support/browser';

describe('the built app, below some folder of a static host', () => {
  test('opens with its name and its chart, and nothing complains', async () => {
    const { page, expectClean } = await openApp();
    await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
    expect(await page.title()).toContain('Ground Bass');
    await page.waitForLoadState('networkidle');
    expectClean();
  });

  test('opens at an address without the closing slash of index.html, and with one', async () => {
    const { page, expectClean } = await openApp({ path: 'index.html' });
    await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
    expectClean();
  });

  test('opens a lesson of this device with one file of script more than the first look', async () => {
    const { page, address } = await openApp();
    const chart = page.getByRole('textbox', { name: 'Chord chart' });
    await chart.fill('| C | F | G7 | C |');
    await page.getByText('saved on this device', { exact: true }).waitFor();
    const html = await (await fetch(address)).text();
    const further = new Set<string>();
    await page.route('**/*.js', (route) => {
      const name = route.request().url().split('/').at(-1) ?? '';
      if (html.includes(name)) return route.continue();
      // The page that is left may still ask for what comes after its first look: only what saves is let through.
      if (!name.startsWith('behind-')) return route.abort();
      further.add(name);
      return route.continue();
    });
    await page.reload();
    await expect.poll(() => chart.inputValue()).toBe('| C | F | G7 | C |');
    expect(further.size).toBe(1);
  });

  test('stands under a policy that allows nothing from elsewhere', async () => {
    const { page } = await openApp();
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/unsafe-inline|unsafe-eval|https?:|\*/);
  });

  test('brings the notices of the packages and fonts it is built with, reached from the page', async () => {
    const { page } = await openApp();
    await page.getByRole('button', { name: 'Ground Bass' }).click();
    const link = page.getByRole('link', { name: 'Licences of the packages and fonts it is built with' });
    expect(await link.getAttribute('href')).toBe('./third-party.txt');
    const notices = await (await fetch(new URL('third-party.txt', inject('site').app))).text();
    for (const name of ['react 19', 'vexflow 5', 'tone 15', 'pdfkit', 'bravura', 'academico', 'atkinson']) {
      expect(notices).toContain(name);
    }
    expect(notices).toContain('SIL OPEN FONT LICENSE Version 1.1');
    // What writes sound and films, which only workers name, with the texts that two of the licences ask for.
    for (const name of ['wasm-media-encoders 0', 'mediabunny 1', 'LAME 3', 'lame.sourceforge.io']) {
      expect(notices).toContain(name);
    }
    expect(notices).toContain(
      'Source: https://github.com/Vanilagy/mediabunny\n\nMozilla Public License Version 2.0',
    );
    expect(notices).toContain('GNU LIBRARY GENERAL PUBLIC LICENSE');
  });

  test('needs less than 150 kB of script, and 10 of page and style, to be seen and typed into', async () => {
    const { app } = inject('site');
    const html = await (await fetch(app)).text();
    // Vite names the entry and everything that it imports at once; what is imported later is not among them.
    const named = [...html.matchAll(/(?:src|href)="(\.\/[^"]+\.(?:js|css))"/g)].map(([, path = '']) => path);
    const files = await Promise.all(named.map(async (path) => (await fetch(new URL(path, app))).text()));
    const sizes = files.map((text) => gzipSync(text).length);
    const sizeOf = (ending: string) =>
      sizes.reduce((sum, size, index) => (named[index]?.endsWith(ending) ? sum + size : sum), 0);
    expect(sizeOf('.js')).toBeGreaterThan(50_000);
    expect(sizeOf('.js')).toBeLessThan(150_000);
    expect(gzipSync(html).length + sizeOf('.css')).toBeLessThan(10_000);
  });
});
