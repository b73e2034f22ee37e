import type { ScoreOptions } from '../../../score';

/** What is chosen in the large view. */
export interface Choices {
  readonly staff: boolean;
  readonly tab: boolean;
  readonly degrees: boolean;
  readonly counting: boolean;
  readonly neck: boolean;
  readonly dark: boolean;
  readonly four: boolean;
  /** Everything hidden: the class listens. */
  readonly hidden: boolean;
  /** Whether the bars that the student answers are seen. */
  readonly answer: boolean;
  /** Whether letters are keys here. */
  readonly keys: boolean;
  /** Diagonal of the screen, or of the picture on the wall, in inches. */
  readonly inches: number;
}

export type Shown = Pick<ScoreOptions, 'degrees' | 'counting' | 'parts'>;

/** What the engraver draws of it. */
export const shownOf = ({
  staff,
  tab,
  degrees,
  counting,
}: Pick<Choices, 'staff' | 'tab' | 'degrees' | 'counting'>): Shown => ({
  degrees,
  counting,
  parts: staff && tab ? 'both' : staff ? 'staff' : 'tab',
});

/** Written bars that are seen at once. */
export const barsOf = ({ four }: Pick<Choices, 'four'>): 2 | 4 => (four ? 4 : 2);

/** One thing that can be left out to have the rest larger, and its words. */
const LEFT_OUT = {
  neck: { change: { neck: false }, words: 'without the neck' },
  four: { change: { four: false }, words: 'with two bars' },
  staff: { change: { staff: false, tab: true }, words: 'with the tab alone' },
  degrees: { change: { degrees: false }, words: 'without degrees' },
  counting: { change: { counting: false }, words: 'without counting' },
} as const;

type LeftOut = keyof typeof LEFT_OUT;

/** Most wanted first: as little as possible is left out, the neck and four bars before what is read in the bars. */
const ORDER: readonly (readonly LeftOut[])[] = [
  ['neck'],
  ['four'],
  ['staff'],
  ['degrees'],
  ['counting'],
  ['neck', 'four'],
  ['neck', 'staff'],
  ['staff', 'degrees'],
  ['four', 'staff'],
  ['neck', 'four', 'staff'],
  ['neck', 'four', 'staff', 'degrees'],
  ['neck', 'four', 'staff', 'degrees', 'counting'],
];

/** A change that makes what is left larger. */
export interface Larger {
  readonly change: Partial<Choices>;
  /** `with two bars`, one a thing. */
  readonly words: readonly string[];
}

/** What could be left out of what is chosen, as little as possible first. */
export function largerWays(choices: Choices): readonly Larger[] {
  const ways = ORDER.map((way) => way.filter((what) => choices[what]));
  const distinct = new Map(ways.filter((way) => way.length > 0).map((way) => [way.join(), way]));
  return [...distinct.values()]
    .sort((one, other) => one.length - other.length)
    .map((way) => ({
      change: Object.assign({}, ...way.map((what) => LEFT_OUT[what].change)),
      words: way.map((what) => LEFT_OUT[what].words),
    }));
}
