import type { Zippable } from 'fflate';
import { saveFile } from './file';
import { FILE_KINDS, type FileKind } from './kinds';

/** A file that was made and is not yet saved. */
export interface MadeFile {
  /** Its name without the ending. */
  readonly stem: string;
  readonly kind: FileKind;
  readonly content: Uint8Array<ArrayBuffer> | string;
}

/** As the system takes it. */
export const fileOf = ({ stem, kind, content }: MadeFile): File =>
  new File([content], `${stem}${FILE_KINDS[kind].ending}`, { type: FILE_KINDS[kind].type });

export const saveMade = ({ stem, kind, content }: MadeFile): void => saveFile(stem, content, kind);

/** Whether the system has a sheet by which these files can be sent (Web Share API). */
export const canSend = (files: readonly File[]): boolean =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [...files] });

const isPutAway = (problem: unknown): boolean =>
  problem instanceof DOMException && problem.name === 'AbortError';

/** Opens the system's sheet for sending. Gives what came of it, for the teacher; '' where the sheet was put away. */
export async function sendFiles(files: readonly File[]): Promise<string> {
  try {
    await navigator.share({ files: [...files] });
    return 'Handed over to be sent.';
  } catch (problem) {
    return isPutAway(problem)
      ? ''
      : 'The system did not take the files. Save them, and send them from where they are kept.';
  }
}

/** Files in one ZIP, none over another of the same name: texts are packed, sounds and pictures are as small as they get. */
export async function zipOf(files: readonly MadeFile[]): Promise<Uint8Array<ArrayBuffer>> {
  const { zipSync } = await import('fflate');
  const entries: Zippable = {};
  for (const { stem, kind, content } of files) {
    const { ending } = FILE_KINDS[kind];
    const name = (again: number): string => `${stem}${again === 1 ? '' : `-${again}`}${ending}`;
    let again = 1;
    while (Object.hasOwn(entries, name(again))) again += 1;
    entries[name(again)] =
      typeof content === 'string'
        ? [new TextEncoder().encode(content), { level: 6 }]
        : [content, { level: 0 }];
  }
  return new Uint8Array(zipSync(entries));
}

/** Saves files in one ZIP. */
export const saveZip = async (stem: string, files: readonly MadeFile[]): Promise<void> =>
  saveFile(stem, await zipOf(files), 'zip');
