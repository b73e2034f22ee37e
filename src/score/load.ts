import academicoUrl from '@vexflow-fonts/academico/academico.woff2?url';
import academicoBoldUrl from '@vexflow-fonts/academico/academico-bold.woff2?url';
import bravuraUrl from '@vexflow-fonts/bravura/bravura.woff2?url';
import type { Steps } from './steps';
import type { Engravable, ScoreLayout, ScoreOptions } from './types';

type Engraver = typeof import('./engrave');

let engraver: Engraver | null = null;
let loading: Promise<void> | null = null;

/**
 * Loads the engraving library and the two music fonts, once; every later call gives the same promise.
 * @throws the network's error when a file cannot be fetched; the next call tries again.
 */
export function loadScoreFonts(): Promise<void> {
  loading ??= load().catch((problem: unknown) => {
    loading = null;
    throw problem;
  });
  return loading;
}

async function load(): Promise<void> {
  const [fetched] = await Promise.all([
    import('./engrave'),
    loadFont('Bravura', bravuraUrl, 'normal'),
    loadFont('Academico', academicoUrl, 'normal'),
    loadFont('Academico', academicoBoldUrl, 'bold'),
  ]);
  await document.fonts.ready;
  engraver = fetched;
}

async function loadFont(family: string, url: string, weight: string): Promise<void> {
  document.fonts.add(await new FontFace(family, `url(${url})`, { weight, display: 'block' }).load());
}

/** With which options a piece was laid out last. */
const laidWith = new WeakMap<Engravable, ScoreOptions>();

/**
 * Lays a piece out: line breaks, spacing, heights, and every piece of ink. Nothing is drawn.
 * @throws Error before {@link loadScoreFonts} has finished.
 */
export function layoutScore(sheet: Engravable, options: ScoreOptions): ScoreLayout {
  laidWith.set(sheet, options);
  return loaded().engrave(sheet, options);
}

/**
 * Lays a piece out with the options of another one; null where that was not laid out at once.
 * @throws Error before {@link loadScoreFonts} has finished.
 */
export function layoutAlike(sheet: Engravable, other: Engravable): ScoreLayout | null {
  const options = laidWith.get(other);
  return options === undefined ? null : loaded().engrave(sheet, options);
}

/**
 * The same layout in many small steps, for a piece so long that the page would stand still meanwhile.
 * @throws Error before {@link loadScoreFonts} has finished.
 */
export const layoutInSteps = (sheet: Engravable, options: ScoreOptions): Steps<ScoreLayout> =>
  loaded().engraveInSteps(sheet, options);

function loaded(): Engraver {
  if (!engraver) throw new Error('The score cannot be laid out before loadScoreFonts has finished.');
  return engraver;
}
