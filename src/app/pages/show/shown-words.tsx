import { SwitchWord } from '../../controls';
import type { Choices } from './choices';

interface ShownWordsProps {
  readonly choices: Choices;
  readonly set: (change: Partial<Choices>) => void;
  /** Turns to the bars before what is seen, or to those after it. */
  readonly turnTo: (way: 1 | -1) => void;
}

/** What the large view shows, as words that are switched. */
export function ShownWords({ choices, set, turnTo }: ShownWordsProps) {
  const { staff, tab, degrees, counting, neck, dark, four } = choices;
  return (
    // biome-ignore lint/a11y/useSemanticElements: switches of a sentence, not a form
    <p className="show__words" role="group" aria-label="What is shown">
      <button type="button" className="word" aria-label="Earlier bars" onClick={() => turnTo(-1)}>
        earlier
      </button>
      <button type="button" className="word" aria-label="Later bars" onClick={() => turnTo(1)}>
        later bars
      </button>
      <SwitchWord label="Four bars" on={four} onChange={(on) => set({ four: on })}>
        four bars
      </SwitchWord>
      {/* One of the two is always there. */}
      <SwitchWord
        label="Staff"
        on={staff}
        onChange={(on) => set(on ? { staff: on } : { staff: on, tab: true })}
      >
        staff
      </SwitchWord>
      <SwitchWord label="Tab" on={tab} onChange={(on) => set(on ? { tab: on } : { tab: on, staff: true })}>
        tab <kbd>T</kbd>
      </SwitchWord>
      <SwitchWord label="Degrees" on={degrees} onChange={(on) => set({ degrees: on })}>
        degrees <kbd>D</kbd>
      </SwitchWord>
      <SwitchWord label="Counting" on={counting} onChange={(on) => set({ counting: on })}>
        counting
      </SwitchWord>
      <SwitchWord label="Neck" on={neck} onChange={(on) => set({ neck: on })}>
        neck
      </SwitchWord>
      <SwitchWord label="Dark" on={dark} onChange={(on) => set({ dark: on })}>
        dark
      </SwitchWord>
    </p>
  );
}
