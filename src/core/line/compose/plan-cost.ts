import { endsOffBeat } from '../figures';
import type { BarModel } from '../model';
import type { Workshop } from '../options';
import { areEven } from '../rules/evenness';
import { BREACH } from '../taste';
import type { Form, Given, PlannedBar } from './planned';

/** Anticipations are on, and no bar has an off-beat at its end; a rhythm that has one is liked as much. */
export const AN_EARLY_NOTE = 6;

const WEIGHT = {
  /** A whole line that never leaves beat one or half a bar silent although space is on. */
  noSpace: 6,
  /** Missing silence, for the whole share. */
  silenceShort: 400,
  /** A bar with a silent beat one, by how much the feel lives on space; below zero where it does. */
  space: 3.5,
  /** An answer or turnaround that is not marked for its role in the feel's table. */
  foreignRole: 2,
  /** The carried form, where the statement is heard three times, teaches most but says least. */
  carried: 0.5,
} as const;

/** Onsets of a bar without its last beat, as the rule on shared rhythms counts them. */
const headOf = (bar: BarModel, starts: readonly number[]): string =>
  `${bar.ticks}: ${starts.filter((start) => start < bar.ticks - bar.beat).join(' ')}`;

/** What a plan costs: breaches of the rules of the whole line that rhythm alone decides, and the feel's taste. */
export function planCost(
  shop: Workshop,
  bars: readonly PlannedBar[],
  given: readonly Given[],
  form: Form,
): number {
  const { model } = shop;
  const starts = bars.map(
    (bar, index) =>
      given[index]?.option?.tones.map((tone) => tone.start) ??
      bar.rhythm?.onsets.map((onset) => onset.start) ??
      [],
  );
  let cost = form === 'carried' ? WEIGHT.carried : 0;
  for (const bar of model.bars) {
    for (const next of bar.after) {
      if (!areEven(bar, starts[bar.index]?.length ?? 0, model.bars[next], starts[next]?.length ?? 0))
        cost += BREACH;
    }
  }
  for (const section of model.request.chart.sections) {
    const heads = model.bars
      .slice(section.start, section.start + section.length)
      .filter((bar) => (starts[bar.index]?.length ?? 0) > 0)
      .map((bar) => headOf(bar, starts[bar.index] ?? []));
    const most = Math.max(0, ...heads.map((head) => heads.filter((other) => other === head).length));
    if (most * 2 < heads.length) cost += BREACH;
  }
  cost += silenceCost(shop, bars) + dropCost(shop, bars) + anticipationCost(shop, bars);
  for (const { role, rhythm } of bars)
    if (rhythm && !rhythm.cell.roles.includes(role)) cost += WEIGHT.foreignRole;
  return cost;
}

/** From this weight of space on, a feel likes bars with a silent beat one. */
const HALF_LIKED = 0.55;

function silenceCost(shop: Workshop, bars: readonly PlannedBar[]): number {
  const { feel, techniques } = shop.model.request;
  const rhythms = bars.flatMap((bar) => (bar.rhythm ? [bar.rhythm] : []));
  if (!techniques.has('space') || rhythms.length === 0) return 0;
  const share = rhythms.reduce((sum, rhythm) => sum + rhythm.silence, 0) / rhythms.length;
  const shows = rhythms.length < 2 || rhythms.some((rhythm) => rhythm.silentOne || rhythm.longest >= 0.5);
  const silentOnes = rhythms.filter((rhythm) => rhythm.silentOne).length / rhythms.length;
  return (
    Math.max(0, feel.silence.least - share) * WEIGHT.silenceShort +
    silentOnes * (HALF_LIKED - feel.weights.space) * WEIGHT.space * rhythms.length +
    (shows ? 0 : WEIGHT.noSpace * feel.weights.space)
  );
}

/** A teacher who switches anticipations on wants a rhythm that can have one. */
function anticipationCost(shop: Workshop, bars: readonly PlannedBar[]): number {
  if (!shop.model.request.techniques.has('anticipation')) return 0;
  const able = bars.some(({ rhythm }, index) => {
    const bar = shop.model.bars[index];
    return rhythm !== null && bar !== undefined && endsOffBeat(bar, rhythm.onsets);
  });
  return able ? 0 : AN_EARLY_NOTE;
}

/** One drop wants the bass on beat three in most bars. */
function dropCost(shop: Workshop, bars: readonly PlannedBar[]): number {
  if (!shop.model.request.feel.bassRole.carriesThree) return 0;
  const inFour = bars.flatMap(({ rhythm }, index) => {
    const bar = shop.model.bars[index];
    return rhythm && bar && bar.metre.count === 4 && bar.metre.unit === 4 ? [{ rhythm, bar }] : [];
  });
  const sounding = inFour.filter(({ rhythm, bar }) =>
    rhythm.onsets.some(
      (onset) => onset.start <= bar.ticks / 2 && onset.start + onset.duration > bar.ticks / 2,
    ),
  );
  return inFour.length > 0 && sounding.length * 2 <= inFour.length ? BREACH : 0;
}
