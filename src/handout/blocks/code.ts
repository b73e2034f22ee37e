import type { LessonCode } from '../code/lesson-code';
import type { Tag } from '../layout/marks';
import { points } from '../layout/paper';
import { joinRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/**
 * A module of 0.55 mm is three dots and a little more of a printer or scanner of 150 dots an inch, fewer than which a copy is hardly read;
 * small codes are drawn larger, up to a side that nothing is won beyond (common practice, no source). The largest code
 * becomes 97 mm wide.
 */
const LEAST_MODULE = points(0.55);
const MOST_MODULE = points(0.8);
const USUAL_SIDE = points(40);

/** Modules that must stay white around a code (ISO/IEC 18004, quiet zone). */
const QUIET = 4;

const CAPTION =
  'Scan this code, or click on it in the file, to practise: it leads to the practice page with this lesson and its sound, in a browser.';

const PICTURE: Tag = {
  role: 'Figure',
  alternative: 'A code to scan, which leads to the practice page.',
};
const LINK: Tag = { role: 'Link', alternative: 'To the practice page with this lesson and its sound.' };

/** The code that opens the lesson, with what it is for beside it. At its left, the margin is the quiet zone. */
export function codeRows(code: LessonCode | null, context: BlockContext): readonly Row[] {
  if (code === null) return [];
  const module = Math.min(MOST_MODULE, Math.max(LEAST_MODULE, USUAL_SIDE / code.modules));
  const side = module * code.modules;
  const quiet = module * QUIET;
  const x = side + Math.max(quiet, points(5));
  const words = joinRows(
    paragraphRows(CAPTION, context.sizes.body, context.width - x, context.measure, { x }),
  );
  const top = quiet + Math.max(0, side - words.height) / 2;
  const { link, ...drawing } = code;
  return [
    {
      height: side + 2 * quiet,
      gap: context.spacing.blockGap,
      keepWithNext: false,
      marks: [
        { kind: 'code', ...drawing, x: 0, y: quiet, width: side, height: side, tag: PICTURE },
        { kind: 'link', address: link, x: 0, y: quiet, width: context.width, height: side, tag: LINK },
        ...words.marks.map((mark) => ({ ...mark, y: mark.y + top })),
      ],
    },
  ];
}
