import { barTicks, beatsInBar, beatTicks, type Metre, sameMetre, ticks } from '../base';
import { describeKey, type Key, parseChord, sameKey } from '../theory';
import { defaultSpans, finestShares } from './bar-reader';
import { harmonyText, spansIn } from './harmony';
import { CHART_METRES, pickupMetre } from './limits';
import { beginsBar } from './navigation';
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
  for (const section of chart.sections) {
    const bars = chart.bars.slice(section.start, section.start + section.length);
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

const sameNumbers = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((number, index) => number === other[index]);

/** Whether a bar goes on with the ending of the bar before it. */
const continuesEnding = (bar: ChartBar, before: ChartBar | undefined): boolean =>
  bar.ending !== null &&
  before !== undefined &&
  before.ending !== null &&
  before.repeatEnd === null &&
  !bar.repeatStart &&
  sameNumbers(bar.ending, before.ending);

function endingLabel(bar: ChartBar, before: ChartBar | undefined): string {
  if (bar.ending === null || continuesEnding(bar, before)) return '';
  return bar.ending.map((number) => `${number}.`).join(',');
}

function closing(bar: ChartBar, next: ChartBar | undefined): string {
  if (bar.repeatEnd !== null) return bar.repeatEnd === 2 ? ':|' : `:| x${bar.repeatEnd}`;
  const endsEnding = bar.ending !== null && !(next && continuesEnding(next, bar));
  return endsEnding ? '||' : '|';
}

function directives(bar: ChartBar, chart: Chart, state: State): readonly string[] {
  const written: string[] = [];
  const metre = bar.pickup ? metreOfPickup(bar.metre, chart) : bar.metre;
  if (!sameMetre(metre, state.metre)) written.push(`(${metre.count}/${metre.unit})`);
  state.metre = metre;
  if (bar.key && !(state.key && sameKey(bar.key, state.key))) written.push(`(key: ${describeKey(bar.key)})`);
  state.key = bar.key;
  if (bar.pickup) written.push(`(${barTicks(bar.metre) / beatTicks(metre)})`);
  return written;
}

/** A metre whose beats can say how long the pickup is, the chart's own if possible. */
function metreOfPickup(pickup: Metre, chart: Chart): Metre {
  const following = chart.bars[1]?.metre;
  const candidates = [chart.metre, ...(following ? [following] : []), ...CHART_METRES];
  const fits = candidates.find((metre) => {
    const beats = barTicks(pickup) / beatTicks(metre);
    return (
      Number.isInteger(beats * 2) && beats < beatsInBar(metre) && sameMetre(pickupMetre(beats, metre), pickup)
    );
  });
  return fits ?? chart.metre;
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

/** The harmonies of a bar, with slashes only where the beats would be shared out differently without them. */
export function barText(bar: Pick<ChartBar, 'spans' | 'metre'>): string {
  const texts = bar.spans.map((span) => harmonyText(span.harmony));
  const shared = defaultSpans(
    bar.spans.map((span) => span.harmony),
    bar.metre,
  );
  const isShared =
    shared.length === bar.spans.length &&
    shared.every((span, index) => span.start === bar.spans[index]?.start);
  if (isShared) return texts.join(' ');
  const beat = beatTicks(bar.metre);
  const whole = bar.spans.every((span) => span.duration % beat === 0);
  const length = whole ? beat : ticks(barTicks(bar.metre) / finestShares(bar.metre));
  return bar.spans
    .map((span, index) =>
      [texts[index], ...Array.from({ length: Math.round(span.duration / length) - 1 }, () => '/')].join(' '),
    )
    .join(' ');
}
