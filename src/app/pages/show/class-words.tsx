import type { Light, LinePiece, PlayingSettings } from '../../../core/lesson';
import { SwitchWord } from '../../controls';
import type { Choices } from './choices';

interface ClassWordsProps {
  readonly piece: LinePiece;
  readonly lights: readonly Light[];
  /** Index of what is lit up. */
  readonly lit: number | null;
  readonly setLit: (lit: number | null) => void;
  readonly choices: Choices;
  readonly set: (change: Partial<Choices>) => void;
  readonly onChange: (change: Partial<PlayingSettings>) => void;
}

const KEY_OF: Readonly<Record<Light['kind'], string>> = { listen: 'L', silence: 'S', technique: 'N' };

/** What a teacher does with the music before a class: has something lit up, hides it, has it answered. */
export function ClassWords({ piece, lights, lit, setLit, choices, set, onChange }: ClassWordsProps) {
  const { hidden, answer, keys } = choices;
  const answered = piece.playing.bassPlan?.kind === 'call and response';
  return (
    // biome-ignore lint/a11y/useSemanticElements: switches of a sentence, not a form
    <p className="show__words" role="group" aria-label="In class">
      {lights.map((light, index) => (
        <SwitchWord
          key={light.name}
          label={light.name}
          on={lit === index}
          onChange={(on) => setLit(on ? index : null)}
        >
          {light.name.toLowerCase()}{' '}
          {lights.findIndex(({ kind }) => kind === light.kind) === index && <kbd>{KEY_OF[light.kind]}</kbd>}
        </SwitchWord>
      ))}
      <SwitchWord label="Everything hidden" on={hidden} onChange={(on) => set({ hidden: on })}>
        everything hidden <kbd>H</kbd>
      </SwitchWord>
      <SwitchWord
        label="Call and answer"
        on={answered}
        onChange={(on) =>
          onChange({
            bassPlan: on ? { kind: 'call and response', bars: CALLED } : { kind: 'every round' },
          })
        }
      >
        call and answer
      </SwitchWord>
      {answered && (
        <SwitchWord label="Answer shown" on={answer} onChange={(on) => set({ answer: on })}>
          answer shown <kbd>A</kbd>
        </SwitchWord>
      )}
      <SwitchWord label="Keys" on={keys} onChange={(on) => set({ keys: on })}>
        keys
      </SwitchWord>
      {keys && (
        <span className="show__keys">
          <kbd>Page Down</kbd> and <kbd>Page Up</kbd> (or a presenter’s remote) light up one after the other;
          the arrows <kbd>left</kbd> and <kbd>right</kbd> turn to other bars; <kbd>Space</kbd> plays
        </span>
      )}
    </p>
  );
}

/** Bars of a call to begin with. */
const CALLED = 1;
