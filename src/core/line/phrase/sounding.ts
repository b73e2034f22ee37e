import { remembered } from '../../base';
import type { HeardLine } from '../hearing';
import type { BarModel } from '../model';
import { type Tone, toneOf } from '../tones';

/** Notes of a bar or of a part of it, with a number that equal ones in the same bar share. */
export interface Sound {
  readonly tones: readonly Tone[];
  readonly id: number;
}

/** Keeps what the plans of a request sound like: equal bars are the same object, and so are equal lines. */
export interface Sounding {
  /** Tones that several bars may share, as they stand in one. */
  partOf(bar: BarModel, tones: readonly Tone[]): Sound;
  /** A line of the parts of its bars, the bars in their order. */
  lineOf(bars: readonly (readonly Sound[])[]): HeardLine;
}

const textOf = (tones: readonly Tone[]): string =>
  tones
    .map(({ start, duration, midi, name, tiedOn }) =>
      [start, duration, midi, name.letter, name.alteration, tiedOn].join(),
    )
    .join(' ');

export function soundingFor(): Sounding {
  let sounds = 0;
  const parts = new WeakMap<readonly Tone[], Map<BarModel, Sound>>();
  const byText = new Map<string, Sound>();
  const joined = new Map<string, Sound>();
  const lines = new Map<string, HeardLine>();

  function numbered(tones: readonly Tone[]): Sound {
    sounds += 1;
    return { tones, id: sounds };
  }

  const nothing = numbered([]);

  function barOf(own: readonly Sound[]): Sound {
    const [only = nothing, ...others] = own;
    if (others.length === 0) return only;
    return remembered(joined, own.map(({ id }) => id).join(), () =>
      numbered(own.flatMap(({ tones }) => tones)),
    );
  }

  return {
    partOf: (bar, tones) =>
      remembered(
        remembered(parts, tones, () => new Map<BarModel, Sound>()),
        bar,
        () =>
          remembered(byText, `${bar.index} ${textOf(tones)}`, () =>
            numbered(
              tones.map(({ start, duration, midi, name, tiedOn }) => ({
                ...toneOf(bar, start, duration, midi, name),
                tiedOn,
              })),
            ),
          ),
      ),
    lineOf(bars) {
      const sound = bars.map(barOf);
      return remembered(lines, sound.map(({ id }) => id).join(), () => sound.map(({ tones }) => tones));
    },
  };
}
