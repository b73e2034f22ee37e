import { barNames, failure, type Result, success } from '../base';
import type { Summary } from './summary';
import type { Naming } from './words';

/** What a teacher learns of a hearing at home. */
export interface Letter {
  /** What the lesson is called. */
  readonly lesson: string;
  readonly piece: string;
  /** `2026-11-29`. */
  readonly day: string;
  /** Beats a minute, as the piece tells them; null where no whole round was as written. */
  readonly tempo: number | null;
  /** Numbers of written bars, in their order; the pickup is 0. */
  readonly stuck: readonly number[];
  readonly rests: number;
  readonly kept: number;
  readonly notes: number;
  readonly right: number;
}

/** More stuck bars than this are no longer a list to work on. */
const MOST_STUCK = 6;

/** More characters than this are no letter of ours. */
const LONGEST = 20_000;

export const letterOf = (
  { reached, stuck, rests, kept, notes, right }: Summary,
  where: Pick<Letter, 'lesson' | 'piece' | 'day'>,
  { numberOf, tell }: Naming,
): Letter => ({
  ...where,
  tempo: reached === null ? null : tell(reached),
  stuck: stuck
    .slice(0, MOST_STUCK)
    .map(numberOf)
    .sort((one, other) => one - other),
  ...{ rests, kept, notes, right },
});

/** A title on one line: a break in it would be read as the next line. */
const inOneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

const HEADING = 'Heard at home';

/**
 * The letter as a text to be sent; `readLetter` reads it again.
 * @param recorded - a recording goes beside it
 */
export function letterText(
  { lesson, piece, day, tempo, stuck, rests, kept, notes, right }: Letter,
  { recorded } = { recorded: false },
): string {
  return [
    HEADING,
    `Lesson: ${inOneLine(lesson)}`,
    `Line: ${inOneLine(piece)}`,
    `Day: ${day}`,
    `Tempo reached: ${tempo === null ? 'none yet' : `${tempo} bpm`}`,
    `Stuck: ${stuck.length === 0 ? 'no bar' : barNames(stuck)}`,
    `Rests kept: ${kept} of ${rests}`,
    `Notes as written: ${right} of ${notes}`,
    recorded
      ? 'Heard by the practice page on the student’s device; the recording beside it is the student’s own choice.'
      : 'Heard by the practice page on the student’s device; no sound was kept.',
    '',
  ].join('\n');
}

const shareOf = (text: string | undefined): readonly [number, number] | null => {
  const [, part, whole] = /^(\d{1,6}) of (\d{1,6})$/.exec(text ?? '') ?? [];
  return part === undefined || whole === undefined ? null : [Number(part), Number(whole)];
};

function stuckOf(text: string): readonly number[] {
  const numbers = (text.match(/\d{1,5}/g) ?? []).map(Number);
  return text.includes('the pickup') ? [0, ...numbers] : numbers;
}

const NOT_READ =
  'This is no report of a practice page: it begins with “Heard at home”, and has the day, the tempo reached, the stuck bars and the rests below. Nothing was changed.';

/** Reads a letter out of a text that may have come through a message: other lines around it, and quotation marks, are left out. */
export function readLetter(text: string): Result<Letter, string> {
  const lines = text
    .slice(0, LONGEST)
    .split(/\r?\n/)
    .map((line) => line.replace(/^[>\s]+/, '').trim());
  const begin = lines.indexOf(HEADING);
  const fields = new Map<string, string>();
  for (const line of begin < 0 ? [] : lines.slice(begin + 1)) {
    const colon = line.indexOf(':');
    const field = line.slice(0, Math.max(0, colon));
    if (colon > 0 && !fields.has(field)) fields.set(field, line.slice(colon + 1).trim());
  }
  const day = fields.get('Day') ?? '';
  const tempo = /^(?:(\d{1,3}) bpm|none yet)$/.exec(fields.get('Tempo reached') ?? '');
  const rests = shareOf(fields.get('Rests kept'));
  const notes = shareOf(fields.get('Notes as written'));
  const stuck = fields.get('Stuck');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || !tempo || !rests || !notes || stuck === undefined)
    return failure(NOT_READ);
  return success({
    lesson: fields.get('Lesson') ?? '',
    piece: fields.get('Line') ?? '',
    day,
    tempo: tempo[1] === undefined ? null : Number(tempo[1]),
    stuck: stuckOf(stuck),
    rests: rests[1],
    kept: rests[0],
    notes: notes[1],
    right: notes[0],
  });
}

/** What a letter says is to be mended next; '' where that is nothing. */
export function mendOf({ piece, stuck, rests, kept }: Letter): string {
  const said = [
    ...(stuck.length === 0 ? [] : [barNames(stuck)]),
    ...(kept < rests ? [`rests (${kept} of ${rests} kept)`] : []),
  ];
  return said.length === 0 ? '' : `${piece === '' ? '' : `${piece}: `}${said.join('; ')}`;
}
