/**
 * Sheets for a jury of the engraving: twenty lines, each drawn by the score, by OpenSheetMusicDisplay 2.1
 * (BSD-3-Clause) and by Verovio 6.3 (LGPL-3.0) from the same export, at one width and one height of the staff, under
 * letters that are dealt anew for every line. `JURY_OUT` names the folder; the key lies beside it, not in it.
 *
 *     JURY_OUT=/tmp/scores npx vitest run --project pictures tests/pictures/scores.test.ts
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { inject, test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import { writeMusicXml } from '../../src/core/exchange';
import type { FeelId } from '../../src/core/feel';
import {
  deriveSheets,
  type LineSheet,
  newLesson,
  setChartText,
  setFeel,
  setLevel,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { launchBrowser } from '../support/launch';

const out = process.env.JURY_OUT;

const LINES: readonly (readonly [FeelId, Level, string])[] = [
  ['early-ska', 1, '(key: F)\n| F | Dm | Gm | C7 |\n| F | F7 | Bb Bbm | F C7 |'],
  [
    'rocksteady',
    3,
    '[Verse]\n| G | Em | C | D7 |\n| G | Em | C D7 | G |\n[Chorus]\n| C | G/B | Am | D7 |\n| C | D7 | G | G |',
  ],
  ['one-drop', 2, '| Am | Dm | Am | E7 |\n| Am | Dm | E7 | Am |\n| F | G | Am | Am |'],
  ['rockers', 4, '(key: Eb minor)\n| Ebm | Cbmaj7 | Gb | Db |\n| Ebm | Abm7 | Bb7b9 | Ebm |'],
  ['steppers', 5, '(2) | E7 |\n| Am | Am G | F | E7 |\n|: Am | C | Dm | E7 :| x3\n| F G | Am |'],
  ['revival-ska', 2, '|: C | Am | F | G :|\n| C7 | F | Fm | C |'],
  [
    'soul-backbeat',
    4,
    '(key: Eb)\n| Eb | Cm | Ab | Bb7 |\n| Eb | Cm | Fm Bb7 | Eb |\n| Ab | Abm | Eb/G | Gb7 |\n| Fm7 | Bb7sus4 | Eb | Eb |',
  ],
  ['two-beat', 1, '|: C7 | % | F7 | % |\n| C7 | G7 | C7 |1. G7 :|2. C7 |'],
  ['shuffle-blues', 4, '| A7 | D7 | A7 | A7 |\n| D7 | D7 | A7 | F#7 |\n| Bm7 | E7 | A7 F#7 | Bm7 E7 |'],
  [
    'walking-swing',
    5,
    '(key: Bb)\n| Bbmaj7#11 | Gm7b5 | Cm7 F7alt | Bbmaj7 Abmaj7#5 |\n| Dm7b5 | G7b9 | Cm11 | F13sus4 |\n| Bbmaj7 | Bdim7 | Cm7 | F7 |',
  ],
  ['bossa', 3, '| Dm7 | G7b9 | Cmaj7 | A7b13 |\n| Dm7 | Db7#11 | Cmaj7 | Cmaj7 |'],
  ['disco', 3, '(key: Gb)\n| Gb | Ebm | Cb | Db7 |\n| Gb | Ebm7 | Abm7 Db7 | Gb |'],
  ['waltz', 2, '(key: D)\n(1) | A7 |\n[A]\n|: D | Bm | Em7 | A7 |\n| D | G |1. A7 | D :|2. A7 | D |'],
  ['ballad', 4, '(key: Db)\n| Dbmaj7 | Bbm7 | Ebm7 | Ab7 |\n| Dbmaj7 | Gb7 | Fm7 Bb7b9 | Ebm7 Ab7sus4 |'],
  ['funk', 5, '| Em7 | Em7 | A7 | A7 |\n| Em7 | Em7 | Am7 B7 | Em7 |'],
  [
    'calypso',
    4,
    '| C | F | G7 | C |\n| Am | Dm G7 | C | C7 |\n| F | F#dim7 | C/G A7 | Dm7 G7 |\n| C | G7 | C | C |',
  ],
  ['waltz', 4, '| Cmaj7 | Am7 | Dm7 | G7 |\n| Em7b5 | A7b9 | Dm7 | G7sus4 |\n| C | F#m7b5 | B7 | Em |'],
  [
    'rocksteady',
    2,
    '(segno) | Dm7 | G7 | Cmaj7 | Am7 |\n| Dm7 | G7 (to coda) | Cmaj7 | A7 (D.S. al coda) |\n(coda) | Fmaj7 | G7 | C | C |',
  ],
  ['funk', 4, '(key: Bm)\n| Bm7 | G7 F#7 | Bm7 | E9 |\n| Gmaj7 | F#7#9 | Bm7 |'],
  ['early-ska', 0, '| C |\n| F | G7 | C |\n| C | F | Dm7 G7 | C | C |'],
];

function lineOf([feel, level, chart]: (typeof LINES)[number]): LineSheet {
  const fresh = newLesson('lesson', 'Line');
  const id = fresh.pieces[0]?.id ?? '';
  const asked = setChartText(setLevel(setFeel(fresh, id, feel), id, level), id, chart);
  const [sheet] = deriveSheets(composePiece(asked, id).lesson);
  if (sheet?.kind !== 'line') throw new Error('a line is a line');
  return sheet;
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
  await page.goto(inject('site').bench);
  const { resolve } = createRequire(import.meta.url);
  for (const library of ['opensheetmusicdisplay', 'verovio']) {
    await page.route(`**/${library}.js`, (route) =>
      route.fulfill({ path: resolve(library), contentType: 'text/javascript; charset=utf-8' }),
    );
    await page.addScriptTag({ url: `${library}.js` });
  }
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
        const textSizes = { chord: 13, tab: 10, degree: 10, finger: 9, counting: 10, section: 11, small: 10 };
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
            chord: textSizes.chord * point,
            tab: textSizes.tab * point,
            degree: textSizes.degree * point,
            finger: textSizes.finger * point,
            counting: textSizes.counting * point,
            section: textSizes.section * point,
            small: textSizes.small * point,
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
        let own: {
          setOptions(all: object): void;
          loadData(xml: string): boolean;
          renderToSVG(page: number): string;
        };
        // Its WebAssembly says when it is ready only to those who asked before; a toolkit is made as soon as it is.
        for (;;) {
          try {
            own = new Toolkit();
            break;
          } catch {
            await new Promise((again) => setTimeout(again, 50));
          }
        }
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
