import { deriveSheet, type Lesson, type LinePiece, type LineSheet, lineAtHand } from '../../../core/lesson';
import { mixOf, PARTS } from '../../../core/playing';
import type { Session } from '../../state';
import { fileStem, saveFile } from './file';
import { type MadeFile, saveMade } from './made';
import { versionStem } from './version-stem';
import { runWork } from './work';

/** The piece at hand with its sheet, or a sentence in the notice when there is no line with bars. */
function lineToExport(session: Session, lesson: Lesson) {
  const piece = lineAtHand(lesson, session.editor.getState().pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (!piece || sheet?.kind !== 'line' || sheet.bars.length === 0) {
    session.editor.setState({ notice: 'There is no line to export yet: write a chord chart first.' });
    return null;
  }
  return { piece, sheet };
}

interface LineToSave {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** Saves a file of the version on the page, told apart from those of the others. */
async function saveOf(session: Session, file: MadeFile): Promise<void> {
  saveMade({ ...file, stem: file.stem + (await versionStem(session)) });
}

/** A line as MusicXML. */
export async function musicXmlOf({ sheet }: LineToSave, title: string): Promise<MadeFile> {
  const { exportName, writeMusicXml } = await import('../../../core/exchange');
  return { stem: fileStem(exportName(sheet, title)), kind: 'musicXml', content: writeMusicXml(sheet, title) };
}

/** Saves the line at hand, or another one, as MusicXML. */
export async function saveMusicXml(
  session: Session,
  lesson: Lesson,
  line: LineToSave | null = lineToExport(session, lesson),
): Promise<void> {
  if (line !== null) await saveOf(session, await musicXmlOf(line, lesson.title));
}

/** Saves the line as compressed MusicXML. */
export async function saveMxl(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { exportName, packMxl, writeMusicXml } = await import('../../../core/exchange');
  await saveOf(session, {
    stem: fileStem(exportName(line.sheet, lesson.title)),
    kind: 'mxl',
    content: new Uint8Array(packMxl(writeMusicXml(line.sheet, lesson.title))),
  });
}

/** Saves the line as text tab. */
export async function saveTextTab(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { exportName, writeTextTab } = await import('../../../core/exchange');
  await saveOf(session, {
    stem: fileStem(exportName(line.sheet, lesson.title)),
    kind: 'textTab',
    content: writeTextTab(line.sheet, lesson.title),
  });
}

/** The parts of a line that are switched on as MIDI. */
export async function midiOf({ piece, sheet }: LineToSave, title: string): Promise<MadeFile> {
  const [{ exportName, writeMidi }, { performanceOf }] = await Promise.all([
    import('../../../core/exchange'),
    import('../../../core/performance'),
  ]);
  const performance = performanceOf(piece, sheet, 'notes');
  const parts = PARTS.filter((part) => piece.playing[part]);
  const bytes = writeMidi({
    performance,
    sheet,
    title,
    parts: new Set(parts),
    volumes: mixOf(piece.playing).volumes ?? {},
  });
  const name = exportName(sheet, title, { tempo: performance.tempo, parts });
  return { stem: fileStem(name), kind: 'midi', content: new Uint8Array(bytes) };
}

/** Saves the parts that are switched on of the line at hand, or of another one, as MIDI. */
export async function saveMidi(
  session: Session,
  lesson: Lesson,
  line: LineToSave | null = lineToExport(session, lesson),
): Promise<void> {
  if (line !== null) await saveOf(session, await midiOf(line, lesson.title));
}

/** Saves what is played now, once through, as a WAV file. */
export async function saveAudio(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { piece, sheet } = line;
  await runWork('Making the audio file', async (signal) => {
    const [{ renderWav }, { exportName }, { performanceOf }] = await Promise.all([
      import('../../../sound'),
      import('../../../core/exchange'),
      import('../../../core/performance'),
    ]);
    const performance = performanceOf(piece, sheet, 'sound');
    const result = await renderWav(performance, mixOf(piece.playing), { signal });
    if (!result.ok) session.editor.setState({ notice: result.problem });
    else if (result.value !== null) {
      const parts = PARTS.filter((part) => piece.playing[part]);
      const name = exportName(sheet, lesson.title, { tempo: performance.tempo, parts });
      saveFile(fileStem(name) + (await versionStem(session)), result.value, 'wav');
    }
  });
}
