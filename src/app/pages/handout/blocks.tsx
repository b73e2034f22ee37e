import { useRef } from 'react';
import type { HandoutBlock, HandoutSettings } from '../../../core/lesson';
import { type BlockChoice, blockChoices, fullSettings, moveBlock, showBlock } from '../../../handout';
import { CheckField } from '../../controls';

interface HandoutBlocksProps {
  readonly handout: HandoutSettings;
  readonly onChange: (settings: HandoutSettings) => void;
}

type Direction = 'up' | 'down';
const WORDS: Readonly<Record<Direction, string>> = { up: 'Earlier', down: 'Later' };
const OPPOSITE: Readonly<Record<Direction, Direction>> = { up: 'down', down: 'up' };

const isSameOrder = (one: HandoutSettings, other: HandoutSettings): boolean =>
  fullSettings(one).blocks.join() === fullSettings(other).blocks.join();

/** The parts of the page: which are printed, and in which order. */
export function HandoutBlocks({ handout, onChange }: HandoutBlocksProps) {
  const list = useRef<HTMLOListElement>(null);
  /** A part that moves takes its button along, and the focus stays on it, or goes to its neighbour at an end. */
  const keepFocus = (block: HandoutBlock, direction: Direction) =>
    requestAnimationFrame(() => {
      const button = (each: Direction) =>
        list.current?.querySelector<HTMLElement>(`[data-move="${each} ${block}"]`) ?? null;
      const [same, other] = [button(direction), button(OPPOSITE[direction])];
      (same !== null && getComputedStyle(same).visibility !== 'hidden' ? same : other)?.focus();
    });
  const move = (block: HandoutBlock, direction: Direction) => {
    onChange(moveBlock(handout, block, direction));
    keepFocus(block, direction);
  };
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">Parts, in their order</legend>
      <ol className="parts" ref={list} aria-label="Parts of the handout">
        {blockChoices(handout).map((choice) => (
          <li key={choice.block} className="parts__row">
            <CheckField
              label={choice.name}
              checked={choice.shown}
              onChange={(shown) => onChange(showBlock(handout, choice.block, shown))}
            />
            <MoveButton choice={choice} direction="up" handout={handout} onMove={move} />
            <MoveButton choice={choice} direction="down" handout={handout} onMove={move} />
          </li>
        ))}
      </ol>
    </fieldset>
  );
}

interface MoveButtonProps {
  readonly choice: BlockChoice;
  readonly direction: Direction;
  readonly handout: HandoutSettings;
  readonly onMove: (block: HandoutBlock, direction: Direction) => void;
}

/** There only while the part can go that way; its place stays free, so that nothing moves. */
function MoveButton({ choice, direction, handout, onMove }: MoveButtonProps) {
  const { block, name, shown } = choice;
  const moves = shown && !isSameOrder(handout, moveBlock(handout, block, direction));
  return (
    <button
      type="button"
      className={`button button--quiet parts__move${moves ? '' : ' button--away'}`}
      data-move={`${direction} ${block}`}
      aria-label={`${WORDS[direction]}: ${name}`}
      onClick={() => onMove(block, direction)}
    >
      {WORDS[direction]}
    </button>
  );
}
