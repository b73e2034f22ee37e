import type { Letters } from '../../../handout';
import type { FretboardRequest } from '../../../score';
import type { Session } from '../../state';
import { attempt } from './attempt';
import { saveFile } from './file';

export type PictureKind = 'svg' | 'png';

/**
 * Saves a picture that stands alone on a transparent ground, and says so when it cannot be made.
 * @param stem - of the file's name, without its ending
 */
export const savePicture = (
  session: Session,
  kind: PictureKind,
  stem: string,
  make: () => Promise<SVGSVGElement>,
): Promise<void> =>
  attempt(session, 'The picture', async () => {
    const [picture, { pngFile, svgFile }] = await Promise.all([make(), import('../../../handout')]);
    if (kind === 'svg') saveFile(stem, svgFile(picture), 'svg');
    else saveFile(stem, await pngFile(picture), 'png');
  });

/** Large enough for a slide, in CSS pixels; a PNG has three times as many. */
const NECK_WIDTH = 640;

/** The neck as a picture of its own. */
export async function standAloneNeck(
  request: Omit<FretboardRequest, 'width'>,
  letters: Letters = 'outlines',
): Promise<SVGSVGElement> {
  const [{ drawFretboard }, { standAlone }] = await Promise.all([
    import('../../../score'),
    import('../../../handout'),
  ]);
  return standAlone(drawFretboard({ ...request, sounding: null, width: NECK_WIDTH }), letters);
}

/** Saves the neck with notes on it; see {@link savePicture}. */
export const saveNeck = (
  session: Session,
  kind: PictureKind,
  stem: string,
  request: Omit<FretboardRequest, 'width'>,
): void => void savePicture(session, kind, stem, () => standAloneNeck(request));

export type SaveNeck = typeof saveNeck;
