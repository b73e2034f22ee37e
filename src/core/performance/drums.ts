import { beatsInBar, beatsOf, beatTicks, isUneven, type Metre, ticks, unitTicks } from '../base';
import type { Chart } from '../chart';
import { type DrumRow, type DrumWay, type Feel, type FeelMetre, rhythmsIn, type SourcedGrid } from '../feel';
import { drumBar, type Hit, inWay, type Place } from './drummer';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { DrumEvent } from './types';

const CRASH = 104;

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
  const steps = isUneven(metre) ? metre.count : beatsInBar(metre);
  const source = 'common practice, no source' as const;
  const hat = isUneven(metre)
    ? beatsOf(metre).map(({ length }) => 'x'.padEnd(length / unitTicks(metre), '-'))
    : ['x'.repeat(steps)];
  return [
    { sound: 'kick', grid: `x${'-'.repeat(steps - 1)}`, source },
    { sound: 'closed hat', grid: hat.join(''), source },
  ];
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

function isLastOfSection(chart: Chart, bar: number): boolean {
  const place = placeOf(chart, bar);
  return place !== null && place.position === place.length;
}

/** From so many bars on, the second half of a section is led by other hats, as a section of its own is. */
const LONG_SECTION = 8;
const PHRASE = 4;

function formPlace(chart: Chart, bar: number): Place {
  const { position, length } = placeOf(chart, bar) ?? { position: 1, length: 1 };
  const later = length >= LONG_SECTION && position > length / 2 ? 1 : 0;
  return {
    section: (chart.bars[bar]?.section ?? 0) + later,
    phrase: Math.floor((position - 1) / PHRASE),
    bar: (position - 1) % PHRASE,
  };
}

const SILENT: SourcedGrid = { grid: '', source: 'ours' };

/** A metre that a feel says nothing about is played plainly. */
const plainMetre = (metre: Metre): FeelMetre => ({
  metre,
  drums: plainRows(metre),
  fill: [],
  chops: SILENT,
  organ: { left: SILENT, right: SILENT },
});

/** What a drummer keeps to throughout. */
export interface DrumManner {
  /** Of what varies from bar to bar; null plays every bar as written. */
  readonly seed: number | null;
  /** The pattern that was chosen where the feel offers several; null for the feel's own. */
  readonly way: DrumWay | null;
}

/** The bar before the first one: the feel's pattern with one of its fills. */
export function introOfDrums(
  bar: PlannedBar | undefined,
  feel: Feel,
  ratio: number,
  { seed, way }: DrumManner,
): readonly DrumEvent[] {
  const known = bar && rhythmsIn(feel, bar.metre);
  if (bar === undefined || !known) return [];
  const place = { section: 0, phrase: 0, bar: 0 };
  const hits = drumBar(inWay(known, way), false, bar.metre, { seed, index: -1, fill: 'phrase', place });
  return hits.map((hit) => drumEvent(hit, bar, ratio));
}

/** A stroke of a bar at its place in the performance. */
function drumEvent(hit: Hit, bar: PlannedBar, ratio: number): DrumEvent {
  const at = (position: number): number => bar.start + swung(position, bar.metre, ratio);
  const start = at(hit.start);
  return {
    part: 'drums',
    sound: hit.sound,
    start: ticks(start),
    duration: ticks(Math.max(1, at(hit.start + hit.duration) - start)),
    velocity: hit.velocity,
  };
}

/**
 * The drums by the feel's grids, with a fill at phrase ends and, where the feel has one, a crash after a section's last
 * fill; silent in a pickup.
 */
export function drumEvents(
  bars: readonly PlannedBar[],
  chart: Chart,
  feel: Feel,
  ratio: number,
  { seed, way }: DrumManner,
): readonly DrumEvent[] {
  const events: DrumEvent[] = [];
  let afterSection = false;
  for (const [index, bar] of bars.entries()) {
    if (bar.bar === null || bar.sheetBar?.written.pickup === true) {
      continue;
    }
    const last = isLastOfSection(chart, bar.bar);
    const fill = endsPhrase(chart, bar.bar, feel.phraseLength) ? (last ? 'section' : 'phrase') : 'none';
    const place = formPlace(chart, bar.bar);
    const known = inWay(rhythmsIn(feel, bar.metre) ?? plainMetre(bar.metre), way);
    for (const hit of drumBar(known, isEven(chart, bar.bar), bar.metre, { seed, index, fill, place })) {
      events.push(drumEvent(hit, bar, ratio));
    }
    if (afterSection && feel.crash !== undefined) {
      events.push({
        part: 'drums',
        sound: 'crash',
        start: ticks(bar.start),
        duration: beatTicks(bar.metre),
        velocity: CRASH,
      });
    }
    afterSection = last;
  }
  return events;
}
