import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { inject } from 'vitest';

/**
 * Opens the bench with the two engraving libraries in it, as `window.opensheetmusicdisplay` and `window.verovio`. The
 * page's context needs `bypassCSP`: Verovio compiles WebAssembly, which the app's policy would not let in.
 */
export async function openWithEngravers(page: Page): Promise<void> {
  await page.goto(inject('site').bench);
  const { resolve } = createRequire(import.meta.url);
  for (const library of ['opensheetmusicdisplay', 'verovio']) {
    await page.route(`**/${library}.js`, (route) =>
      route.fulfill({ path: resolve(library), contentType: 'text/javascript; charset=utf-8' }),
    );
    await page.addScriptTag({ url: `${library}.js` });
  }
  // Its WebAssembly says when it is ready only to those who asked before; a toolkit is made as soon as it is.
  await page.waitForFunction(() => {
    try {
      return new (Reflect.get(window, 'verovio').toolkit)() !== null;
    } catch {
      return false;
    }
  });
}
