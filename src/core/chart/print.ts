import {
  barTicks,
  beatsInBar,
  beatTicks,
  isCompound,
  type Metre,
  metreName,
  sameMetre,
  ticks,
} from '../base';
import { describeKey, type Key, parseChord, sameKey } from '../theory';
import { barText, closing, continuesEnding } from './bar-text';
import { spansIn } from './harmony';
import { CHART_METRES, pickupMetre, pickupOfEighths } from './limits';
import { beginsBar } from './navigation';
import { pushesInto } from './pushes';
import type { Chart, ChartBar, Harmony, HarmonySpan } from './types';

const BARS_A_LINE = 4;

/** What holds while the chart is printed from its beginning. */
interface State {
  metre: Metre;
  key: Key | null;
}

/**
 * Writes a chart out in its tidy form, four bars a line. Read again with the same metre it gives the same
 * chart, the places of its bars aside.
 */
export function printChart(chart: Chart): string {
  const state: State = { metre: chart.metre, key: null };
  const lines: string[] = [];
  const all = withPushes(chart.bars);
  for (const section of chart.sections) {
    const bars = all.slice(section.start, section.start + section.length);
    const last = bars[bars.length - 1];
    if (section.name !== null) {
      if (lines.length > 0) lines.push('');
      lines.push(section.again ? section.name : `${section.name}:`);
    }
    if (section.again && last) {
      state.metre = last.metre;
      state.key = last.key;
    } else lines.push(...printBars(bars, chart, state));
  }
  return lines.join('\n');
}

/** The bars of a chart with what they push and what is pushed into them marked by how they sound. */
const withPushes = (bars: readonly ChartBar[]): readonly ChartBar[] =>
  bars.map((bar, index): ChartBar => {
    const before = bars[index - 1];
    const { pushed: _, tail: __, ...plain } = bar;
    return {
      ...plain,
      ...(before && pushesInto(before, bar) ? { pushed: true } : {}),
      ...(pushesInto(bar, bars[index + 1]) ? { tail: true } : {}),
    };
  });

function printBars(bars: readonly ChartBar[], chart: Chart, state: State): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let onLine = 0;
  bars.forEach((bar, index) => {
    const before = bars[index - 1];
    const next = bars[index + 1];
    const opening = bar.repeatStart ? '|:' : '|';
    line = line === '' ? opening : joinLines(line, opening);
    const label = endingLabel(bar, before);
    const signs = bar.navigation ?? [];
    const typed = (begins: boolean) =>
      signs.filter((sign) => beginsBar(sign) === begins).map((sign) => `(${sign})`);
    const pieces = [
      label,
      ...directives(bar, chart, state),
      ...typed(true),
      barText(bar),
      ...typed(false),
    ].filter((piece) => piece !== '');
    line += ` ${pieces.join(' ')} ${closing(bar, next)}`;
    if (!bar.pickup) onLine += 1;
    if (onLine === BARS_A_LINE || !next) {
      lines.push(line);
      line = '';
      onLine = 0;
    }
  });
  return lines;
}

/** `… |` and `|:` share their line: `… |:`; after `:|` with a count the next line stands apart. */
function joinLines(line: string, opening: string): string {
  if (line.endsWith(':|') && opening === '|:') return `${line}:`;
  if (line.endsWith(':|') || /x\d+$/.test(line)) return opening === '|' ? line : `${line} ${opening}`;
  return opening === '|' ? line : `${line}:`;
}

function endingLabel(bar: ChartBar, before: ChartBar | undefined): string {
  if (bar.ending === null || continuesEnding(bar, before)) return '';
  return bar.ending.map((number) => `${number}.`).join(',');
}

function directives(bar: ChartBar, chart: Chart, state: State): readonly string[] {
  const written: string[] = [];
  const upbeat = bar.pickup ? writtenPickup(bar.metre, chart) : null;
  const metre = upbeat?.metre ?? bar.metre;
  if (!sameMetre(metre, state.metre)) written.push(`(${metreName(metre)})`);
  state.metre = metre;
  if (bar.key && !(state.key && sameKey(bar.key, state.key))) written.push(`(key: ${describeKey(bar.key)})`);
  state.key = bar.key;
  if (upbeat !== null) written.push(`(${upbeat.text})`);
  return written;
}

/** A metre whose beats can say how long the pickup is, the chart's own if possible, and how it is said there. */
function writtenPickup(
  pickup: Metre,
  chart: Chart,
): { readonly metre: Metre; readonly text: string | number } {
  const following = chart.bars[1]?.metre ?? chart.metre;
  if (pickupOfEighths(metreName(pickup)) !== null && isCompound(following))
    return { metre: following, text: metreName(pickup) };
  const candidates = [chart.metre, following, ...CHART_METRES];
  const beatsIn = (metre: Metre): number => barTicks(pickup) / beatTicks(metre);
  const fits = candidates.find((metre) => {
    const beats = beatsIn(metre);
    return (
      Number.isInteger(beats * 2) &&
      beats < beatsInBar(metre) &&
      sameMetre(pickupMetre({ beats }, metre), pickup)
    );
  });
  const metre = fits ?? chart.metre;
  return { metre, text: beatsIn(metre) };
}

/** What to write in a bar of a metre for it to have a signature (see `barSignature`), where the metre has room for it. */
export function typedSignature(signature: string, metre: Metre): string {
  let start = 0;
  const spans = spansIn(signature).map((each): HarmonySpan => {
    const at = each.lastIndexOf('@');
    const text = each.slice(0, at);
    const duration = Number(each.slice(at + 1));
    const span = { start: ticks(start), duration: ticks(duration), harmony: harmonyNamed(text) };
    start += duration;
    return span;
  });
  return barText({ spans, metre });
}

function harmonyNamed(text: string): Harmony {
  if (text === 'N.C.') return { kind: 'no chord' };
  const chord = parseChord(text);
  return chord.ok
    ? { kind: 'chord', chord: chord.value }
    : { kind: 'unknown', text: text.replace(/^\?/, '') };
}
