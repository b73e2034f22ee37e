import type { Metre } from '../base';
import type { Key } from '../theory';
import { endingGone } from './ending-gone';
import { parseChart } from './parse';
import { isWholeRepeat, removeBar } from './remove';
import { scanLine } from './scanner';
import { hasNewProblems, type MeantBar, settle } from './settle';
import { before, behind, isAgain, rewritePlace, textAt } from './text';
import type { Chart, ChartBar, ChartPlace, ParsedChart } from './types';
import { usesOf } from './uses';

/** A change to one bar, counted from 0 as written. */
export type BarEdit =
  /** `text` is what stands between the bar lines: `Am7 D7`, `%`, `N.C.`. */
  | { readonly kind: 'write'; readonly bar: number; readonly text: string }
  /** A new bar before the bar; `bar` may be the number of bars, to add one at the end. */
  | { readonly kind: 'insert'; readonly bar: number; readonly text: string }
  /** A new bar behind the bar, in its line and section; in its ending too where it shall be of the same one. */
  | { readonly kind: 'append'; readonly bar: number; readonly text: string; readonly sameEnding?: boolean }
  | { readonly kind: 'remove'; readonly bar: number };

export interface EditedChart {
  readonly text: string;
  /** For each bar of the changed chart, the index of the bar before that it goes on as; null for a new one. */
  readonly origins: readonly (number | null)[];
}

/**
 * The chart text with one bar changed, everything else letter for letter as typed; a `%` or slash whose meaning
 * the change would alter is written out, and what the bar said for those after it (metre, key) stays said. Where the
 * bar's section is used again by its name, the change is one of all its uses. Null where the text cannot say it: no
 * such bar, a bar of a section that is written by its name alone, a bar before a pickup, or a `text` that is more
 * than the chords of one bar.
 */
export function editBar(
  text: string,
  metre: Metre,
  edit: BarEdit,
  key: Key | null = null,
): EditedChart | null {
  const read = parseChart(text, metre, key);
  const { bars } = read.chart;
  if (edit.kind !== 'remove' && !isOneBar(edit.text)) return null;
  if (edit.kind === 'insert' && edit.bar === bars.length) {
    if (bars.length > 0) return editBar(text, metre, { ...edit, kind: 'append', bar: edit.bar - 1 }, key);
    const line = `| ${edit.text.trim()} |`;
    return { text: text.trim() === '' ? line : `${text.trimEnd()}\n${line}`, origins: [null] };
  }
  const bar = bars[edit.bar];
  if (bar === undefined || isAgain(read.chart, bar)) return null;
  if (isEmpty(text, bar)) {
    const said = textAt(text, bar.place).slice(0, -1).trimEnd();
    return editBar(rewritePlace(text, bar.place, `${said} N.C. |`), metre, edit, key);
  }
  if (edit.kind === 'insert' && bar.pickup) return null;
  const meant = meantBars(read.chart, edit);
  const settled = settle(changed(text, read.chart, bar, edit), meant, {
    metre,
    key,
    text,
    chart: read.chart,
  });
  if (settled === null) return null;
  const after = parseChart(settled, metre, key);
  return hasNewProblems(read, after, typedPlaces(after, edit))
    ? null
    : { text: settled, origins: meant.map(({ origin }) => origin) };
}

/** What stands between the bar lines as typed; null for a bar of a section that is written by its name alone. */
export function typedBar(text: string, chart: Chart, bar: number): string | null {
  const written = chart.bars[bar];
  if (!written || isAgain(chart, written)) return null;
  return isEmpty(text, written) ? '' : textAt(text, written.place);
}

/** Words between bar lines: no bar line, comment or line end, no ending, count, metre or key. */
function isOneBar(text: string): boolean {
  const tokens = scanLine(text, 1);
  return !/[;\r\n]/.test(text) && tokens.length > 0 && tokens.every(({ kind }) => kind === 'word');
}

/** Nothing but blanks stands between the bar lines; the bar's place is then the bar lines too. */
const isEmpty = (text: string, bar: ChartBar): boolean => textAt(text, bar.place).startsWith('|');

/** Places at which a problem is the typed text's own. */
function typedPlaces(after: ParsedChart, edit: BarEdit): readonly ChartPlace[] {
  const at = { write: edit.bar, insert: edit.bar, append: edit.bar + 1, remove: -1 }[edit.kind];
  const typed = after.chart.bars[at];
  return typed === undefined ? [] : [typed.place];
}

function changed(text: string, chart: Chart, bar: ChartBar, edit: BarEdit): string {
  const { place } = bar;
  switch (edit.kind) {
    case 'write':
      return rewritePlace(text, place, edit.text.trim());
    case 'insert':
      return rewritePlace(text, before(place), `${edit.text.trim()}${barLineLike(text, place)}`);
    case 'append':
      return rewritePlace(text, behind(place), `${barLineLike(text, place)}${edit.text.trim()}`);
    case 'remove':
      return removeBar(text, chart, edit.bar);
  }
}

/** A bar line with blanks around it, unless the bar stands close between its own. */
function barLineLike(text: string, place: ChartPlace): string {
  const line = text.split(/\r\n|\r|\n/)[place.line - 1] ?? '';
  const close = line[place.column - 2] === '|' && line[place.column - 1 + place.length] === '|';
  return close ? '|' : ' | ';
}

/** What the bars of the changed chart are meant to be: all as they were, but for the change in each use of the bar. */
function meantBars(chart: Chart, edit: BarEdit): readonly MeantBar[] {
  const meant: MeantBar[] = chart.bars.map((bar, origin) => ({ origin, bar }));
  const uses = usesOf(chart, edit.bar);
  for (const use of [...uses].sort((one, other) => other - one)) {
    const bar = chart.bars[use];
    if (bar === undefined) continue;
    const frame = (at: number, change: Partial<ChartBar>) => {
      const each = meant[at];
      if (each?.bar) meant[at] = { ...each, bar: { ...each.bar, ...change } };
    };
    const fresh: MeantBar = { origin: null, bar: null };
    switch (edit.kind) {
      case 'write':
        meant[use] = { origin: use, bar, rewritten: true };
        break;
      case 'insert':
        frame(use, { repeatStart: false });
        meant.splice(use, 0, fresh);
        break;
      case 'append':
        frame(use, { repeatEnd: null });
        meant.splice(use + 1, 0, edit.sameEnding ? { ...behindIt(bar), origin: null } : fresh);
        break;
      case 'remove':
        framesAround(meant, chart, use);
        meant.splice(use, 1);
        if (use === 0) unpushFirst(meant);
    }
  }
  return meant;
}

/** Nothing stands before the first bar that its chord could be pushed into. */
function unpushFirst(meant: MeantBar[]): void {
  const [first] = meant;
  if (!first?.bar?.pushed) return;
  const { pushed: _, ...bar } = first.bar;
  meant[0] = { ...first, bar };
}

/** A bar of any chords in the ending of another, behind it. */
const behindIt = (bar: ChartBar) => ({ bar: { ...bar, repeatStart: false, pickup: false }, rewritten: true });

/**
 * The signs of a bar that goes stay for its neighbours, unless it was the whole of its repeat. Where it was the whole
 * of an ending, the endings beside it are for the text to say.
 */
function framesAround(meant: MeantBar[], chart: Chart, index: number): void {
  const change = (at: number, frame: Partial<ChartBar> | 'loose') => {
    const each = meant[at];
    if (!each?.bar) return;
    meant[at] = frame === 'loose' ? { ...each, loose: true } : { ...each, bar: { ...each.bar, ...frame } };
  };
  const bar = chart.bars[index];
  if (bar === undefined) return;
  if (endingGone(chart, index) !== null) {
    for (const step of [-1, 1]) {
      let at = index + step;
      change(at, 'loose');
      while (chart.bars[at]?.ending != null) {
        at += step;
        change(at, 'loose');
      }
    }
  } else if (!isWholeRepeat(chart, index)) {
    if (bar.repeatEnd !== null) change(index - 1, { repeatEnd: bar.repeatEnd });
    if (bar.repeatStart) change(index + 1, { repeatStart: true });
  }
}
