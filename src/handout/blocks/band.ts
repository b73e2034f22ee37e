import { capitalised } from '../../core/base';
import type { DrumSound, DrumWay } from '../../core/feel';
import type { LineSheet } from '../../core/lesson';
import { type KeyboardSheet, type PartSheet, writtenOrgan, writtenPart } from '../../core/performance';
import type { Steps } from '../../score';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import { keyboardWords, partWords } from './alternatives';
import type { BlockContext } from './context';
import { systemRows } from './systems';

export type BandBlock = 'chops' | 'organ' | 'drums';

const HEADINGS: Readonly<Record<BandBlock, string>> = { chops: 'Chops', organ: 'Organ', drums: 'Drums' };

/** A part of the rhythm section written out for a class that plays together, as the playback plays it. */
export function* bandRows(
  sheet: LineSheet,
  block: BandBlock,
  way: DrumWay | null,
  context: BlockContext,
): Steps<readonly Row[]> {
  const { sizes, spacing, width, measure } = context;
  const words = (text: string) =>
    paragraphRows(text, sizes.body, width, measure).map((row) => ({ ...row, keepWithNext: true }));
  const part = writtenBlock(sheet, block, way);
  const rows =
    part === null
      ? words(`${sheet.feel.name} has no ${block} over these chords.`)
      : [...words(explanation(part)), ...(yield* partRows(part, context))];
  return headedRows(HEADINGS[block], sizes.heading, spacing.blockGap, rows);
}

const hasStrokes = ({ bars }: PartSheet): boolean => bars.some((strokes) => strokes.length > 0);

/** What is written of a block: both hands of the organ together, one of them where the other is silent; null for nothing. */
function writtenBlock(
  sheet: LineSheet,
  block: BandBlock,
  way: DrumWay | null,
): PartSheet | KeyboardSheet | null {
  if (block === 'organ') {
    const organ = writtenOrgan(sheet);
    if (hasStrokes(organ.right) && hasStrokes(organ.left)) return organ;
    return [organ.right, organ.left].find(hasStrokes) ?? null;
  }
  const part = writtenPart(sheet, block, way);
  return hasStrokes(part) ? part : null;
}

function* partRows(part: PartSheet | KeyboardSheet, context: BlockContext): Steps<readonly Row[]> {
  const { layout, index } = yield* context.engrave(part, {
    counting: false,
    degrees: false,
    fingers: false,
    numerals: false,
    positions: false,
  });
  return systemRows(layout, index, context, (system) => ({
    role: 'Figure',
    alternative: part.kind === 'keyboard' ? keyboardWords(part, system) : partWords(part, system),
  }));
}

const HAND_ALONE = { 'organ right': 'The right hand', 'organ left': 'The left hand' } as const;

function explanation(part: PartSheet | KeyboardSheet): string {
  if (part.kind === 'keyboard') return 'Both hands, written as they sound.';
  switch (part.part) {
    case 'chops':
      return 'Short strokes, written as they sound, for keyboard; a guitar reads them an octave higher.';
    case 'organ right':
    case 'organ left':
      return `${HAND_ALONE[part.part]}, written as it sounds.`;
    case 'drums':
      return drumKey(part);
  }
}

/** Where each sound stands, for those that have not read drums before. */
const PLACES: Readonly<Record<DrumSound, string>> = {
  kick: 'kick in the lowest space',
  snare: 'snare in the third space',
  rim: 'stick on the rim as a cross in the third space',
  'closed hat': 'hi-hat as a cross over the staff',
  'open hat': 'with a circle it is open',
  ride: 'ride as a cross on the top line',
  crash: 'crash as a cross on the line over the staff',
  'foot hat': 'hi-hat with the foot as a cross under the staff',
};

function drumKey({ bars }: PartSheet): string {
  const heads = bars.flatMap((strokes) => strokes.flatMap((stroke) => stroke.heads));
  const sounds = new Set(heads.flatMap((head) => (head.kind === 'drum' ? [head.sound] : [])));
  const ghosts = heads.some((head) => head.kind === 'drum' && head.ghost);
  const places = Object.entries(PLACES).flatMap(([sound, place]) =>
    [...sounds].some((each) => each === sound) ? [place] : [],
  );
  return `${capitalised(places.join('; '))}${ghosts ? '; in brackets, hardly heard' : ''}.`;
}
