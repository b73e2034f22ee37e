import { failure, type Result, success } from '../../../core/base';
import {
  CAUTIONS,
  CAUTIONS_HEADING,
  cautionWords,
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import type { MakeOptions } from '../../../tracks';
import {
  fileOf,
  fileStem,
  handoutOf,
  type MadeFile,
  midiOf,
  musicXmlOf,
  practicePageOf,
  zipOf,
} from '../saving';
import { tracksOf } from './make-tracks';
import { proposedWishes } from './wishes';

/** What a packet can hold, in its order. */
export const CONTENTS = ['handout', 'practice page', 'tracks', 'MusicXML', 'MIDI'] as const;
export type Content = (typeof CONTENTS)[number];

/** A line of the lesson with its sheet. */
interface Written {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** The lines of a lesson that have bars. */
export const linesOf = (lesson: Lesson): readonly Written[] =>
  lesson.pieces.flatMap((piece) => {
    const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
    return piece.kind === 'line' && sheet.kind === 'line' && sheet.bars.length > 0 ? [{ piece, sheet }] : [];
  });

/** What each kind of file is for, in the text beside them. */
const FOR: Readonly<Record<Content, string>> = {
  handout: 'The sheet to print and to read from.',
  'practice page':
    'Open it in any browser, also without a network: it plays the line, loops bars and slows down.',
  tracks: 'To play along with, with and without the bass.',
  MusicXML: 'The line for a notation program.',
  MIDI: 'The notes for a sequencer or a keyboard.',
};

/** A short text that says what is in the packet. */
function readMe(lesson: Lesson, files: readonly (readonly [Content, MadeFile])[]): string {
  const contents = CONTENTS.flatMap((content) => {
    const own = files.filter(([of]) => of === content).map(([, file]) => `  ${fileOf(file).name}`);
    return own.length === 0 ? [] : [FOR[content], ...own, ''];
  });
  return [lesson.title, '', ...contents, CAUTIONS_HEADING, ...CAUTIONS.map(cautionWords), ''].join('\r\n');
}

/** A packet that is ready, and what the teacher should know of it. */
export interface Packed {
  readonly file: MadeFile;
  readonly remarks: string | null;
}

/** Of a packet with tracks, how much of the work is done when everything else is. */
const REST = 0.1;

/**
 * Makes the packet of a lesson; null where it was called off.
 * @throws Error where a part of the page, a font or the empty practice page cannot be fetched
 */
export async function packetOf(
  lesson: Lesson,
  wanted: readonly Content[],
  { signal, onShare }: MakeOptions,
): Promise<Result<Packed | null, string>> {
  const files: (readonly [Content, MadeFile])[] = [];
  const wants = (content: Content): boolean => wanted.includes(content) && !signal.aborted;
  let remarks: string | null = null;
  if (wants('handout')) {
    const handout = await handoutOf(lesson);
    files.push(['handout', handout.file]);
    remarks = handout.remarks;
  }
  if (wants('practice page')) files.push(['practice page', await practicePageOf(lesson)]);
  const lines = linesOf(lesson);
  for (const [index, line] of lines.entries()) {
    if (wants('MusicXML')) files.push(['MusicXML', await musicXmlOf(line, lesson.title)]);
    if (wants('MIDI')) files.push(['MIDI', await midiOf(line, lesson.title)]);
    if (!wants('tracks')) continue;
    const { piece, sheet } = line;
    const made = await tracksOf(lesson, piece, sheet, proposedWishes(piece, sheet), {
      signal,
      onShare: (share) => onShare(REST + ((1 - REST) * (index + share)) / lines.length),
    });
    if (!made.ok) return failure(made.problem);
    for (const track of made.value ?? []) files.push(['tracks', track]);
  }
  if (signal.aborted) return success(null);
  const all: MadeFile[] = [
    { stem: 'read-me-first', kind: 'textTab', content: readMe(lesson, files) },
    ...files.map(([, file]) => file),
  ];
  return success({
    file: { stem: fileStem(lesson.title), kind: 'zip', content: await zipOf(all) },
    remarks,
  });
}
