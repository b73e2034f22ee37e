/**
 * The score beside two engraving libraries, in one page of one browser: the same 64 bars at a width that none of them
 * has drawn before, laid out and drawn until the drawing stands in the page. Each begins with the music in its own
 * memory: reading MusicXML is not counted. The aim is to be ten times as fast as either.
 *
 * The libraries: OpenSheetMusicDisplay 2.1 (BSD-3-Clause) and Verovio 6.3 (LGPL-3.0). Both are put into the page as
 * scripts of their own.
 */
import { afterAll, bench, describe } from 'vitest';
import { writeMusicXml } from '../../../src/core/exchange';
import { openWithEngravers } from '../../support/engravers';
import { launchBrowser } from '../../support/launch';
import { sheetOf } from '../../support/score-sheets';

const FOUR =
  'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1';
const sheet = sheetOf({
  key: 'F',
  chart: Array(16).fill('| F | Dm | Gm | C7 |').join('\n'),
  notes: Array(16).fill(FOUR).join(' | '),
});

const browser = await launchBrowser();
afterAll(() => browser.close());
const context = await browser.newContext({ viewport: { width: 1000, height: 900 }, bypassCSP: true });
const page = await context.newPage();
await openWithEngravers(page);

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

await page.evaluate(
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
      drawWith: (name: keyof typeof draw) => {
        // Every round has a width of its own, in which nothing can have been remembered.
        width = width > 1000 ? 800.1 : width + 0.9;
        home.replaceChildren();
        draw[name](width);
        home.getBoundingClientRect();
        return home.querySelectorAll('path').length;
      },
    });
  },
  { sheet, xml: writeMusicXml(sheet, 'Line') },
);

const drawWith = (name: string): Promise<number> =>
  page.evaluate((name) => Reflect.get(window, 'drawWith')(name), name);

for (const name of ['own', 'inDom', 'inText']) {
  if ((await drawWith(name)) < 64) throw new Error(`${name} draws nothing`);
}

describe('layout and drawing of 64 bars in one browser', () => {
  const rounds = { time: 4000, warmupTime: 1500 };
  bench('the score', async () => void (await drawWith('own')), rounds);
  bench('OpenSheetMusicDisplay', async () => void (await drawWith('inDom')), rounds);
  bench('Verovio', async () => void (await drawWith('inText')), rounds);
});
