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

/** A file that goes into a ZIP. */
export interface PackedFile extends MadeFile {
  /** The folder it is in; none when left out. */
  readonly folder?: string;
}

/** Files in one ZIP, none over another of the same name. */
export async function zipOf(files: readonly PackedFile[]): Promise<Uint8Array<ArrayBuffer>> {
  const { writeZip } = await import('./zip');
  const taken = new Set<string>();
  return writeZip(
    files.map(({ folder, stem, kind, content }) => {
      const start = `${folder === undefined ? '' : `${folder}/`}${stem}`;
      let path = start + FILE_KINDS[kind].ending;
      for (let again = 2; taken.has(path); again += 1) path = `${start}-${again}${FILE_KINDS[kind].ending}`;
      taken.add(path);
      return { path, content };
    }),
  );
}

/** Saves files in one ZIP. */
export const saveZip = async (stem: string, files: readonly MadeFile[]): Promise<void> =>
  saveFile(stem, await zipOf(files), 'zip');
