import { counted } from '../base';
import type { PracticeEntry, PracticeRecord } from './record';
import { withEntry } from './record';

/** Less than this is a trial of the button, in seconds. */
const LEAST_SECONDS = 5;

export const addEntry = (record: PracticeRecord, entry: PracticeEntry): PracticeRecord =>
  entry.seconds < LEAST_SECONDS ? record : withEntry(record, entry);

const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];

/** `28 November 2026`. */
export function dayWords(day: string): string {
  const [year = '', month = '', date = ''] = day.split('-');
  return `${Number(date)} ${MONTHS[Number(month) - 1] ?? month} ${year}`;
}

const time = (seconds: number): string =>
  seconds < 90 ? counted(seconds, 'second') : counted(Math.round(seconds / 60), 'minute');

/** `Ferry queue, bars 3 to 6: 12 minutes, 24 rounds, the fastest at 95 bpm without stopping.` */
export function entryWords({ piece, bars, seconds, rounds, tempo }: PracticeEntry): string {
  const finished =
    rounds === 0
      ? 'no round to its end'
      : `${counted(rounds, 'round')} to the end${tempo === null ? '' : `, the fastest at ${tempo} bpm without stopping`}`;
  return `${piece}, ${bars}: ${time(seconds)}, ${finished}.`;
}

/** The diary as a text to be sent, day by day. */
export function diaryText(diary: readonly PracticeEntry[]): string {
  const lines: string[] = ['Practice diary'];
  let heading = '';
  for (const entry of diary) {
    const next = `${dayWords(entry.day)}, ${entry.lesson === '' ? 'lesson without a title' : entry.lesson}`;
    if (next !== heading) lines.push('', next);
    heading = next;
    lines.push(`  ${entryWords(entry)}`);
  }
  return `${lines.join('\n')}\n`;
}
