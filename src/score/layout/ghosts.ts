import { glyphMark, type Mark, MUSIC_SIZE, moveMark } from '../ink';
import type { ContentEvent } from '../notation/types';
import { HALF_HEAD, headY } from './style';

/** Little higher than a head, and close beside it: there may be one at every sixteenth. */
const BRACKETS = { left: 0xe26a, right: 0xe26b, size: MUSIC_SIZE * 0.65, away: HALF_HEAD + 0.6 } as const;

/** Brackets round the heads that are ghosts, the middle of the heads at 0. */
export function ghostBrackets({ heads }: ContentEvent): readonly Mark[] {
  if (heads === undefined) return [];
  const { left, right, size, away } = BRACKETS;
  return heads.flatMap(({ ghost, height }) => {
    if (!ghost) return [];
    const opening = glyphMark('note', left, 0, headY(height), size);
    const closing = glyphMark('note', right, 0, headY(height), size);
    return [moveMark(opening, -away - opening.box.right, 0), moveMark(closing, away - closing.box.left, 0)];
  });
}
