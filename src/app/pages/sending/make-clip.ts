import { failure, type Result, success } from '../../../core/base';
import type { Lesson, LinePiece, LineSheet } from '../../../core/lesson';
import type { TrackWishes } from '../../../core/performance';
import { mixOf } from '../../../core/playing';
import type { ClipFilm, MakeOptions } from '../../../tracks';
import { fileStem, type MadeFile } from '../saving';
import { CLIP_SIZES, type ClipLook, filmOf } from './clip-film';

export interface MadeClip {
  readonly files: readonly MadeFile[];
  /** Of the film; null for pictures. */
  readonly seconds: number | null;
}

/** Whether this browser can write a clip of that shape. */
export async function canMakeClip(shape: ClipLook['shape']): Promise<boolean> {
  const { clipCoding } = await import('../../../tracks');
  const { width, height } = CLIP_SIZES[shape];
  return (await clipCoding(width, height)) !== null;
}

const pngOf = (canvas: HTMLCanvasElement): Promise<Uint8Array<ArrayBuffer>> =>
  new Promise((resolve, reject) =>
    canvas.toBlob((blob) => {
      if (blob === null) reject(new Error('The picture could not be drawn.'));
      else blob.arrayBuffer().then((bytes) => resolve(new Uint8Array(bytes)), reject);
    }),
  );

/** A picture of every system as it comes, for browsers that write no clip. */
async function picturesOf(film: ClipFilm<HTMLCanvasElement>, stem: string): Promise<readonly MadeFile[]> {
  const { drawFrame } = await import('../../../tracks');
  const canvas = document.createElement('canvas');
  canvas.width = film.width;
  canvas.height = film.height;
  const pen = canvas.getContext('2d');
  if (pen === null) return [];
  const files: MadeFile[] = [];
  let before: number | undefined;
  for (const { scene } of film.frames) {
    const visit = film.scenes[scene]?.visit;
    if (visit === before) continue;
    before = visit;
    drawFrame(pen, film, { scene, playhead: null });
    const number = String(files.length + 1).padStart(2, '0');
    files.push({ stem: `${stem}-${number}`, kind: 'png', content: await pngOf(canvas) });
  }
  return files;
}

/** Makes the clip of a line, or pictures where the browser writes no clip; null where it was called off. */
export async function clipOf(
  lesson: Lesson,
  piece: LinePiece,
  sheet: LineSheet,
  wishes: TrackWishes,
  look: ClipLook,
  { signal, onShare }: MakeOptions,
): Promise<Result<MadeClip | null, string>> {
  const [{ makeClip }, { trackRounds }, { exportName }] = await Promise.all([
    import('../../../tracks'),
    import('../../../core/performance'),
    import('../../../core/exchange'),
  ]);
  const rounds = trackRounds(piece, sheet, wishes);
  const film = await filmOf(lesson.title, piece, sheet, rounds, look);
  if (signal.aborted) return success(null);
  const stem = fileStem(`${exportName(sheet, lesson.title, { tempo: wishes.tempo })}, ${look.shape}`);
  if (!(await canMakeClip(look.shape)))
    return success({ files: await picturesOf(film, stem), seconds: null });
  const pictures = await Promise.all(film.pictures.map((picture) => createImageBitmap(picture)));
  const made = await makeClip(
    {
      film: { ...film, pictures },
      rounds,
      mix: mixOf(piece.playing),
      title: `${lesson.title}: ${piece.name}`,
    },
    { signal, onShare },
  );
  for (const picture of pictures) picture.close();
  if (!made.ok) return failure(made.problem);
  if (made.value === null) return success(null);
  const { kind, bytes, seconds } = made.value;
  return success({ files: [{ stem, kind, content: bytes }], seconds });
}
