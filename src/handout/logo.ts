import { failure, type Result, success } from '../core/base';
import { isActive } from './active-drawing';
import type { Logo } from './blocks/head';
import { points } from './layout/paper';
import { opaqueSource, whiteCanvas } from './pdf/opaque';
import { isTooRich } from './rich-drawing';

const MEGABYTE = 1_000_000;
const LARGEST_FILE = 5 * MEGABYTE;
/** Pixels on a side beyond which decoding would stall a small machine. */
const LARGEST_SIDE = 8_000;
/**
 * Pixels of a logo in a lesson, beyond which drawing it would hold the page up. A logo that was chosen here has far
 * fewer; a lesson file may hold any.
 */
const MOST_PIXELS = 4_000_000;
/** The room that the page gives it, at 600 dots an inch. */
const KEPT = { width: (points(45) / 72) * 600, height: (points(15) / 72) * 600 } as const;

const REFUSED = {
  'too large': 'The logo is larger than 5 MB or 8,000 pixels a side. Make it smaller and choose it again.',
  broken: 'The logo could not be read as a picture. Choose a PNG, JPEG or SVG file.',
  active:
    'The logo is an SVG with script, links or embedded pages in it, and was left out. Save it as a plain drawing or a PNG.',
  'too rich':
    'The logo is an SVG of very many shapes, or with effects that take long to draw, and was left out. Save it as a PNG.',
} as const;

/** Decodes a picture and makes it so many whole pixels large; a sentence says why it could not. */
export type ShrinkPicture = (
  file: Blob,
  size: { readonly width: number; readonly height: number },
) => Promise<Result<ImageBitmap, string>>;

/**
 * Reads a picture that a teacher chose as a logo: a PNG, JPEG or SVG, made as small as print allows, on a white
 * ground.
 * @param shrink - makes it smaller, beside the page: at once, a large one would hold it up for seconds
 * @returns the data address for the lesson's handout settings, or a sentence that says why not
 */
export async function readLogo(file: Blob, shrink: ShrinkPicture): Promise<Result<string, string>> {
  if (file.size > LARGEST_FILE) return failure(REFUSED['too large']);
  const isDrawing = file.type === 'image/svg+xml';
  if (isDrawing) {
    const text = await file.text();
    if (isActive(text)) return failure(REFUSED.active);
    if (isTooRich(text)) return failure(REFUSED['too rich']);
  }
  const address = URL.createObjectURL(file);
  try {
    const loaded = isDrawing ? await load(address) : await sized(address);
    if (!loaded.ok) return failure(REFUSED[loaded.problem]);
    const { naturalWidth, naturalHeight } = loaded.value;
    const scale = Math.min(KEPT.width / naturalWidth, KEPT.height / naturalHeight, isDrawing ? 100 : 1);
    const [width, height] = [naturalWidth * scale, naturalHeight * scale];
    const picture = isDrawing ? loaded : await shrink(file, wholePixels(width, height));
    if (!picture.ok) return picture;
    const source = redraw(picture.value, width, height);
    return source === null ? failure(REFUSED.broken) : success(source);
  } finally {
    URL.revokeObjectURL(address);
  }
}

const wholePixels = (width: number, height: number) => ({
  width: Math.max(1, Math.round(width)),
  height: Math.max(1, Math.round(height)),
});

/**
 * A lesson's logo as the page needs it, whatever the data address holds; null when it is no picture, or too large a one.
 * It is drawn anew, because a lesson file may come from anywhere and a PDF takes only some kinds of picture.
 */
export async function logoOf(source: string): Promise<Logo | null> {
  const known = await sized(source);
  if (!known.ok || known.value.naturalWidth * known.value.naturalHeight > MOST_PIXELS) return null;
  const loaded = await load(source);
  if (!loaded.ok) return null;
  const picture = loaded.value;
  const { naturalWidth: width, naturalHeight: height } = picture;
  const drawn = source.startsWith('data:image/jpeg') ? source : redraw(picture, width, height);
  return drawn === null ? null : { source: drawn, aspect: width / height };
}

type Loaded = Result<HTMLImageElement, 'too large' | 'broken'>;

/** A picture of which the size is known, and looked at: a small file may unfold to a very large picture. */
async function sized(source: string): Promise<Loaded> {
  const picture = new Image();
  try {
    await new Promise((resolve, reject) => {
      picture.addEventListener('load', resolve);
      picture.addEventListener('error', reject);
      picture.src = source;
    });
    const { naturalWidth: width, naturalHeight: height } = picture;
    if (width > LARGEST_SIDE || height > LARGEST_SIDE) return failure('too large');
    return width === 0 || height === 0 ? failure('broken') : success(picture);
  } catch {
    return failure('broken');
  }
}

/** As {@link sized}, with its pixels. */
async function load(source: string): Promise<Loaded> {
  const loaded = await sized(source);
  if (!loaded.ok) return loaded;
  try {
    await loaded.value.decode();
    return loaded;
  } catch {
    return failure('broken');
  }
}

function redraw(picture: HTMLImageElement | ImageBitmap, width: number, height: number): string | null {
  const made = whiteCanvas(width, height);
  if (made === null) return null;
  made.pen.imageSmoothingQuality = 'high';
  made.pen.drawImage(picture, 0, 0, made.canvas.width, made.canvas.height);
  return opaqueSource(made.canvas);
}
