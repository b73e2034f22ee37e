import { failure, type Result, success } from '../base';
import { LESSON_LIMITS, type Lesson } from '../lesson';
import { readMidi } from './midi/read-midi';
import { readScore } from './musicxml/read-score';
import { unpackMxl } from './musicxml/unpack-mxl';
import { readXml } from './musicxml/xml-tree';
import { decodeText } from './reading/decode';
import type { FileFacts } from './reading/facts';
import { lessonOf } from './reading/lesson-of';
import { Remarks } from './reading/remarks';
import type { Chosen, ScoreRead } from './reading/score-read';
import { LIKELIEST, type Wishes } from './reading/wishes';
import { readTab } from './tab/read-tab';
import { holdsTab } from './tab/systems';

export type { FileFacts } from './reading/facts';
export type { Chosen } from './reading/score-read';
export { LIKELIEST, type Wishes } from './reading/wishes';

/** A file of music as a lesson. */
export interface ReadFile {
  readonly lesson: Lesson;
  /** What was read and what was left out, for the teacher; never empty. */
  readonly sentences: readonly string[];
  /** What the file holds, and what can be chosen of it. */
  readonly facts: FileFacts;
  readonly parts: Chosen;
  readonly voices: Chosen;
  readonly chords: Chosen;
  readonly grids?: Chosen;
  readonly pulses?: Chosen;
}

/** Hears how much of a file is read, from 0 to 1: by its steps, which take about so much of the time. */
type Tell = (share: number) => void;

type Problem = { readonly message: string };

/** Bytes that are read at all. */
const LARGEST_FILE = 5_000_000;

const beginsWith = (bytes: Uint8Array, signs: string): boolean =>
  [...signs].every((sign, index) => bytes[index] === sign.charCodeAt(0));

const TOO_LARGE = 'This file is larger than 5 MB, so it was not read. Nothing was changed.';
const UNKNOWN = 'This file is neither MusicXML nor MIDI, and no tab. Nothing was changed.';
/** What a fault of this program is to the teacher: the file is named, and nothing is lost. */
const BROKEN = 'This file cannot be read: something in it was not foreseen. Nothing was changed.';

function scoreOf(
  bytes: Uint8Array,
  wishes: Wishes,
  remarks: Remarks,
  tell: Tell,
): Result<ScoreRead, Problem> {
  if (beginsWith(bytes, 'MThd') || beginsWith(bytes, 'RIFF'))
    return readMidi(bytes, wishes, LESSON_LIMITS.bars, remarks, tell);
  const text = beginsWith(bytes, 'PK') ? unpackMxl(bytes) : success(decodeText(bytes));
  if (!text.ok) return text;
  if (!text.value.trimStart().startsWith('<')) {
    return holdsTab(text.value)
      ? readTab(text.value, LESSON_LIMITS.bars, remarks)
      : failure({ message: UNKNOWN });
  }
  tell(0.1);
  const xml = readXml(text.value);
  tell(0.5);
  if (!xml.ok) return failure({ message: `${xml.problem.message} Nothing was changed.` });
  return readScore(xml.value, wishes, LESSON_LIMITS.bars, remarks);
}

/**
 * Reads a file of music that another program wrote: MusicXML, plain or compressed, MIDI, or text tab. Whatever the bytes are, nothing is
 * thrown, nothing is fetched and nothing outside is touched: the answer is a lesson that the one validator has passed
 * with sentences about it, or one sentence why there is none.
 * @param title for a file that does not name its music
 * @param wishes what is asked for, by ids of an earlier reading; the part that is most likely the bass as a line, if
 *   nothing is
 * @param tell hears how much of it is read, from 0 to 1
 */
export function readFile(
  bytes: Uint8Array,
  title: string,
  wishes: Wishes = LIKELIEST,
  tell: Tell = () => undefined,
): Result<ReadFile, Problem> {
  if (bytes.length > LARGEST_FILE) return failure({ message: TOO_LARGE });
  const remarks = new Remarks();
  try {
    const score = scoreOf(bytes, wishes, remarks, tell);
    tell(0.8);
    if (!score.ok) return score;
    const { found, ...choices } = score.value;
    const read = lessonOf(found, title, wishes, remarks);
    return read.ok ? success({ ...read.value, ...choices }) : read;
  } catch {
    return failure({ message: BROKEN });
  }
}
