import { formatChordIn, type Naming, parseChord } from '../../core/theory';

/**
 * Chart text is typed and stored in letters whatever the lesson calls its notes: with German names `B` would
 * otherwise be another chord in every chart that stands already. Where the sheet calls notes otherwise, one
 * sentence beside the field says so; null where there is nothing to say.
 */
const HINTS: Readonly<Record<Naming, string | null>> = {
  letters: null,
  german: 'Chords are typed in letters: B is the sheet’s H, Bb its B.',
  'fixed do': 'Chords are typed in letters: C is the sheet’s Do, D its Re.',
};

export const lettersHint = (naming: Naming): string | null => HINTS[naming];

/** What the sheet calls a chord that is typed in letters; null where that is the same. */
export function drawnInstead(symbol: string, naming: Naming): string | null {
  const chord = parseChord(symbol);
  const drawn = chord.ok ? formatChordIn(naming, chord.value) : symbol;
  return drawn === symbol ? null : drawn;
}
