import { type Bpm, beatsInBar, beatTicks, bpm, isCompound, type Metre, type Ticks, ticks } from '../base';
import { type Feel, type FeelId, feelById } from '../feel';

/**
 * One-drop music is counted two ways: fast, with the drop on 3, or half as fast, with the drop on 2 and 4
 * (raggaemusicinfo.blogspot.com 2013/04). The line is written in the feel's own count; only how its tempo is told
 * changes.
 */
export const COUNTS = ['fast', 'slow'] as const;
export type Count = (typeof COUNTS)[number];

/** What the count of a piece or of a sheet depends on. */
interface CountedLine {
  readonly feel: FeelId | Feel;
  readonly metre: Metre;
  /** As the teacher chose; the feel's own way when left out. */
  readonly count?: Count;
}

const feelOf = ({ feel }: CountedLine): Feel => (typeof feel === 'string' ? feelById(feel) : feel);

/** In which count a line's tempo is told; null where there is only one way to count it. */
export function countOf(line: CountedLine): Count | null {
  const own = feelOf(line).tempo.count;
  const divides = !isCompound(line.metre) && line.metre.unit !== 8;
  if (own === 'one way' || !divides || (own === 'fast' && beatsInBar(line.metre) % 2 === 1)) {
    return null;
  }
  return line.count ?? own;
}

/** Told beats in a written beat: 1, or a half or 2 where the other count is told. */
function toldInWritten(line: CountedLine): number {
  const told = countOf(line);
  if (told === null || told === feelOf(line).tempo.count) {
    return 1;
  }
  return told === 'slow' ? 0.5 : 2;
}

/** A tempo in beats a minute as it is told in the line's count, to a tenth. */
export const toldTempo = (line: CountedLine, tempo: number): number =>
  Math.round(tempo * toldInWritten(line) * 10) / 10;

/** The written tempo of one that is told in the line's count. */
export const writtenTempo = (line: CountedLine, told: number): Bpm => bpm(told / toldInWritten(line));

/** Length of the beat that the told tempo counts: a half note where fast music is told in the slow count. */
export const toldBeat = (line: CountedLine): Ticks => ticks(beatTicks(line.metre) / toldInWritten(line));

/** ` in the slow count`; '' where there is one way to count. */
export function countWords(line: CountedLine): string {
  const count = countOf(line);
  return count === null ? '' : ` in the ${count} count`;
}

/** `126 bpm`, `69 bpm in the slow count`: a written tempo as a person is told it. */
export const tempoWords = (line: CountedLine, tempo: number): string =>
  `${toldTempo(line, tempo)} bpm${countWords(line)}`;
