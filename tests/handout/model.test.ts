import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  HANDOUT_BLOCKS,
  type HandoutBlock,
  type HandoutSettings,
  newBlankPiece,
  type Piece,
  sampleLesson,
} from '../../src/core/lesson';
import {
  applyPreset,
  blockChoices,
  fullSettings,
  HANDOUT_PRESETS,
  moveBlock,
  piecePartChoices,
  presetOf,
  showBlock,
} from '../../src/handout';
import { partBlocks } from '../../src/handout/model/blocks';

const PLAIN: HandoutSettings = { paper: 'A4', degrees: true, fingers: true };
const shown = (settings: HandoutSettings) => fullSettings(settings).blocks.join(', ');

describe('the parts of the sheet', () => {
  test('a lesson that says nothing prints the line, the notes and the cautions', () => {
    expect(shown(PLAIN)).toBe('facts, music, explained, notes, cautions');
  });

  test('a part that is switched on stands where it usually stands', () => {
    expect(shown(showBlock(PLAIN, 'practice', true))).toBe(
      'facts, music, explained, practice, notes, cautions',
    );
    expect(shown(showBlock(PLAIN, 'chart', true))).toBe('facts, chart, music, explained, notes, cautions');
    expect(shown(showBlock(PLAIN, 'cautions', false))).toBe('facts, music, explained, notes');
  });

  test('every part is listed once, the printed ones first', () => {
    const choices = blockChoices(showBlock(PLAIN, 'notes', false));
    expect(choices.map(({ block }) => block).sort()).toEqual([...HANDOUT_BLOCKS].sort());
    expect(choices.map(({ shown }) => shown)).toEqual(HANDOUT_BLOCKS.map((_, index) => index < 4));
  });

  test.each<[HandoutBlock, 'up' | 'down', string]>([
    ['notes', 'up', 'notes, facts, music, explained, cautions'],
    ['notes', 'down', 'facts, music, explained, cautions, notes'],
    ['music', 'up', 'music, facts, explained, notes, cautions'],
    ['music', 'down', 'facts, explained, music, notes, cautions'],
    ['facts', 'up', 'facts, music, explained, notes, cautions'],
    ['shapes', 'up', 'facts, music, explained, notes, cautions'],
  ])('%s moved %s: %s', (block, direction, order) => {
    expect(shown(moveBlock(PLAIN, block, direction))).toBe(order);
  });

  test('moving keeps every part and never parts what belongs to a piece', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...HANDOUT_BLOCKS]),
        fc.array(
          fc.tuple(fc.constantFrom(...HANDOUT_BLOCKS), fc.constantFrom('up' as const, 'down' as const)),
        ),
        (blocks, moves) => {
          const moved = moves.reduce<HandoutSettings>(
            (settings, [block, direction]) => moveBlock(settings, block, direction),
            { ...PLAIN, blocks },
          );
          const { before, piece, after } = partBlocks(moved.blocks ?? []);
          expect([...(moved.blocks ?? [])].sort()).toEqual([...blocks].sort());
          if (moves.length > 0) expect([...before, ...piece, ...after]).toEqual(moved.blocks);
        },
      ),
      { seed: 3 },
    );
  });
});

describe('the parts of one piece', () => {
  const [line] = sampleLesson(0, 'test').pieces;
  if (line?.kind !== 'line') throw new Error('the sample begins with a line');
  const shownOf = (piece: Piece, blocks: readonly HandoutBlock[]) =>
    piecePartChoices({ ...PLAIN, blocks }, piece).map(({ block, shown }) => `${block} ${shown}`);

  test('are the printed parts of every piece, in their order, less what it goes without', () => {
    const piece = { ...line, leftOut: ['chart'] as const };
    expect(shownOf(piece, ['notes', 'music', 'chart', 'practice'])).toEqual(['music true', 'chart false']);
  });

  test('are the bars alone for blank bars', () => {
    expect(shownOf(newBlankPiece('blank', 'Blank'), ['facts', 'music'])).toEqual(['music true']);
  });
});

describe('presets', () => {
  test('each is recognised after it was applied, and leaves the paper and the teacher alone', () => {
    const mine: HandoutSettings = { ...PLAIN, paper: 'Letter', header: 'Evening class' };
    for (const preset of HANDOUT_PRESETS) {
      const applied = applyPreset(mine, preset);
      expect(presetOf(applied)).toBe(preset);
      expect(applied).toMatchObject({ paper: 'Letter', header: 'Evening class' });
      expect(presetOf({ ...applied, degrees: !applied.degrees })).toBeNull();
      expect(presetOf({ ...applied, positions: !applied.positions })).toBeNull();
      expect(presetOf({ ...applied, parts: 'tab' })).toBeNull();
    }
  });

  test('each sets all that is printed with the line, whatever was chosen before', () => {
    const before: HandoutSettings = {
      ...PLAIN,
      parts: 'tab',
      positions: true,
      counting: true,
      print: 'large',
    };
    for (const preset of HANDOUT_PRESETS) {
      expect(fullSettings(applyPreset(before, preset))).toMatchObject(preset.settings);
    }
  });

  test('a lesson that makes a preset’s choices by leaving things out has it in force', () => {
    const test = HANDOUT_PRESETS.find(({ id }) => id === 'test');
    if (test === undefined) throw new Error('the preset is gone');
    const { counting: _, positions: __, print: ___, ...said } = test.settings;
    expect(presetOf({ ...PLAIN, ...said })).toBe(test);
  });
});
