import { blockMark, glyphMark, lineMark, type Mark, pathMark, textMark } from '../ink';

const HEAD = 0xe0a4;
const FLAG = 0xe240;
const THREE = 0xe883;
/** The music font's size against the text's, and lengths in its staff spaces. */
const SHARE = 1.35;
const HEAD_WIDTH = 1.18;
const APART = 2.3;
const STEM = 2.9;
const STEM_WIDTH = 0.16;
const BEAM = 0.5;

/**
 * How eighths are swung, as an equation of notes: two eighths are played as a quarter and an eighth of a triplet.
 * @param left where it begins; its baseline is at 0
 * @param size of the text beside it
 */
export function swingMarks(left: number, size: number): readonly Mark[] {
  const music = size * SHARE;
  const space = music / 4;
  const y = -0.5 * space;
  const head = (x: number): Mark => glyphMark('swing', HEAD, x, y, music);
  const stemX = (x: number): number => x + (HEAD_WIDTH - STEM_WIDTH / 2) * space;
  const top = y - STEM * space;
  const stem = (x: number): Mark =>
    lineMark('swing', stemX(x), y - 0.2 * space, stemX(x), top, STEM_WIDTH * space);
  const [one, two] = [left, left + APART * space];
  const equals = textMark('swing', '=', two + (HEAD_WIDTH + 0.9) * space, 0, { size });
  const long = equals.box.right + 0.9 * space;
  const short = long + (APART + 0.5) * space;
  const edge = THREE_GAP * space;
  const bracket = top - edge;
  const [from, to] = [long, stemX(short) + 0.9 * space];
  const figure = glyphMark('swing', THREE, 0, 0, music * 0.8);
  const [width, middle] = [figure.box.right - figure.box.left, (from + to) / 2];
  const three = glyphMark(
    'swing',
    THREE,
    middle - width / 2 - figure.box.left,
    bracket + 0.5 * space,
    music * 0.8,
  );
  const arm = (outer: number, inner: number): Mark =>
    pathMark(
      'swing',
      [
        { command: 'M', points: [outer, bracket + 0.6 * space] },
        { command: 'L', points: [outer, bracket] },
        { command: 'L', points: [inner, bracket] },
      ],
      STEM_WIDTH * space,
    );
  return [
    head(one),
    head(two),
    stem(one),
    stem(two),
    blockMark(
      'swing',
      stemX(one) - (STEM_WIDTH / 2) * space,
      top,
      stemX(two) + (STEM_WIDTH / 2) * space,
      top + BEAM * space,
    ),
    equals,
    head(long),
    head(short),
    stem(long),
    stem(short),
    glyphMark('swing', FLAG, stemX(short), top, music),
    three,
    arm(from, three.box.left - 0.4 * space),
    arm(to, three.box.right + 0.4 * space),
  ];
}

/** White between the stems and the bracket over them, in staff spaces. */
const THREE_GAP = 0.9;
