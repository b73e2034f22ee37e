import type { DrawnSymbol } from '../../core/theory';
import { type Mark, textMark } from '../ink';
import { textWidth } from '../metrics/measure';
import type { InkRole } from '../types';

/**
 * Extensions stand raised and smaller, so that root and triad are read first: usual in chord symbols (K. Brandt and
 * C. Roemer, "Standardized Chord Symbol Notation", 1976, from memory).
 */
const RAISED = 0.76;
const LIFT = 0.3;

/** Width of a symbol that is drawn by {@link symbolMark}. */
export const symbolWidth = ({ base, raised, bass }: DrawnSymbol, size: number, bold: boolean): number =>
  textWidth(base, size, bold) + textWidth(raised, size * RAISED, bold) + textWidth(bass, size, bold);

/**
 * A chord symbol or a chord's numeral with its extensions raised, its left end at `x`, its baseline at 0: one text, so
 * that it is found and read as one.
 */
export function symbolMark(
  role: InkRole,
  symbol: DrawnSymbol,
  x: number,
  { size, bold }: { readonly size: number; readonly bold: boolean },
): Mark {
  const { base, raised, bass } = symbol;
  const plain = textMark(role, base + raised + bass, x, 0, { size, bold });
  if (raised === '') return plain;
  const runs = [
    { text: base, size, rise: 0 },
    { text: raised, size: size * RAISED, rise: size * LIFT },
    { text: bass, size, rise: 0 },
  ].filter(({ text }) => text !== '');
  const top = Math.min(
    ...runs.map((run) => textMark(role, run.text, 0, -run.rise, { size: run.size, bold }).box.top),
  );
  return { ...plain, runs, box: { ...plain.box, top, right: x + symbolWidth(symbol, size, bold) } };
}

const NUMERAL = /^[♭♯𝄫𝄪]*[IViv]+[°ø+]?/u;

/** A numeral taken apart like a chord symbol: `V` `7` `/IV`. */
export function numeralParts(numeral: string): DrawnSymbol {
  const base = NUMERAL.exec(numeral)?.[0];
  if (base === undefined) return { base: numeral, raised: '', bass: '' };
  const rest = numeral.slice(base.length);
  const slash = rest.search(/\/[♭♯]*[IViv]/u);
  return slash < 0
    ? { base, raised: rest, bass: '' }
    : { base, raised: rest.slice(0, slash), bass: rest.slice(slash) };
}
