/**
 * Sheets for a jury of the engraving: twenty lines, each drawn by the score, by OpenSheetMusicDisplay 2.1
 * (BSD-3-Clause) and by Verovio 6.3 (LGPL-3.0) from the same export, at one width and one height of the staff, under
 * letters that are dealt anew for every line. `JURY_OUT` names the folder; the key lies beside it, not in it.
 *
 *     JURY_OUT=scores npx vitest run --project pictures tests/pictures/scores.test.ts
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import { writeMusicXml } from '../../src/core/exchange';
import { FEEL_IDS } from '../../src/core/feel';
import { type LineSheet, linePiece } from '../../src/core/lesson';
import { LEVELS } from '../../src/core/line';
import { openWithEngravers } from '../support/engravers';
import { launchBrowser } from '../support/launch';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

const out = process.env.JURY_OUT;

/** One behind the other, an empty line between: feel and level, and below them the chart. */
const LINES = readFileSync(new URL('scores.txt', import.meta.url), 'utf8')
  .trim()
  .split('\n\n');

function lineOf(text: string): LineSheet {
  const [head = '', ...rows] = text.split('\n');
  const feel = FEEL_IDS.find((id) => head.startsWith(`${id} `));
  const level = LEVELS.find((each) => head.endsWith(` ${each}`));
  if (feel === undefined || level === undefined) throw new Error(`no feel and level: ${head}`);
  const { lesson } = composePiece(typedLesson('lesson', { chart: rows.join('\n'), feel, level }), LINE);
  return lineSheetIn(lesson, linePiece(lesson, LINE));
}

const DRAWERS = ['score', 'OpenSheetMusicDisplay', 'Verovio'] as const;
type Drawer = (typeof DRAWERS)[number];

/** In the order of their letters. */
function dealt(line: number): readonly Drawer[] {
  const random = createRandom(line + 1);
  return DRAWERS.map((drawer) => ({ drawer, at: random.below(1_000_000) }))
    .sort((one, other) => one.at - other.at)
    .map(({ drawer }) => drawer);
}

async function openPage(page: Page): Promise<void> {
  await openWithEngravers(page);
  await page.evaluate(async () => {
    await (await window.rooms.score()).loadScoreFonts();
    const home = document.createElement('div');
    home.id = 'home';
    home.style.cssText = 'width: 900px; padding: 16px 20px; background: #fff';
    document.body.replaceChildren(home);
  });
}

/** The printed width of an A4 page is 900 pixels here, and the staff 7 millimetres of it. */
const draw = (page: Page, drawer: Drawer, sheet: LineSheet, xml: string): Promise<void> =>
  page.evaluate(
    async ({ drawer, sheet, xml }) => {
      const home = document.createElement('div');
      document.querySelector('#home')?.replaceChildren(home);
      const point = 900 / 510.24;
      if (drawer === 'score') {
        const score = await window.rooms.score();
        const layout = score.layoutScore(sheet, {
          width: 900,
          staffSpace: 4.96 * point,
          degrees: false,
          fingers: true,
          counting: false,
          barsPerSystem: 4,
          joinsSections: true,
          measureNumbers: true,
          textSizes: {
            ...{ chord: 13 * point, tab: 10 * point, degree: 10 * point, finger: 9 * point },
            ...{ counting: 10 * point, section: 11 * point, small: 10 * point },
          },
        });
        for (const { index } of layout.systems) {
          const system = document.createElement('div');
          system.style.cssText = `margin-bottom: ${14 * point}px; line-height: 0`;
          system.append(score.drawSystem(layout, index));
          home.append(system);
        }
      } else if (drawer === 'OpenSheetMusicDisplay') {
        const { OpenSheetMusicDisplay } = Reflect.get(window, 'opensheetmusicdisplay');
        const own = new OpenSheetMusicDisplay(home, {
          autoResize: false,
          drawTitle: false,
          drawPartNames: false,
        });
        await own.load(xml);
        own.zoom = 0.875;
        own.render();
      } else {
        const { toolkit: Toolkit } = Reflect.get(window, 'verovio');
        const own = new Toolkit();
        const margins = { pageMarginLeft: 110, pageMarginRight: 20, pageMarginTop: 20, pageMarginBottom: 20 };
        const page = { scale: 48.6, pageWidth: 1852, pageHeight: 60_000, adjustPageHeight: true };
        own.setOptions({ ...page, ...margins, header: 'none', footer: 'none' });
        if (!own.loadData(xml)) throw new Error('the line cannot be read');
        home.innerHTML = own.renderToSVG(1);
      }
    },
    { drawer, sheet, xml },
  );

test.skipIf(out === undefined)(
  'the sheets of the jury of the engraving',
  async () => {
    const folder = out ?? '';
    mkdirSync(folder, { recursive: true });
    const browser = await launchBrowser();
    const context = await browser.newContext({
      viewport: { width: 940, height: 900 },
      bypassCSP: true,
      deviceScaleFactor: 1.6,
    });
    const page = await context.newPage();
    await openPage(page);
    const key: string[] = [];
    for (const [index, line] of LINES.entries()) {
      const sheet = lineOf(line);
      const name = String(index + 1).padStart(2, '0');
      const drawers = dealt(index);
      key.push(`${name} ${drawers.join(' ')}`);
      for (const [letter, drawer] of drawers.entries()) {
        await draw(page, drawer, sheet, writeMusicXml(sheet, 'Line'));
        await page.waitForTimeout(300);
        await page.locator('#home').screenshot({ path: `${folder}/${name}-${'ABC'[letter]}.png` });
      }
    }
    writeFileSync(`${folder}-key.txt`, `${key.join('\n')}\n`);
    await browser.close();
  },
  900_000,
);
