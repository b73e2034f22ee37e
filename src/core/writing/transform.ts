import type { BarAt, Outcome } from './bar-at';
import { beatOf, lengthOf, notesIn, refused, rewritten } from './context';
import { inverted, leading, octave } from './contour';
import { busier, easier, silentOnOne, sparser } from './density';
import { letGoInto } from './ties';
import type { DidKind, Done, Gesture } from './types';
import { onLine } from './write';

/** What a bar can be asked to become. */
export const BAR_WISHES = [
  'easier',
  'busier',
  'sparser',
  'silent on one',
  'an octave up',
  'an octave down',
  'inverted',
  'leading to the next chord',
] as const;
export type BarWish = (typeof BAR_WISHES)[number];

const WISHES: Readonly<
  Record<BarWish, { readonly kind: DidKind; readonly make: (given: BarAt) => Outcome }>
> = {
  easier: { kind: 'easier', make: easier },
  busier: { kind: 'busier', make: busier },
  sparser: { kind: 'sparser', make: sparser },
  'silent on one': { kind: 'silent on one', make: silentOnOne },
  'an octave up': { kind: 'octave', make: octave(1) },
  'an octave down': { kind: 'octave', make: octave(-1) },
  inverted: { kind: 'inverted', make: inverted },
  'leading to the next chord': { kind: 'leading', make: leading },
};

/** Makes the bar at hand what is asked; it says what it did. */
export const wish = (what: BarWish): Gesture =>
  onLine((desk): Done => {
    const { bar } = desk.pencil;
    const notes = notesIn(desk, bar);
    const length = lengthOf(desk, bar);
    if (notes.length === 0) return refused(desk, 'bar is silent');
    // What is too much is mended first: a wish is about what the bar plays.
    if (notes.some((note) => note.start + note.duration > length))
      return refused(desk, 'too much in the bar');
    const { kind, make } = WISHES[what];
    const outcome = make({ desk, bar, notes, length, beat: beatOf(desk, bar) });
    if ('why' in outcome) return refused(desk, outcome.why);
    const tick = outcome.notes[0]?.start ?? 0;
    return rewritten(
      desk,
      letGoInto(desk, bar, outcome.notes),
      { bar, tick, next: null, from: null },
      {
        kind,
        bars: [bar],
        detail: outcome.detail,
      },
    );
  });
