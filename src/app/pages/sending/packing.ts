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
import { clipOf } from './make-clip';
import { tracksOf } from './make-tracks';
import { proposedClip, proposedWishes } from './wishes';

/** What a packet can hold, in its order. */
export const CONTENTS = ['handout', 'practice page', 'tracks', 'clip', 'MusicXML', 'MIDI'] as const;
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
  clip: 'A film of the moving score with its sound, or pictures of it.',
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

/** What takes long to make, each of a line; null where it was called off. */
const MAKERS: Readonly<
  Record<
    'tracks' | 'clip',
    (
      lesson: Lesson,
      line: Written,
      options: MakeOptions,
    ) => Promise<Result<readonly MadeFile[] | null, string>>
  >
> = {
  tracks: (lesson, { piece, sheet }, options) =>
    tracksOf(lesson, piece, sheet, proposedWishes(piece, sheet), options),
  clip: async (lesson, { piece, sheet }, options) => {
    const { asked, look } = proposedClip(piece);
    const made = await clipOf(lesson, piece, sheet, asked, look, options);
    return made.ok ? success(made.value?.files ?? null) : made;
  },
};

/** Of a packet with tracks or a clip, how much of the work is done when everything else is. */
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
  const long = (['tracks', 'clip'] as const).filter((content) => wanted.includes(content));
  for (const [index, line] of lines.entries()) {
    if (wants('MusicXML')) files.push(['MusicXML', await musicXmlOf(line, lesson.title)]);
    if (wants('MIDI')) files.push(['MIDI', await midiOf(line, lesson.title)]);
    for (const [place, content] of long.entries()) {
      const before = index * long.length + place;
      const made = await MAKERS[content](lesson, line, {
        signal,
        onShare: (share) => onShare(REST + ((1 - REST) * (before + share)) / (lines.length * long.length)),
      });
      if (!made.ok) return failure(made.problem);
      for (const file of made.value ?? []) files.push([content, file]);
    }
  }
  if (signal.aborted) return success(null);
  const all: MadeFile[] = [
    { stem: 'read-me-first', kind: 'textTab', content: readMe(lesson, files) },
    ...CONTENTS.flatMap((content) => files.filter(([of]) => of === content).map(([, file]) => file)),
  ];
  return success({
    file: { stem: fileStem(lesson.title), kind: 'zip', content: await zipOf(all) },
    remarks,
  });
}
