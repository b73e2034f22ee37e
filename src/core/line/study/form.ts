/** A part of a line as it is compared with others. */
export interface FormPart {
  /** Indices of its bars. */
  readonly bars: readonly number[];
  /** `a`, `a′` for one like it that differs somewhere, `b`. */
  readonly letter: string;
}

/** What a bar is compared by. */
export interface BarShape {
  /** When its notes begin. */
  readonly rhythm: string;
  /** Its degrees in order. */
  readonly figure: string;
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** `a` to `z`, then `a2` to `z2`: no two parts share a name. */
function letterOf(index: number): string {
  const round = Math.floor(index / LETTERS.length) + 1;
  return `${LETTERS[index % LETTERS.length]}${round === 1 ? '' : round}`;
}

const alike = (one: readonly BarShape[], other: readonly BarShape[]): boolean => {
  const same = one.filter(({ rhythm }, index) => rhythm === other[index]?.rhythm).length;
  return one.length === other.length && 2 * same >= one.length;
};

const equal = (one: readonly BarShape[], other: readonly BarShape[]): boolean =>
  one.length === other.length &&
  one.every(
    ({ rhythm, figure }, index) => rhythm === other[index]?.rhythm && figure === other[index]?.figure,
  );

/**
 * The form of a line in letters: a part that has the rhythm of an earlier one in at least half of its bars gets its letter,
 * with a stroke where rhythm or degrees differ anywhere (common practice, no source).
 */
export function formOf(
  parts: readonly (readonly number[])[],
  shapes: readonly BarShape[],
): readonly FormPart[] {
  const firsts: { readonly letter: string; readonly shape: readonly BarShape[] }[] = [];
  return parts.map((bars) => {
    const shape = bars.flatMap((bar) => shapes[bar] ?? []);
    const first =
      firsts.find((known) => equal(shape, known.shape)) ?? firsts.find((known) => alike(shape, known.shape));
    if (first !== undefined)
      return { bars, letter: equal(shape, first.shape) ? first.letter : `${first.letter}′` };
    const letter = letterOf(firsts.length);
    firsts.push({ letter, shape });
    return { bars, letter };
  });
}
