import {
  EXPLAINED_HEADING,
  HANDOUT_BLOCKS,
  type HandoutBlock,
  type HandoutSettings,
  type Piece,
} from '../../core/lesson';
import { fullSettings } from './settings';

/** What a part of the handout is called, for the designer and in sentences about the page. */
const BLOCK_NAMES: Readonly<Record<HandoutBlock, string>> = {
  name: 'Name, date and mark',
  facts: 'Tempo, feel and key',
  chart: 'Chord chart',
  shapes: 'Shapes to learn',
  neck: 'The line on the neck',
  rhythm: 'The tricky rhythm',
  clapping: 'The rhythm to clap',
  music: 'The line',
  stages: 'The build-up, where a line has one',
  study: 'Key facts of the line',
  questions: 'Questions, with blanks',
  answers: 'Answers to the questions, on a sheet of their own',
  explained: EXPLAINED_HEADING,
  chops: 'Chops, written out',
  organ: 'Organ, written out',
  drums: 'Drums, written out',
  practice: 'Practice steps',
  diary: 'Practice diary',
  notes: 'Notes',
  cautions: 'Hands and ears',
};

/** These parts belong to a piece and stand with it; the others belong to the whole sheet. */
const PIECE_BLOCKS: ReadonlySet<HandoutBlock> = new Set([
  'facts',
  'chart',
  'shapes',
  'neck',
  'rhythm',
  'clapping',
  'music',
  'stages',
  'study',
  'questions',
  'answers',
  'explained',
  'chops',
  'organ',
  'drums',
]);

/** Parts of a piece that show a rhythm and no pitch. */
const RHYTHMS: ReadonlySet<HandoutBlock> = new Set(['rhythm', 'clapping', 'drums']);

/** Whether a sheet shows rhythms of its pieces and nothing that has a pitch. */
export const isRhythmAlone = (blocks: readonly HandoutBlock[]): boolean =>
  blocks.some((block) => RHYTHMS.has(block)) &&
  blocks.every((block) => !isPieceBlock(block) || block === 'facts' || RHYTHMS.has(block));

const isPieceBlock = (block: HandoutBlock): boolean => PIECE_BLOCKS.has(block);

/** A part as the designer lists it. */
export interface BlockChoice {
  readonly block: HandoutBlock;
  readonly name: string;
  readonly shown: boolean;
}

/** All parts: those that are printed in their order, then the others. */
export function blockChoices(settings: HandoutSettings): readonly BlockChoice[] {
  const shown = fullSettings(settings).blocks;
  const hidden = HANDOUT_BLOCKS.filter((block) => !shown.includes(block));
  return [...shown, ...hidden].map((block) => ({
    block,
    name: BLOCK_NAMES[block],
    shown: shown.includes(block),
  }));
}

/** The printed parts that a piece can have, and whether it has them; blank bars have only themselves. */
export function piecePartChoices(settings: HandoutSettings, piece: Piece): readonly BlockChoice[] {
  return partBlocks(fullSettings(settings).blocks)
    .piece.filter((block) =>
      piece.kind === 'line' ? block !== 'stages' || piece.buildUp !== undefined : block === 'music',
    )
    .map((block) => ({
      block,
      name: piece.kind === 'blank' ? 'The bars' : BLOCK_NAMES[block],
      shown: !(piece.leftOut ?? []).includes(block),
    }));
}

/**
 * The settings with a part switched on or off. A part that comes back stands where it usually stands: before
 * the first of the parts that usually follow it.
 */
export function showBlock(settings: HandoutSettings, block: HandoutBlock, shown: boolean): HandoutSettings {
  const without = fullSettings(settings).blocks.filter((other) => other !== block);
  if (!shown) return { ...settings, blocks: without };
  const usual = HANDOUT_BLOCKS.indexOf(block);
  const place = without.findIndex((other) => HANDOUT_BLOCKS.indexOf(other) > usual);
  const end = place === -1 ? without.length : place;
  return { ...settings, blocks: [...without.slice(0, end), block, ...without.slice(end)] };
}

/**
 * The settings with a printed part moved one place up or down. The parts of a piece stay together: a part moves
 * among them, and from their edge it takes all of them along past a part of the sheet, as a part of the sheet
 * passes all of them.
 */
export function moveBlock(
  settings: HandoutSettings,
  block: HandoutBlock,
  direction: 'up' | 'down',
): HandoutSettings {
  const { before, piece, after } = partBlocks(fullSettings(settings).blocks);
  const moved = swapped(piece, block, direction);
  if (moved !== piece) return { ...settings, blocks: [...before, ...moved, ...after] };
  const group = isPieceBlock(block) ? GROUP : block;
  const units = swapped<HandoutBlock | typeof GROUP>([...before, GROUP, ...after], group, direction);
  return { ...settings, blocks: units.flatMap((unit) => (unit === GROUP ? piece : [unit])) };
}

const GROUP = 'parts of a piece';

/** The list with a thing and its neighbour changed over; the same list when it has none on that side. */
function swapped<Thing>(things: readonly Thing[], thing: Thing, direction: 'up' | 'down'): readonly Thing[] {
  const from = things.indexOf(thing);
  const to = from + (direction === 'up' ? -1 : 1);
  const neighbour = things[to];
  if (from === -1 || neighbour === undefined) return things;
  return things.map((one, index) => (index === from ? neighbour : index === to ? thing : one));
}

/** Parts of the whole sheet above the pieces, parts of every piece, and parts of the whole sheet below. */
export function partBlocks(blocks: readonly HandoutBlock[]) {
  const first = blocks.findIndex(isPieceBlock);
  const start = first === -1 ? blocks.length : first;
  return {
    before: blocks.slice(0, start),
    piece: blocks.filter(isPieceBlock),
    after: blocks.slice(start).filter((block) => !isPieceBlock(block)),
  };
}
