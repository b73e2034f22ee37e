/** Pictures of which a clip is put together: drawings of the score room, and words. */

/** Pixels of the clip a pixel of the page. */
export const SCALE = 2;

/** Sizes of letters in pixels, with the room of a line. */
export const TITLE = { size: 56, height: 96 } as const;
export const CAPTION = { size: 38, line: 50 } as const;

/** An empty picture and what draws on it. */
export const pen = (
  width: number,
  height: number,
): readonly [HTMLCanvasElement, CanvasRenderingContext2D] => {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width));
  canvas.height = Math.max(1, Math.round(height));
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('The browser draws no pictures.');
  return [canvas, context];
};

/** A drawing of the score room as a picture, letters and all. */
export async function pictureOf(
  drawing: SVGSVGElement,
  dark: boolean,
  scale = SCALE,
): Promise<HTMLCanvasElement> {
  const { standAlone, svgFile } = await import('../../../handout');
  const alone = await standAlone(drawing);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgFile(alone))}`;
  await image.decode();
  const [width, height] = [Number(alone.getAttribute('width')), Number(alone.getAttribute('height'))];
  const [canvas, context] = pen(width * scale, height * scale);
  if (dark) context.filter = 'invert(1)';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/** Words in lines that fit, as a picture. */
export function textPicture(
  text: string,
  width: number,
  size: number,
  dark: boolean,
  most: number,
): HTMLCanvasElement {
  const family = getComputedStyle(document.body).fontFamily;
  const font = `${size === TITLE.size ? 'bold ' : ''}${size}px ${family}`;
  const lineHeight = Math.round(size * 1.3);
  const [canvas, context] = pen(width, lineHeight * most);
  context.font = font;
  context.fillStyle = dark ? '#ffffff' : '#000000';
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && context.measureText(longer).width <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  for (const [index, line] of lines.slice(0, most).entries()) {
    const cut = index === most - 1 && lines.length > most ? `${line} …` : line;
    context.fillText(cut, 0, lineHeight * index + size);
  }
  return canvas;
}
