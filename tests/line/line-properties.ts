import { expect } from 'vitest';
import { barTicks, COMMON_TIME, midiOf } from '../../src/core/base';
import { parseChart } from '../../src/core/chart';
import { placesOf } from '../../src/core/fretboard';
import {
  analyseLine,
  type ComposeRequest,
  checkLine,
  composeLine,
  limitsIn,
  type Technique,
} from '../../src/core/line';
import { composedWide } from './composed';
import { barsOf, brokenIn } from './held-aims';
import { type WideWish, wideRequest } from './wide-charts';

/** What has to be true of every composed line, whatever is asked. Each throws where it is not. */

/** The lowest string of the instrument, E1. */
const LOWEST = 28;

function readsItsChart({ chart, metre = COMMON_TIME }: WideWish): void {
  expect(parseChart(chart, metre).problems).toEqual([]);
}

function staysInItsBars(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  const { bars } = line;
  expect(bars.length).toBe(asked.chart.bars.length);
  asked.chart.bars.forEach((bar, index) => {
    let end = 0;
    for (const note of bars[index] ?? []) {
      expect(note.start).toBeGreaterThanOrEqual(end);
      expect(note.duration).toBeGreaterThan(0);
      end = note.start + note.duration;
    }
    expect(end).toBeLessThanOrEqual(barTicks(bar.metre));
  });
}

function staysOnTheNeck(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  for (const { pitch } of line.bars.flat()) {
    const midi = midiOf(pitch);
    expect(midi).toBeGreaterThanOrEqual(LOWEST);
    expect(midi).toBeLessThanOrEqual(limitsIn(asked.level, asked.feel.bassRole).highestMidi);
    expect(placesOf(midi, asked.instrument).some((place) => place.fret <= 12)).toBe(true);
  }
}

/** Whether a bar may show a technique by the piece and its aims; one that an aim rules out may still be all there is. */
const isAllowed = (asked: ComposeRequest, bar: number, technique: Technique): boolean =>
  technique === 'chord tones' ||
  asked.techniques.has(technique) ||
  (asked.aims ?? []).some(
    (aim) =>
      barsOf(asked, aim).includes(bar) &&
      (aim.wanted?.includes(technique) || aim.allowed?.includes(technique)),
  );

function showsOnlyWhatIsAllowed(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  analyseLine(asked, line.bars).forEach(({ techniques }, bar) => {
    expect(techniques.filter((technique) => !isAllowed(asked, bar, technique))).toEqual([]);
  });
}

function isTheSameForTheSameSeed(wish: WideWish): void {
  expect(composeLine(wideRequest(wish))).toEqual(composedWide(wish).line);
}

function leavesKeptBarsAlone(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  const kept = line.bars.map((notes, index) => (index % 3 === 1 ? notes : null));
  const again = composeLine({ ...asked, seed: asked.seed + 1, kept }).bars;
  kept.forEach((notes, index) => {
    if (notes) expect(again[index]).toEqual(notes);
  });
}

function soundsWhereThereIsAChord(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  const { bars } = line;
  asked.chart.bars.forEach((bar, index) => {
    const chorded = bar.spans.some((span) => span.harmony.kind === 'chord');
    expect((bars[index]?.length ?? 0) > 0).toBe(chorded);
  });
}

/** Each aim is kept in each of its bars, or the line says which bar does not keep it. */
function keepsItsAimsOrSaysSo(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  const { bars, misses, remarks } = line;
  const techniques = analyseLine(asked, bars).map((bar) => bar.techniques);
  wish.aims.forEach((aim, index) => {
    const scope = barsOf(asked, aim);
    for (const bar of scope) {
      const broken = brokenIn(asked, aim, bars[bar] ?? [], techniques[bar] ?? [], bar);
      const said = misses.filter((miss) => miss.aim === index && miss.bars.includes(bar));
      expect(said.length > 0 || broken.length === 0, broken.join()).toBe(true);
    }
    if (aim.where.kind === 'bar') return;
    for (const technique of aim.wanted ?? []) {
      const missing = misses.filter((miss) => miss.aim === index && miss.techniques.includes(technique));
      const heard = scope.some((bar) => techniques[bar]?.includes(technique));
      expect(scope.length === 0 || heard || missing.length > 0).toBe(true);
    }
  });
  for (const miss of misses) expect(remarks).toContain(`${miss.message} ${miss.nearest}`);
}

/** A rule that is broken is among the remarks, aims or none. */
function ownsUpToBrokenRules(wish: WideWish): void {
  const { asked, line } = composedWide(wish);
  const { bars, remarks } = line;
  for (const breach of checkLine(asked, bars)) expect(remarks).toContain(breach.message);
}

/** How many rules the line breaks that no aim asked for. */
export function rulesBrokenUnasked(wish: WideWish): number {
  if (wish.aims.length > 0) return 0;
  const { asked, line } = composedWide(wish);
  return checkLine(asked, line.bars).length;
}

export const LINE_PROPERTIES: Readonly<Record<string, (wish: WideWish) => void>> = {
  'is read without a problem': readsItsChart,
  'gets notes that stay in their bars': staysInItsBars,
  'gets notes on the neck and in the range of the level': staysOnTheNeck,
  'shows only techniques that are allowed': showsOnlyWhatIsAllowed,
  'gets the same line for the same seed': isTheSameForTheSameSeed,
  'leaves kept bars alone': leavesKeptBarsAlone,
  'sounds where there is a chord, and rests elsewhere': soundsWhereThereIsAChord,
  'keeps its aims, or says which bar does not': keepsItsAimsOrSaysSo,
  'owns up to the rules that it breaks': ownsUpToBrokenRules,
};
