import { effortOf, type Fingering, type HandSettings, type Instrument } from '../../src/core/fretboard';

/** What a fingered line asks of the hand as it goes round: its last note comes before its first. */
export function roundEffort({ notes }: Fingering, instrument: Instrument, hand: HandSettings) {
  const placed = notes.filter((note) => note !== null);
  return effortOf({ before: placed.at(-1) ?? null, notes: placed, after: null }, instrument, hand);
}
