/**
 * The bench: the rooms that need a browser, without the app around them. It is built like the app and stands
 * under the same Content-Security-Policy. A test opens it and uses a room in the page:
 *
 *     const { page, expectClean } = await openBench();
 *     const width = await page.evaluate(async () => {
 *       const score = await window.rooms.score();
 *       return score.someFunction(document.querySelector('#bench'));
 *     });
 *
 * The function given to `evaluate` runs in the page: it sees nothing of the test file but the JSON values
 * passed as its second argument, and gives back JSON values.
 */
const rooms = {
  base: () => import('../../src/core/base'),
  theory: () => import('../../src/core/theory'),
  chart: () => import('../../src/core/chart'),
  fretboard: () => import('../../src/core/fretboard'),
  feel: () => import('../../src/core/feel'),
  notation: () => import('../../src/core/notation'),
  line: () => import('../../src/core/line'),
  lesson: () => import('../../src/core/lesson'),
  composing: () => import('../../src/core/composing'),
  performance: () => import('../../src/core/performance'),
  score: () => import('../../src/score'),
  sound: () => import('../../src/sound'),
  handout: () => import('../../src/handout'),
};

/** The address of the audio worklet that listens to what a page plays (see `tap.js`). */
const tapAddress = new URL('./tap.js', import.meta.url).href;

declare global {
  interface Window {
    rooms: typeof rooms;
    tapAddress: string;
  }
}

window.rooms = rooms;
window.tapAddress = tapAddress;

export {};
