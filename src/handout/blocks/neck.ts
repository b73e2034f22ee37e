import { romanNumeral } from '../../core/fretboard';
import type { LineSheet } from '../../core/lesson';
import { degreeOf, formatDegree, formatNameIn } from '../../core/theory';
import { type FretboardRequest, layoutFretboard, type NeckNote } from '../../score';
import type { Mark } from '../layout/marks';
import { headedRows, type Row, textRow } from '../layout/rows';
import { alternativeOf } from './alternatives';
import type { BlockContext } from './context';

/** Up to the octave every bass has its marks on the side (common practice, no source); higher where the line goes there. */
const LEAST_LAST = 12;
/** The width at which the neck is drawn, as a share of the page's; it sets how large its texts are there. */
const DRAWN = { normal: 1.25, large: 0.95 } as const;

/** Every place where the line is played, on the whole neck, by the names of the notes. */
export function neckRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { noteNames = 'letters', instrument, key } = sheet;
  const places = new Map<string, NeckNote>();
  const positions = new Set<number>();
  for (const { note, fingered } of sheet.bars.flatMap(({ notes }) => notes)) {
    if (fingered === null) continue;
    const { string, fret } = fingered;
    if (fret > 0) positions.add(fingered.position);
    places.set(`${string} ${fret}`, {
      string,
      fret,
      finger: null,
      degree: formatDegree(degreeOf(note.pitch, key.tonic)),
      name: formatNameIn(noteNames, note.pitch),
    });
  }
  if (places.size === 0) return [];
  const notes = [...places.values()];
  const highest = Math.max(LEAST_LAST, ...notes.map(({ fret }) => fret));
  const request: FretboardRequest = {
    title: 'The notes of the line on the neck',
    instrument,
    noteNames,
    notes,
    show: 'name',
    position: null,
    frets: { first: 1, last: Math.min(instrument.frets, highest) },
    width: context.width * DRAWN[context.settings.print],
  };
  const height = (layoutFretboard(request).height * context.width) / request.width;
  const picture: Mark = {
    kind: 'neck',
    request,
    x: 0,
    y: 0,
    width: context.width,
    height,
    tag: { role: 'Figure', alternative: alternativeOf(request) },
  };
  return headedRows('The line on the neck', context.sizes.heading, context.spacing.blockGap, [
    ...positionRows(positions, formatNameIn(noteNames, key.tonic), context),
    { height, gap: 4, keepWithNext: false, marks: [picture] },
  ]);
}

/** Where the hand stands for these notes. */
function positionRows(
  positions: ReadonlySet<number>,
  tonic: string,
  { sizes }: BlockContext,
): readonly Row[] {
  const numerals = [...positions].sort((one, other) => one - other).map((each) => romanNumeral(each));
  if (numerals.length === 0) return [];
  const words = `${numerals.length > 1 ? 'Positions' : 'Position'} ${numerals.join(', ')}. A heavy rim is the key note, ${tonic}.`;
  return [textRow(words, sizes.body, { keepWithNext: true })];
}
