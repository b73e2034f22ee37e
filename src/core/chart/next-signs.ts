import type { Naming } from '../theory';
import { harmonyText } from './harmony';
import type { Chart } from './types';

/** Most signs that are offered at once: what a phone shows in one row. */
const MOST = 7;

/** The chords of a chart, the most used first, in plain letters of every keyboard. */
function commonChords({ bars }: Chart, naming: Naming): readonly string[] {
  const counts = new Map<string, number>();
  for (const { spans } of bars) {
    for (const { harmony } of spans) {
      const text = harmonyText(harmony, naming).replace(/♭/g, 'b').replace(/♯/g, '#');
      if (harmony.kind === 'chord') counts.set(text, (counts.get(text) ?? 0) + 1);
    }
  }
  return [...counts].sort(([, one], [, other]) => other - one).map(([text]) => text);
}

/**
 * The signs that can sensibly come next in a chart, behind what is typed: those that lie two layers deep on a phone's
 * keyboard, and the chart's own chords where one is due.
 * @param before - the text up to the caret, as it is typed
 */
export function nextSigns(before: string, chart: Chart, naming: Naming = 'letters'): readonly string[] {
  const line = before.slice(before.lastIndexOf('\n') + 1);
  const chords = commonChords(chart, naming);
  if (line.trim() === '') return ['| ', '|: ', ...chords].slice(0, MOST);
  if (/[|:]\s*$/.test(line)) return [...chords.slice(0, 4), '% ', 'N.C. ', '<'].slice(0, MOST);
  if (/(?:^|[\s|<])[A-G]$/.test(line))
    return naming === 'german' ? ['is', 'es', 'm', '7', ' | ', '/'] : ['b', '#', 'm', '7', ' | ', '/', ' '];
  if (/(?:^|[\s|<])[A-G][b#]$/.test(line)) return [' | ', 'm', '7', '/', ' ', ' :|'];
  if (/\S$/.test(line)) return [' | ', '7', '/', ' ', ' :|'];
  return ['| ', '/ ', ':|', '<', ...chords.slice(0, 3)];
}
