import { deriveSheets, type Lesson, type Sheet } from '../../../core/lesson';
import type { Handout } from '../../../handout';
import type { Session } from '../../state';
import { practiceAddress } from '../common';
import { fileStem } from './file';
import { type MadeFile, saveMade } from './made';
import { versionStem } from './version-stem';

/** What the teacher should know about a handout that was saved, in sentences; null when all is well. */
function remarksOn(handout: Handout, missing: readonly string[]): string | null {
  const sentences = [
    ...handout.remarks,
    ...(missing.length === 0
      ? []
      : [`The handout’s type has no sign for ${missing.join(' ')}: it is printed in another font.`]),
  ];
  return sentences.length === 0 ? null : sentences.join(' ');
}

/** The name of the file: key and tempo as well when the lesson is about one line. */
async function nameOf(lesson: Lesson, sheets: readonly Sheet[]): Promise<string> {
  const lines = sheets.flatMap((sheet) => (sheet.kind === 'line' ? [sheet] : []));
  const [line] = lines;
  if (line === undefined || lines.length > 1) return lesson.title;
  const { exportName } = await import('../../../core/exchange');
  return exportName(line, lesson.title);
}

/** A handout as a file, with what the teacher should know about it, or null. */
interface WrittenHandout {
  readonly file: MadeFile;
  readonly remarks: string | null;
}

/**
 * A handout that is laid out, as a PDF.
 * @param name - of the file, in any characters
 * @param onProgress - called after every page
 */
export async function writtenHandout(
  handout: Handout,
  name: string,
  onProgress?: (done: number, all: number) => void,
): Promise<WrittenHandout> {
  const { handoutPdf } = await import('../../../handout');
  const { bytes, missing } = await handoutPdf(handout, onProgress);
  return {
    file: { stem: fileStem(name), kind: 'handout', content: bytes },
    remarks: remarksOn(handout, missing),
  };
}

/**
 * The lesson's handout as a PDF.
 * @param onProgress - called after every page
 * @throws Error when a font cannot be fetched
 */
async function handoutOf(
  lesson: Lesson,
  onProgress?: (done: number, all: number) => void,
): Promise<WrittenHandout> {
  const { buildHandout } = await import('../../../handout');
  const sheets = deriveSheets(lesson);
  const handout = await buildHandout(lesson, sheets, practiceAddress(window.location.href));
  return writtenHandout(handout, await nameOf(lesson, sheets), onProgress);
}

/** A handout in two files, each null where it is not wanted: what goes to the student, and the answers to its questions. */
interface HandoutApart {
  readonly sheet: WrittenHandout | null;
  /** Null, too, where nothing is asked. */
  readonly key: MadeFile | null;
}

/**
 * The lesson's handout as PDFs, its answers in one of their own, so that they can be kept back.
 * @param wanted - which of the two are written
 * @throws Error when a font cannot be fetched
 */
export async function handoutApart(
  lesson: Lesson,
  wanted: Readonly<Record<keyof HandoutApart, boolean>>,
): Promise<HandoutApart> {
  const { buildHandout, withAnswersApart } = await import('../../../handout');
  const sheets = deriveSheets(lesson);
  const whole = await buildHandout(lesson, sheets, practiceAddress(window.location.href));
  const { sheet, key } = withAnswersApart(whole);
  const name = await nameOf(lesson, sheets);
  return {
    sheet: wanted.sheet ? await writtenHandout(sheet, name) : null,
    key: key !== null && wanted.key ? (await writtenHandout(key, `${name}-answers`)).file : null,
  };
}

/**
 * Saves the {@link handoutOf handout}.
 * @returns what the teacher should know about it, or null
 */
export async function saveHandout(
  session: Session,
  lesson: Lesson,
  onProgress?: (done: number, all: number) => void,
): Promise<string | null> {
  const { file, remarks } = await handoutOf(lesson, onProgress);
  saveMade({ ...file, stem: file.stem + (await versionStem(session)) });
  return remarks;
}

/**
 * Makes the printed pages of a lesson ready for the browser's own print command.
 * @param isWanted - asked again and again meanwhile; once it says no, nothing is made ready
 * @returns what takes them away again
 * @throws Error when a font cannot be fetched
 */
export async function readyToPrint(lesson: Lesson, isWanted: () => boolean): Promise<() => void> {
  const { buildWhileWanted, preparePrint } = await import('../../../handout');
  const address = practiceAddress(window.location.href);
  const handout = await buildWhileWanted(lesson, deriveSheets(lesson), address, isWanted);
  return handout === null ? () => {} : preparePrint(handout);
}

/**
 * Opens the browser's print dialog with the lesson's handout.
 * @throws Error when a font cannot be fetched
 */
export async function printLessonHandout(lesson: Lesson): Promise<void> {
  const { buildHandout, printHandout } = await import('../../../handout');
  await printHandout(await buildHandout(lesson, deriveSheets(lesson), practiceAddress(window.location.href)));
}
