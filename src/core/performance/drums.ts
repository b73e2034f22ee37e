import { beatsInBar, beatTicks, type Metre, ticks } from '../base';
import type { Chart } from '../chart';
import { type DrumRow, type Feel, feelMetre, readGrid } from '../feel';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { DrumEvent } from './types';

const STRENGTH = { plain: 88, accent: 112, crash: 104 } as const;

/** A fill comes after four bars at the soonest, whatever the phrase (common practice, no source). */
const LEAST_BARS_BETWEEN_FILLS = 4;

/** A bar's place in its section, from 1, and the section's length, a pickup not counted; null outside sections. */
function placeOf(chart: Chart, bar: number): { readonly position: number; readonly length: number } | null {
  const section = chart.sections[chart.bars[bar]?.section ?? -1];
  if (section === undefined) {
    return null;
  }
  const pickup = chart.bars[section.start]?.pickup === true ? 1 : 0;
  return { position: bar - section.start - pickup + 1, length: section.length - pickup };
}

/** A metre that the feel says nothing about is marked plainly: the kick on one, the hi-hat on every beat. */
function plainRows(metre: Metre): readonly DrumRow[] {
  const beats = beatsInBar(metre);
  const source = 'common practice, no source';
  return [
    { sound: 'kick', grid: `x${'-'.repeat(beats - 1)}`, source },
    { sound: 'closed hat', grid: 'x'.repeat(beats), source },
  ];
}

/** A row whose hi-hat opens here and there (`o`) is two rows. */
function bySound(row: DrumRow): readonly DrumRow[] {
  return row.grid.includes('o')
    ? [
        { ...row, grid: row.grid.replaceAll('o', '-') },
        { ...row, sound: 'open hat', grid: row.grid.replaceAll(/x/gi, '-') },
      ]
    : [row];
}

/** Whether a bar ends a phrase that a fill answers: the last bar of all but the shortest sections does. */
function endsPhrase(chart: Chart, bar: number, phraseLength: number): boolean {
  const place = placeOf(chart, bar);
  if (place === null) {
    return false;
  }
  const period = phraseLength * Math.ceil(LEAST_BARS_BETWEEN_FILLS / phraseLength);
  const ends = place.position === place.length && place.length >= LEAST_BARS_BETWEEN_FILLS;
  return ends || place.position % period === 0;
}

/** Whether the bar is the second one of a pattern of two bars. */
const isEven = (chart: Chart, bar: number): boolean => (placeOf(chart, bar)?.position ?? 1) % 2 === 0;

function rowsFor(bar: PlannedBar, chart: Chart, feel: Feel): readonly DrumRow[] {
  const known = feelMetre(feel, bar.metre);
  if (known === null) {
    return plainRows(bar.metre);
  }
  const fills = bar.bar !== null && known.fill.length > 0 && endsPhrase(chart, bar.bar, feel.phraseLength);
  if (fills) {
    return known.fill;
  }
  return known.evenBars !== undefined && bar.bar !== null && isEven(chart, bar.bar)
    ? known.evenBars
    : known.drums;
}

function isLastOfSection(chart: Chart, bar: number): boolean {
  const place = placeOf(chart, bar);
  return place !== null && place.position === place.length;
}

/** The drums by the feel's grids, with its fill at phrase ends and a crash after a section's last fill; silent in a pickup. */
export function drumEvents(
  bars: readonly PlannedBar[],
  chart: Chart,
  feel: Feel,
  ratio: number,
): readonly DrumEvent[] {
  const events: DrumEvent[] = [];
  let afterSection = false;
  for (const bar of bars) {
    if (bar.bar === null || bar.sheetBar?.written.pickup === true) {
      continue;
    }
    const at = (position: number): number => bar.start + swung(position, bar.metre, ratio);
    for (const row of rowsFor(bar, chart, feel).flatMap(bySound)) {
      for (const hit of readGrid(row.grid, bar.metre)) {
        const start = at(hit.start);
        events.push({
          part: 'drums',
          sound: row.sound,
          start: ticks(start),
          duration: ticks(Math.max(1, at(hit.start + hit.duration) - start)),
          velocity: hit.accent ? STRENGTH.accent : STRENGTH.plain,
        });
      }
    }
    if (afterSection) {
      events.push({
        part: 'drums',
        sound: 'crash',
        start: ticks(bar.start),
        duration: beatTicks(bar.metre),
        velocity: STRENGTH.crash,
      });
    }
    afterSection = isLastOfSection(chart, bar.bar);
  }
  return events;
}
