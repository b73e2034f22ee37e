/**
 * The score beside two engraving libraries, in one page of one browser: the same 64 bars at a width that none of them
 * has drawn before, laid out and drawn until the drawing stands in the page. Each begins with the music in its own
 * memory and with an empty place: neither reading MusicXML is counted, nor taking away what another drew before. The aim
 * is to be ten times as fast as either, told for four bars over and over and for bars that all differ, in a page that
 * drew before and the first time in a page, by the work of the main thread. The first time is told of pages that draw
 * once: who draws behind another finds the browser's part of the work warm. The libraries have laid the music out once
 * by then, which belongs to how they read it, and the score has not.
 *
 * The libraries: OpenSheetMusicDisplay 2.1 (BSD-3-Clause) and Verovio 6.3 (LGPL-3.0). Both are put into the page as
 * scripts of their own.
 */
import type { Page } from 'playwright-core';
import { afterAll, bench, describe } from 'vitest';
import { createRandom } from '../../../src/core/base';
import { writeMusicXml } from '../../../src/core/exchange';
import type { LineSheet } from '../../../src/core/lesson';
import { openWithEngravers } from '../../support/engravers';
import { launchBrowser } from '../../support/launch';
import { sheetOf } from '../../support/score-sheets';
import { workedIn } from '../page-work';
import { tellFigure } from '../told';

const FOUR =
  'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1';
const REPEATED = sheetOf({
  key: 'F',
  chart: Array(16).fill('| F | Dm | Gm | C7 |').join('\n'),
  notes: Array(16).fill(FOUR).join(' | '),
});

/** 64 bars of which hardly two are the same. */
function differentBars(): LineSheet {
  const random = createRandom(7);
  const oneOf = <One>(all: readonly [One, ...One[]]): One => all[random.below(all.length)] ?? all[0];
  const bar = (): string =>
    oneOf(['1 1 .5 .5 1', '.5 .5 1 1 1', '1.5 .5 1 1', '1 .5 .5 .5 .5 1', '2 1 .5 .5', '.75 .25 1 1.5 .5'])
      .split(' ')
      .map((length) => {
        const pitch = oneOf([
          'E1',
          'F1',
          'F♯1',
          'G1',
          'A1',
          'B♭1',
          'B1',
          'C2',
          'C♯2',
          'D2',
          'E2',
          'F2',
          'G2',
        ]);
        return `${random.below(7) === 0 ? 'r' : pitch}/${length}`;
      })
      .join(' ');
  const chords = (): string =>
    `| ${Array.from({ length: 4 }, () => oneOf(['F', 'Dm', 'Gm', 'C7', 'B♭', 'Am', 'Cm7', 'E♭'])).join(' | ')} |`;
  return sheetOf({
    key: 'F',
    chart: Array.from({ length: 16 }, chords).join('\n'),
    notes: Array.from({ length: 64 }, bar).join(' | '),
  });
}

const SHEETS = { 'four bars over and over': REPEATED, 'different bars': differentBars() } as const;

const browser = await launchBrowser();
afterAll(() => browser.close());

/** The parts of the libraries that are called here. */
interface OtherInDom {
  load(document: string): Promise<unknown>;
  render(): void;
}
interface OtherInText {
  setOptions(options: Readonly<Record<string, unknown>>): void;
  loadData(document: string): boolean;
  redoLayout(): void;
  renderToSVG(page: number): string;
}

const ENGRAVERS = { own: 'the score', inDom: 'OpenSheetMusicDisplay', inText: 'Verovio' } as const;
type Engraver = keyof typeof ENGRAVERS;

interface Opened {
  readonly page: Page;
  /** Draws at another width; what the main thread worked for it, in milliseconds. */
  readonly draw: (name: Engraver) => Promise<number>;
}

/** A page in which each has the music in its memory and has drawn nothing. */
async function openWith(sheet: LineSheet): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 1000, height: 900 }, bypassCSP: true });
  const page = await context.newPage();
  await openWithEngravers(page);
  await readInto(page, sheet);
  const worked = await workedIn(page);
  const draw = async (name: Engraver): Promise<number> => {
    await page.evaluate(() => Reflect.get(window, 'emptyHome')());
    const before = await worked();
    const paths = await page.evaluate((name) => Reflect.get(window, 'drawWith')(name), name);
    if (paths < 64) throw new Error(`${ENGRAVERS[name]} draws nothing`);
    return (await worked()) - before;
  };
  return { page, draw };
}

const readInto = (page: Page, sheet: LineSheet): Promise<void> =>
  page.evaluate(
    async ({ sheet, xml }) => {
      const score = await window.rooms.score();
      await score.loadScoreFonts();
      const home = document.createElement('div');
      document.body.replaceChildren(home);

      const { OpenSheetMusicDisplay } = Reflect.get(window, 'opensheetmusicdisplay');
      const inDom: OtherInDom = new OpenSheetMusicDisplay(home, { autoResize: false, drawTitle: false });
      home.style.width = '900px';
      await inDom.load(xml);

      const { toolkit: Toolkit } = Reflect.get(window, 'verovio');
      const inText: OtherInText = new Toolkit();
      const verovioAt = (width: number) =>
        inText.setOptions({
          scale: 40,
          pageWidth: Math.round(width * 2.5),
          pageHeight: 60_000,
          adjustPageHeight: true,
          header: 'none',
          footer: 'none',
        });
      verovioAt(900);
      if (!inText.loadData(xml)) throw new Error('the second library cannot read the line');

      const draw = {
        own: (width: number) => {
          const layout = score.layoutScore(sheet, {
            width,
            degrees: false,
            fingers: false,
            counting: false,
            barsPerSystem: 4,
            measureNumbers: true,
          });
          home.replaceChildren(...layout.systems.map(({ index }) => score.drawSystem(layout, index)));
        },
        inDom: (width: number) => {
          home.style.width = `${width}px`;
          inDom.render();
        },
        inText: (width: number) => {
          verovioAt(width);
          inText.redoLayout();
          home.innerHTML = inText.renderToSVG(1);
        },
      };
      let width = 800;
      Object.assign(window, {
        /** Done when the page stands empty, so that whoever draws next pays for nothing of the one before. */
        emptyHome: () =>
          new Promise((done) => {
            home.replaceChildren();
            requestAnimationFrame(() => setTimeout(done));
          }),
        drawWith: (name: keyof typeof draw) => {
          // Every round has a width of its own, in which nothing can have been remembered.
          width = width > 1000 ? 800.1 : width + 0.9;
          draw[name](width);
          home.getBoundingClientRect();
          return home.querySelectorAll('path').length;
        },
      });
    },
    { sheet, xml: writeMusicXml(sheet, 'Line') },
  );

const ROUNDS = 10;
const PAGES = 3;
/** How many times as fast as a library the score is to be. */
const BUDGET = { least: 10 };

/** What one of them works for its drawing where nothing was drawn before. */
async function drawnFirst(sheet: LineSheet, name: Engraver): Promise<number> {
  const { page, draw } = await openWith(sheet);
  const worked = await draw(name);
  await page.context().close();
  return worked;
}

/** How many times as long as the score the libraries take, in turns. */
async function ratios(draw: Opened['draw']): Promise<Readonly<Record<'inDom' | 'inText', number>>> {
  const own = await draw('own');
  return { inDom: (await draw('inDom')) / own, inText: (await draw('inText')) / own };
}

for (const [name, sheet] of Object.entries(SHEETS)) {
  const first: Awaited<ReturnType<typeof ratios>>[] = [];
  const later: typeof first = [];
  for (let turn = 0; turn < PAGES; turn += 1) first.push(await ratios((name) => drawnFirst(sheet, name)));
  const { page, draw } = await openWith(sheet);
  for (let round = 0; round < 2 * ROUNDS; round += 1) later.push(await ratios(draw));
  await page.context().close();
  for (const [which, rounds] of [
    ['the first time in a page', first],
    ['again', later.slice(ROUNDS)],
  ] as const)
    for (const library of ['inDom', 'inText'] as const)
      tellFigure(
        `64 bars, ${name}, drawn ${which}, against ${ENGRAVERS[library]}`,
        'times as fast',
        BUDGET,
        rounds.map((round) => round[library]),
      );
}

describe('layout and drawing of 64 bars in one browser', async () => {
  const { draw } = await openWith(REPEATED);
  const rounds = { time: 4000, warmupTime: 1500 };
  for (const name of ['own', 'inDom', 'inText'] as const)
    bench(ENGRAVERS[name], async () => void (await draw(name)), rounds);
});
