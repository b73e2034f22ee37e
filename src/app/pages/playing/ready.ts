import type { Lesson, LinePiece } from '../../../core/lesson';
import type { PlayPlace, PlayStep, placeOfBar, stepsOf } from '../../../core/performance';
import type { Player } from '../../../sound';
import type { lineSheet } from './line-sheet';

/** What makes a line sound. */
interface Room {
  readonly lineSheet: typeof lineSheet;
  readonly stepsOf: typeof stepsOf;
  readonly placeOfBar: typeof placeOfBar;
}

/** What is to be played: a line from its beginning or a bar on. */
interface Wish {
  readonly lesson: Lesson;
  readonly piece: LinePiece;
  /** Index of the written bar to begin with; the beginning when left out. */
  readonly bar?: number | undefined;
  readonly place?: PlayPlace | undefined;
}

const isSame = (one: Wish, other: Wish): boolean =>
  one.piece === other.piece &&
  one.lesson.instrument === other.lesson.instrument &&
  one.lesson.noteNames === other.lesson.noteNames &&
  one.bar === other.bar &&
  one.place === other.place;

function made({ lineSheet, stepsOf, placeOfBar }: Room, wish: Wish): readonly PlayStep[] {
  const { lesson, piece, bar, place } = wish;
  const sheet = lineSheet(lesson, piece);
  if (sheet === null) return [];
  return bar === undefined
    ? stepsOf(piece, sheet)
    : stepsOf(piece, sheet, placeOfBar(piece, sheet, bar, place));
}

/** Milliseconds without a change after which it is made ready. */
const REST = 1000;

/** Bars of the longest line that is made ready after each change: a longer one would hold up the page. */
const MOST_BARS = 128;

interface Readied {
  /** What is to be played, were it played now; null where there is nothing. */
  readonly wish: () => Wish | null;
  /** Null while something sounds, while it is said that nothing could, and once it is over with playing. */
  readonly player: () => Player | null;
}

/** Keeps ready what *Play* would play, so that it sounds at once. */
export function createReadiness(room: Room, { wish, player }: Readied) {
  let last: { readonly wish: Wish; readonly steps: readonly PlayStep[] } | null = null;
  let resting: ReturnType<typeof setTimeout> | undefined;

  /** For the same wish the very same steps, by which the player knows what it has ready of them. */
  const stepsFor = (wished: Wish): readonly PlayStep[] => {
    if (last === null || !isSame(last.wish, wished)) last = { wish: wished, steps: made(room, wished) };
    return last.steps;
  };

  const make = (): void => {
    const here = player();
    const wished = wish();
    if (here === null || wished === null) return;
    const [step] = stepsFor(wished);
    if (step !== undefined) here.prepare(step);
  };

  const end = (): void => clearTimeout(resting);

  return {
    stepsFor,
    make,
    /** Once nothing has changed for a moment. */
    makeSoon: (): void => {
      end();
      if (player() === null) return;
      resting = setTimeout(() => {
        if ((wish()?.piece.bars.length ?? 0) <= MOST_BARS) make();
      }, REST);
    },
    end,
  };
}

export type Readiness = ReturnType<typeof createReadiness>;
