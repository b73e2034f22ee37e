import type { DrawnSymbol } from '../../core/theory';
import { type Mark, textMark } from '../ink';
import { textWidth } from '../metrics/measure';
import type { InkRole, TextRun } from '../types';

/** A symbol, or a chord's numeral, with the figures that say which of its notes lies in the bass. */
interface FiguredSymbol extends DrawnSymbol {
  /** One over the other, before what is raised. */
  readonly figures?: readonly [string, string];
}

/**
 * Extensions stand raised and smaller, so that root and triad are read first: usual in chord symbols (K. Brandt and
 * C. Roemer, "Standardized Chord Symbol Notation", 1976, from memory).
 */
const RAISED = 0.76;
const LIFT = 0.3;

/** Figures of inversion stand one over the other, as in a figured bass, the lower a little under the baseline. */
const FIGURE = { size: 0.66, upper: 0.43, lower: -0.1 } as const;

interface Look {
  readonly size: number;
  readonly bold: boolean;
}

/** The parts of a symbol, one behind the other. */
function runsOf({ base, figures, raised, bass }: FiguredSymbol, { size, bold }: Look): readonly TextRun[] {
  const [upper = '', lower = ''] = figures ?? [];
  const figure = size * FIGURE.size;
  return [
    { text: base, size, rise: 0 },
    { text: upper, size: figure, rise: size * FIGURE.upper },
    { text: lower, size: figure, rise: size * FIGURE.lower, back: textWidth(upper, figure, bold) },
    { text: raised, size: size * RAISED, rise: size * LIFT },
    { text: bass, size, rise: 0 },
  ].filter(({ text }) => text !== '');
}

/** Width of a symbol that is drawn by {@link symbolMark}. */
export const symbolWidth = (symbol: FiguredSymbol, size: number, bold: boolean): number =>
  runsOf(symbol, { size, bold }).reduce(
    (sum, run) => sum + textWidth(run.text, run.size, bold) - (run.back ?? 0),
    0,
  );

/**
 * A chord symbol or a chord's numeral with its extensions raised, its left end at `x`, its baseline at 0: one text, so
 * that it is found and read as one.
 */
export function symbolMark(role: InkRole, symbol: FiguredSymbol, x: number, look: Look): Mark {
  const runs = runsOf(symbol, look);
  const plain = textMark(role, runs.map(({ text }) => text).join(''), x, 0, look);
  if (runs.every(({ rise }) => rise === 0)) return plain;
  const boxes = runs.map(
    (run) => textMark(role, run.text, 0, -run.rise, { size: run.size, bold: look.bold }).box,
  );
  const top = Math.min(...boxes.map((box) => box.top));
  const bottom = Math.max(...boxes.map((box) => box.bottom));
  return {
    ...plain,
    runs,
    box: { ...plain.box, top, bottom, right: x + symbolWidth(symbol, look.size, look.bold) },
  };
}

const NUMERAL = /^[♭♯𝄫𝄪]*[IViv]+[°ø+]?/u;

const INVERSIONS: ReadonlySet<string> = new Set(['64', '65', '43', '42']);

/** A numeral taken apart like a chord symbol: `V` `7` `/IV`; `V42` with 4 over 2. */
export function numeralParts(numeral: string): FiguredSymbol {
  const base = NUMERAL.exec(numeral)?.[0];
  if (base === undefined) return { base: numeral, raised: '', bass: '' };
  const rest = numeral.slice(base.length);
  const slash = rest.search(/\/[♭♯]*[IViv]/u);
  const [added, bass] = slash < 0 ? [rest, ''] : [rest.slice(0, slash), rest.slice(slash)];
  const [upper, lower] = added;
  return upper !== undefined && lower !== undefined && INVERSIONS.has(added)
    ? { base, figures: [upper, lower], raised: '', bass }
    : // Of a sixth and a ninth that are added nothing is stacked: they are no figures of inversion.
      { base, raised: added.replace(/^69/, '6/9'), bass };
}
