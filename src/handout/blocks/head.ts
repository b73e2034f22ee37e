import { points } from '../layout/paper';
import { joinRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/** A logo that has been read: a PNG without transparency or a JPEG, and its shape. */
export interface Logo {
  readonly source: string;
  /** Width divided by height. */
  readonly aspect: number;
}

/** As high as title and header together, and never so wide that it crowds the title out. */
const LOGO_HEIGHT = points(15);
const LOGO_WIDTH = points(45);
const LOGO_GAP = points(5);
const LOGO = { kind: 'picture', tag: { role: 'Figure', alternative: 'Logo' } } as const;

/** The head of the first page: the teacher's own line, the title, class or student, and the logo at the right. */
export function headRow(
  title: string,
  logo: Logo | null,
  context: Pick<BlockContext, 'settings' | 'sizes' | 'measure' | 'width'>,
): Row {
  const { settings, sizes, measure } = context;
  const height = logo === null ? 0 : Math.min(LOGO_HEIGHT, LOGO_WIDTH / logo.aspect);
  const width = logo === null ? 0 : height * logo.aspect;
  const room = context.width - (logo === null ? 0 : width + LOGO_GAP);
  const text = joinRows([
    ...paragraphRows(settings.header, sizes.small, room, measure),
    ...paragraphRows(title, sizes.title, room, measure, { role: 'H1' }),
    ...paragraphRows(settings.student, sizes.body, room, measure),
  ]);
  return {
    height: Math.max(text.height, height),
    gap: 0,
    keepWithNext: true,
    marks: [
      ...text.marks,
      ...(logo === null
        ? []
        : [{ ...LOGO, source: logo.source, x: context.width - width, y: 0, width, height }]),
    ],
  };
}
