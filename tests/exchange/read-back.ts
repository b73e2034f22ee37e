/** Reads files back as the page does, for tests. */
import { strToU8 } from 'fflate';
import { loadReader, type Wishes } from '../../src/core/exchange';
import { deriveSheet, type Lesson, type LinePiece, type LineSheet } from '../../src/core/lesson';

const { readFile, LIKELIEST } = await loadReader();

type ReadFile = Extract<ReturnType<typeof readFile>, { ok: true }>['value'];

/** As it stands in the file: no tune goes to another octave. @throws Error with the reader's sentence where it refuses the file */
export function readBack(
  file: string | Uint8Array,
  part: string | null = null,
  wishes: Partial<Wishes> = { octaves: 0 },
): ReadFile {
  const asked = { ...LIKELIEST, ...wishes, part };
  const read = readFile(typeof file === 'string' ? strToU8(file) : file, 'File', asked);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

/** The sentence with which a file is refused; null where it is read. */
export function refusal(file: string | Uint8Array): string | null {
  const read = readFile(typeof file === 'string' ? strToU8(file) : file, 'File');
  return read.ok ? null : read.problem.message;
}

function linePieceOf({ pieces }: Lesson): LinePiece {
  const [piece] = pieces;
  if (piece?.kind !== 'line') throw new Error('A file that was read is a line.');
  return piece;
}

export function lineSheetOf(lesson: Lesson): LineSheet {
  const sheet = deriveSheet(linePieceOf(lesson), lesson.instrument, lesson.noteNames);
  if (sheet.kind !== 'line') throw new Error('A line piece gives a line sheet.');
  return sheet;
}
