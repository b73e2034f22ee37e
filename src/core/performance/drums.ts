import { beatsInBar, beatTicks, type Metre, ticks } from '../base';
import type { Chart } from '../chart';
import { type DrumRow, type Feel, feelMetre, readGrid } from '../feel';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { DrumEvent } from './types';

const STRENGTH = { plain: 88, accent: 112, crash: 104 } as const;

/** A fill comes after four bars at the soonest, whatever the phrase (common practice, no source). */
const LEAST_BARS_BETWEEN_FILLS = 4;

/** Whether the bar is the second, fourth, … of its section: the second of a pattern of two bars. */
function isEven(chart: Chart, bar: number): boolean {
  const section = chart.sections[chart.bars[bar]?.section ?? -1];
  const start = section?.start ?? 0;
  const first = chart.bars[start]?.pickup === true ? start + 1 : start;
  return (bar - first) % 2 === 1;
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

/** Whether the written bar ends a phrase that a fill answers: the last bar of all but the shortest sections does. */
function endsPhrase(chart: Chart, bar: number, phraseLength: number): boolean {
  const section = chart.sections[chart.bars[bar]?.section ?? -1];
  if (section === undefined) {
    return false;
  }
  const position = bar - section.start + 1;
  const period = phraseLength * Math.ceil(LEAST_BARS_BETWEEN_FILLS / phraseLength);
  const ends = position === section.length && section.length >= LEAST_BARS_BETWEEN_FILLS;
  return ends || position % period === 0;
}

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
  const section = chart.sections[chart.bars[bar]?.section ?? -1];
  return section !== undefined && bar === section.start + section.length - 1;
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
