import { type LineNote, ticks } from '../base';
import { pushed, tooMuchIn, untied } from './arrange';
import { type Desk, lengthOf, notesIn, refused, rewritten } from './context';
import type { Gesture } from './types';
import { onLine } from './write';

/**
 * Ways of making a bar whole that holds too much: out of its silences, by cutting at the bar line, or by pushing on
 * what is too much into the next bar.
 */
export type Mend = 'close up' | 'cut' | 'push on';

/** A bar is never too short: what is not written is silence. */
export type Wholeness =
  | { readonly kind: 'whole' }
  | {
      readonly kind: 'too much';
      /** Ticks. */
      readonly by: number;
      /** Each mends it in one step, the gentlest first. */
      readonly mends: readonly Mend[];
      /** Notes that *cut* would take away whole; a note across the bar line is only shortened. */
      readonly lost: number;
    };

/** Whether a bar holds what it can hold, and what mends it if not. */
export function wholenessOf(desk: Desk, bar: number): Wholeness {
  const stored = desk.piece.bars[bar];
  const by = stored === undefined ? 0 : tooMuchIn(stored, lengthOf(desk, bar));
  if (by <= 0) return { kind: 'whole' };
  const closes = closedUp(notesIn(desk, bar), lengthOf(desk, bar)) !== null;
  const last = bar + 1 >= desk.piece.bars.length;
  const lost = notesIn(desk, bar).filter(({ start }) => start >= lengthOf(desk, bar)).length;
  return {
    kind: 'too much',
    by,
    mends: [...(closes ? ['close up' as const] : []), ...(last ? [] : ['push on' as const]), 'cut'],
    lost,
  };
}

/** The notes drawn together into silences from the end on until they fit; null where there is too little silence. */
function closedUp(notes: readonly LineNote[], length: number): readonly LineNote[] | null {
  let limit = length;
  const back = [...notes].reverse().map((note) => {
    const start = Math.min(note.start, limit - note.duration);
    limit = start;
    return start === note.start ? note : { ...untied(note), start };
  });
  return limit < 0 ? null : back.reverse().map((note) => ({ ...note, start: ticks(note.start) }));
}

/** Makes a bar whole in one step (see {@link wholenessOf}). */
export const mend = (bar: number, way: Mend): Gesture =>
  onLine((desk) => {
    const length = lengthOf(desk, bar);
    const notes = notesIn(desk, bar);
    if (wholenessOf(desk, bar).kind === 'whole') return refused(desk, 'nothing to mend');
    const did = { kind: 'mend', bars: [bar], detail: way } as const;
    const settle = { next: null, from: null };
    if (way === 'close up') {
      const closed = closedUp(notes, length);
      return closed === null
        ? refused(desk, 'no room behind')
        : rewritten(desk, new Map([[bar, closed]]), settle, did);
    }
    if (way === 'cut') {
      const kept = notes.flatMap((note): LineNote[] => {
        if (note.start >= length) return [];
        const end = Math.min(note.start + note.duration, length);
        return [
          end === note.start + note.duration ? note : untied({ ...note, duration: ticks(end - note.start) }),
        ];
      });
      const lost = notes.length - kept.length;
      return rewritten(desk, new Map([[bar, kept]]), settle, lost === 0 ? did : { ...did, replaced: lost });
    }
    if (bar + 1 >= desk.piece.bars.length) return refused(desk, 'end of the line');
    const stored = desk.piece.bars[bar];
    const over = (stored?.over ?? []).map((note) => ({ ...note, start: ticks(note.start - length) }));
    const next = pushed([...over, ...notesIn(desk, bar + 1)]);
    // The bar keeps what is in it, with the tie that leads on where a note crosses the bar line.
    const kept = stored?.notes ?? [];
    return rewritten(
      desk,
      new Map([
        [bar, kept],
        [bar + 1, next],
      ]),
      settle,
      { ...did, bars: [bar, bar + 1] },
    );
  });
