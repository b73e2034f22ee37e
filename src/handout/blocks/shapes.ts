import { DEFAULT_HAND, type HandSettings, notesInPosition, romanNumeral } from '../../core/fretboard';
import { chordsOnNeck, type LineSheet } from '../../core/lesson';
import { degreeOf, formatChordIn, formatDegree, formatNameIn } from '../../core/theory';
import { type FretboardRequest, layoutFretboard } from '../../score';
import { type Mark, moved, type Tag } from '../layout/marks';
import { headedRows, joinRows, type Row, textRow } from '../layout/rows';
import { alternativeOf } from './alternatives';
import type { BlockContext } from './context';

/**
 * Few enough to be learned by heart for one lesson; common practice, no source. Pictures side by side, and the width
 * of their drawing, which sets how large its texts are on the page.
 */
const LOOKS = {
  normal: { most: 6, columns: 3, drawing: 205 },
  large: { most: 4, columns: 2, drawing: 200 },
} as const;
const GAP = 14;
/** Narrower, in points, is half a sheet of paper, where one picture less has room beside the others. */
const HALF_PAGE = 420;

/** The tones of a chord under the hand, where the line plays them. */
interface ChordShape {
  readonly title: string;
  readonly request: FretboardRequest;
}

/**
 * The neck with the tones of each chord that the line plays, and its root, in the position in which the hand mostly
 * stands over that chord: the chords in the order in which they first come. A chord of which the line plays only the
 * root has no shape to learn.
 */
export function shapeRows(
  sheet: LineSheet,
  hand: HandSettings | undefined,
  context: BlockContext,
): readonly Row[] {
  const { most, columns: usual, drawing } = LOOKS[context.settings.print];
  const columns = context.width < HALF_PAGE ? usual - 1 : usual;
  const shown = Math.min(most, context.spacing.shapeRows * columns);
  const shapes = shapesOf(sheet, hand ?? DEFAULT_HAND, shown, drawing);
  const width = (context.width - GAP * (columns - 1)) / columns;
  const rows: Row[] = [];
  for (let first = 0; first < shapes.length; first += columns) {
    const cells = shapes.slice(first, first + columns).map((shape) => shapeCell(shape, width, context));
    rows.push({
      height: Math.max(...cells.map(({ height }) => height)),
      gap: first === 0 ? 2 : 8,
      keepWithNext: false,
      marks: cells.flatMap(({ marks }, index) => marks.map((mark) => moved(mark, index * (width + GAP), 0))),
    });
  }
  return headedRows('Shapes to learn', context.sizes.heading, context.spacing.blockGap, rows);
}

function shapeCell({ title, request }: ChordShape, width: number, context: BlockContext): Row {
  const height = (layoutFretboard(request).height * width) / request.width;
  const tag: Tag = { role: 'Figure', alternative: alternativeOf(request) };
  const picture: Mark = { kind: 'neck', request, x: 0, y: 0, width, height, tag };
  return joinRows([
    textRow(title, context.sizes.bodyBold),
    { height, gap: 2, keepWithNext: false, marks: [picture] },
  ]);
}

function shapesOf(sheet: LineSheet, hand: HandSettings, most: number, width: number): readonly ChordShape[] {
  const { noteNames = 'letters' } = sheet;
  return chordsOnNeck(sheet)
    .filter(({ played }) => played.length > 1)
    .slice(0, most)
    .flatMap(({ chord, position, played }) => {
      if (position === null) return [];
      const symbol = formatChordIn(noteNames, chord);
      const request: FretboardRequest = {
        title: `${symbol}, the chord tones of the line`,
        instrument: sheet.instrument,
        noteNames,
        notes: notesInPosition(played, position, sheet.instrument, hand).map(
          ({ string, fret, finger, name }) => ({
            string,
            fret,
            finger,
            degree: formatDegree(degreeOf(name, chord.root)),
            name: formatNameIn(noteNames, name),
          }),
        ),
        show: 'degree',
        // The numeral stands in the title: over the picture it would take a line of the page.
        position: null,
        width,
      };
      return [{ title: `${symbol}, position ${romanNumeral(position)}`, request }];
    });
}
