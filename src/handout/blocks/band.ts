import { capitalised } from '../../core/base';
import type { DrumSound, DrumWay } from '../../core/feel';
import type { LineSheet } from '../../core/lesson';
import { type PartSheet, type WrittenPart, writtenPart } from '../../core/performance';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import { partWords } from './alternatives';
import type { BlockContext } from './context';
import { systemRows } from './systems';

export type BandBlock = 'chops' | 'organ' | 'drums';

interface Block {
  readonly heading: string;
  readonly parts: readonly { readonly part: WrittenPart; readonly hand: string }[];
}

const BLOCKS: Readonly<Record<BandBlock, Block>> = {
  chops: { heading: 'Chops', parts: [{ part: 'chops', hand: '' }] },
  organ: {
    heading: 'Organ',
    parts: [
      { part: 'organ right', hand: 'Right hand' },
      { part: 'organ left', hand: 'Left hand' },
    ],
  },
  drums: { heading: 'Drums', parts: [{ part: 'drums', hand: '' }] },
};

/** A part of the rhythm section written out for a class that plays together, as the playback plays it. */
export function bandRows(
  sheet: LineSheet,
  block: BandBlock,
  way: DrumWay | null,
  context: BlockContext,
): readonly Row[] {
  const { heading, parts } = BLOCKS[block];
  const { sizes, spacing, width, measure } = context;
  const played = parts
    .map(({ part, hand }) => ({ hand, written: writtenPart(sheet, part, way) }))
    .filter(({ written }) => written.bars.some((strokes) => strokes.length > 0));
  const words = (text: string) =>
    paragraphRows(text, sizes.body, width, measure).map((row) => ({ ...row, keepWithNext: true }));
  const rows =
    played.length === 0
      ? words(`${sheet.feel.name} has no ${block} over these chords.`)
      : played.flatMap(({ hand, written }, index) => [
          ...spaced(
            words([hand, explanation(block, written)].filter((part) => part !== '').join(': ')),
            index === 0 ? 0 : spacing.blockGap,
          ),
          ...partRows(written, context),
        ]);
  return headedRows(heading, sizes.heading, spacing.blockGap, rows);
}

/** The rows with white over the first of them. */
const spaced = (rows: readonly Row[], gap: number): readonly Row[] =>
  rows.map((row, index) => (index === 0 ? { ...row, gap } : row));

function partRows(part: PartSheet, context: BlockContext): readonly Row[] {
  const { layout, index } = context.engrave(part, {
    counting: false,
    degrees: false,
    fingers: false,
    numerals: false,
    positions: false,
  });
  return systemRows(layout, index, context, (system) => ({
    role: 'Figure',
    alternative: partWords(part, system),
  }));
}

const explanation = (block: BandBlock, part: PartSheet): string => {
  switch (block) {
    case 'chops':
      return 'Short strokes, written as they sound, for keyboard; a guitar reads them an octave higher.';
    case 'organ':
      return 'written as it sounds.';
    case 'drums':
      return drumKey(part);
  }
};

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
