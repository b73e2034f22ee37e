import type { DynamicLevel } from '../../core/base';
import { glyphMark, type Mark, MUSIC_SIZE, moveMark } from '../ink';
import type { InkBox } from '../types';

/** SMuFL's glyphs for the levels. */
const LEVEL_GLYPHS: Readonly<Record<DynamicLevel, number>> = {
  ppp: 0xe52a,
  pp: 0xe52b,
  p: 0xe520,
  mp: 0xe52c,
  mf: 0xe52d,
  f: 0xe522,
  ff: 0xe52f,
  fff: 0xe530,
};
const LEVEL_SIZE = MUSIC_SIZE * 0.8;

/** A level's letters, their middle at `x`. */
export const levelMark = (level: DynamicLevel, x: number): Mark => {
  const mark = glyphMark('dynamic', LEVEL_GLYPHS[level], 0, 0, LEVEL_SIZE);
  return moveMark(mark, x - (mark.box.left + mark.box.right) / 2, 0);
};

const NOTHING: InkBox = { left: 0, right: 0, top: 0, bottom: 0 };

/** The room that a level takes around its note. */
export const levelBox = (level: DynamicLevel | null): InkBox =>
  level === null ? NOTHING : levelMark(level, 0).box;
