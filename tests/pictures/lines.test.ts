/**
 * Sheets of composed lines, as the page shows them and as they are printed, four a picture: every feel at four levels.
 *
 *     LINES_OUT=lines npx vitest run --project pictures tests/pictures/lines.test.ts
 */
import { mkdirSync } from 'node:fs';
import { test } from 'vitest';
import { openBench } from '../support/browser';
import { type ListedLine, sixtyLines } from '../support/sixty-lines';

const out = process.env.LINES_OUT;
const EACH = 4;

const VIEWS = ['page', 'paper'] as const;

test.skipIf(out === undefined)(
  'sheets of composed lines',
  async () => {
    const folder = out ?? '';
    mkdirSync(folder, { recursive: true });
    const { page } = await openBench({ width: 1000, height: 900 });
    const draw = (lines: readonly Pick<ListedLine, 'name' | 'sheet'>[], view: (typeof VIEWS)[number]) =>
      page.evaluate(
        async ({ lines, view }) => {
          const score = await window.rooms.score();
          await score.loadScoreFonts();
          const home = document.createElement('div');
          home.id = 'home';
          home.style.cssText = 'width: 960px; padding: 16px 20px; background: #fff';
          for (const { name, sheet } of lines) {
            const heading = document.createElement('p');
            heading.style.cssText = 'font: 13px sans-serif; margin: 8px 0';
            heading.textContent = `${name} · ${sheet.tempo}`;
            home.append(heading);
            const rows = view === 'page';
            const layout = score.layoutScore(sheet, {
              width: 960,
              staffSpace: rows ? 9 : 7,
              degrees: rows,
              fingers: true,
              counting: rows,
              positions: !rows,
              barsPerSystem: 4,
              joinsSections: !rows,
              measureNumbers: true,
            });
            for (const { index } of layout.systems) {
              const system = document.createElement('div');
              system.style.cssText = 'margin-bottom: 10px; line-height: 0';
              system.append(score.drawSystem(layout, index));
              home.append(system);
            }
          }
          document.body.replaceChildren(home);
        },
        { lines, view },
      );
    const all = sixtyLines().map(({ name, sheet }) => ({ name, sheet }));
    for (const view of VIEWS) {
      for (let first = 0; first < all.length; first += EACH) {
        await draw(all.slice(first, first + EACH), view);
        await page.waitForTimeout(200);
        const name = `${view}-${String(first / EACH + 1).padStart(2, '0')}`;
        await page.locator('#home').screenshot({ path: `${folder}/${name}.png` });
      }
    }
  },
  900_000,
);
