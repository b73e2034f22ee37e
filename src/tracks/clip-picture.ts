import type { ClipFilm, ClipFrame } from './clip-messages';

/** Half the width of the playhead, in pixels. */
const HALF = 3;

type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** Draws one picture of a film. */
export function drawFrame(pen: Pen, film: ClipFilm<CanvasImageSource>, { scene, playhead }: ClipFrame): void {
  const { width, height, colours, pictures, scenes } = film;
  const shown = scenes[scene];
  pen.globalAlpha = 1;
  pen.fillStyle = colours.ground;
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = colours.band;
  for (const band of shown?.bands ?? []) pen.fillRect(band.x, band.y, band.width, band.height);
  for (const { picture, x, y, strength } of shown?.layers ?? []) {
    const drawn = pictures[picture];
    if (drawn === undefined) continue;
    pen.globalAlpha = strength;
    pen.drawImage(drawn, x, y);
  }
  pen.globalAlpha = 1;
  if (playhead === null) return;
  pen.fillStyle = colours.playhead;
  pen.fillRect(playhead.x - HALF, playhead.top, 2 * HALF, playhead.bottom - playhead.top);
}
