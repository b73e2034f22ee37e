import { type Alteration, LETTERS, type SpelledPitch } from '../base';
import { alterationInKey, type Key } from '../theory';

/** The accidental before a note; a courtesy one reminds of what the rules already say. */
export interface Accidental {
  readonly alteration: Alteration;
  readonly courtesy: boolean;
}

export interface WrittenPitch {
  readonly pitch: SpelledPitch;
  /** The note goes on from the bar before, so its accidental is not written again. */
  readonly continued: boolean;
}

const slot = (pitch: SpelledPitch): string => `${pitch.letter}${pitch.octave}`;

/**
 * The accidentals of a line, bar by bar. An accidental lasts its bar and its octave; when the next bar, or the same
 * bar in another octave, goes back to the signature, a courtesy accidental says so (musictheoryde-mystified.com,
 * "Accidental: meaning"). A note tied over the bar line needs none, and gives none to the notes after it.
 */
export function accidentalsOf(
  bars: readonly (readonly WrittenPitch[])[],
  key: Key,
): readonly (readonly (Accidental | null)[])[] {
  const signature = new Map(LETTERS.map((letter) => [letter, alterationInKey(key, letter)]));
  let alteredBefore: ReadonlySet<string> = new Set();
  return bars.map((bar) => {
    const memory = new BarMemory(alteredBefore);
    const signs = bar.map(({ pitch, continued }): Accidental | null => {
      const usual = signature.get(pitch.letter) ?? 0;
      return continued ? memory.goOn(pitch, usual) : memory.strike(pitch, usual);
    });
    alteredBefore = memory.altered;
    return signs;
  });
}

/** What a reader of one bar has in mind. */
class BarMemory {
  /** Letters that differ from the signature somewhere in the bar. */
  readonly altered = new Set<string>();
  private readonly inForce = new Map<string, Alteration>();
  /** Letters altered in this bar or the one before that have not been reminded of yet. */
  private readonly toRemind: Set<string>;

  constructor(alteredBefore: ReadonlySet<string>) {
    this.toRemind = new Set(alteredBefore);
  }

  goOn(pitch: SpelledPitch, usual: Alteration): null {
    if (pitch.alteration !== usual) this.altered.add(pitch.letter);
    return null;
  }

  strike(pitch: SpelledPitch, usual: Alteration): Accidental | null {
    const { letter, alteration } = pitch;
    const known = this.inForce.get(slot(pitch));
    this.inForce.set(slot(pitch), alteration);
    if (alteration !== usual) this.altered.add(letter);
    if (alteration !== (known ?? usual)) {
      if (alteration === usual) this.toRemind.delete(letter);
      else this.toRemind.add(letter);
      return { alteration, courtesy: false };
    }
    const reminder = known === undefined && alteration === usual && this.toRemind.delete(letter);
    return reminder ? { alteration, courtesy: true } : null;
  }
}
