import { failure, type Result, success } from '../../../core/base';
import {
  CAUTIONS,
  CAUTIONS_HEADING,
  cautionWords,
  deriveSheet,
  type HandoutSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import type { MakeOptions } from '../../../tracks';
import {
  fileOf,
  fileStem,
  handoutApart,
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
export const CONTENTS = [
  'handout',
  'answers',
  'practice page',
  'tracks',
  'clip',
  'MusicXML',
  'MIDI',
] as const;
export type Content = (typeof CONTENTS)[number];

const asksForAnswers = ({ handout }: { readonly handout?: Partial<HandoutSettings> }): boolean =>
  handout?.blocks?.includes('answers') === true;

/** Whether a handout of a lesson or of its versions has answers to questions, which are kept back unless they are ticked. */
export const hasAnswers = (lesson: Lesson): boolean =>
  asksForAnswers(lesson) || (lesson.versions ?? []).some(asksForAnswers);

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
  answers: 'The answers to its questions, for the teacher.',
  'practice page':
    'Open it in any browser, also without a network: it plays the line, loops bars and slows down.',
  tracks: 'To play along with, with and without the bass.',
  clip: 'A film of the moving score with its sound, or pictures of it.',
  MusicXML: 'The line for a notation program.',
  MIDI: 'The notes for a sequencer or a keyboard.',
};

/** What a lesson gave, each file with what it is. */
type Gathered = readonly (readonly [Content, MadeFile])[];

/** A short text that says what is in the packet, or in a folder of it. */
function readMe(title: string, files: Gathered): MadeFile {
  const contents = CONTENTS.flatMap((content) => {
    const own = files.filter(([of]) => of === content).map(([, file]) => `  ${fileOf(file).name}`);
    return own.length === 0 ? [] : [FOR[content], ...own, ''];
  });
  const text = [title, '', ...contents, CAUTIONS_HEADING, ...CAUTIONS.map(cautionWords), ''].join('\r\n');
  return { stem: 'read-me-first', kind: 'textTab', content: text };
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

/** The files of a lesson, and what the teacher should know of them. */
export interface LessonFiles {
  readonly files: readonly MadeFile[];
  readonly remarks: string | null;
}

/** What of a lesson is to be printed: its handout, and the answers apart from it. */
async function printedOf(
  lesson: Lesson,
  wanted: readonly Content[],
): Promise<{ readonly files: Gathered; readonly remarks: string | null }> {
  const parts = { sheet: wanted.includes('handout'), key: wanted.includes('answers') };
  if (!parts.sheet && !parts.key) return { files: [], remarks: null };
  const { sheet, key } = await handoutApart(lesson, parts);
  return {
    files: [
      ...(sheet === null ? [] : [['handout', sheet.file] as const]),
      ...(key === null ? [] : [['answers', key] as const]),
    ],
    remarks: sheet?.remarks ?? null,
  };
}

/**
 * Makes what is wanted of a lesson, with a short text beside it; null where it was called off.
 * @param called - what tells the lesson's files from those of other versions; '' for nothing
 * @throws Error where a part of the page, a font or the empty practice page cannot be fetched
 */
export async function filesOf(
  lesson: Lesson,
  called: string,
  wanted: readonly Content[],
  { signal, onShare }: MakeOptions,
): Promise<Result<LessonFiles | null, string>> {
  const files: (readonly [Content, MadeFile])[] = [];
  const add = (content: Content, file: MadeFile): void => {
    files.push([content, called === '' ? file : { ...file, stem: `${file.stem}-${fileStem(called)}` }]);
  };
  const wants = (content: Content): boolean => wanted.includes(content) && !signal.aborted;
  const { files: printed, remarks } = await printedOf(lesson, wanted.filter(wants));
  for (const [content, file] of printed) add(content, file);
  if (wants('practice page')) add('practice page', await practicePageOf(lesson));
  const lines = linesOf(lesson);
  const long = (['tracks', 'clip'] as const).filter((content) => wanted.includes(content));
  for (const [index, line] of lines.entries()) {
    if (wants('MusicXML')) add('MusicXML', await musicXmlOf(line, lesson.title));
    if (wants('MIDI')) add('MIDI', await midiOf(line, lesson.title));
    for (const [place, content] of long.entries()) {
      const before = index * long.length + place;
      const made = await MAKERS[content](lesson, line, {
        signal,
        onShare: (share) => onShare(REST + ((1 - REST) * (before + share)) / (lines.length * long.length)),
      });
      if (!made.ok) return failure(made.problem);
      for (const file of made.value ?? []) add(content, file);
    }
  }
  if (signal.aborted) return success(null);
  onShare(1);
  const title = [lesson.title, ...(called === '' ? [] : [called])].join(', ');
  return success({
    files: [
      readMe(title, files),
      ...CONTENTS.flatMap((content) => files.filter(([of]) => of === content).map(([, file]) => file)),
    ],
    remarks,
  });
}

/**
 * Makes the packet of a lesson; null where it was called off.
 * @param version - what tells it from the packets of other versions; '' for nothing
 * @throws Error where a part of the page, a font or the empty practice page cannot be fetched
 */
export async function packetOf(
  lesson: Lesson,
  version: string,
  wanted: readonly Content[],
  options: MakeOptions,
): Promise<Result<Packed | null, string>> {
  const made = await filesOf(lesson, version, wanted, options);
  if (!made.ok) return made;
  if (made.value === null) return success(null);
  const { files, remarks } = made.value;
  return success({
    file: { stem: fileStem(`${lesson.title} ${version}`), kind: 'zip', content: await zipOf(files) },
    remarks,
  });
}
