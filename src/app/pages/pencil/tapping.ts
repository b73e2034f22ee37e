import type { Session } from '../../state';

/** Where a rhythm is being tapped; times in milliseconds of the page's clock. What taps is named: a key, a thumb. */
export interface Pad {
  readonly down: (what: string, at: number) => void;
  readonly up: (what: string, at: number) => void;
}

let laid: { readonly pad: Pad; readonly session: Session } | null = null;

/** The pad that is on the page now; null where no rhythm is being tapped. */
export const padNow = (session: Session): Pad | null => (laid?.session === session ? laid.pad : null);

/** Lays a pad out; what is handed back takes it away. */
export function layPad(session: Session, pad: Pad): () => void {
  laid = { pad, session };
  return () => {
    if (laid?.pad === pad) laid = null;
  };
}

/** A tap as it came, still held where `up` is null. */
export interface Struck {
  readonly what: string;
  readonly down: number;
  readonly up: number | null;
}

/**
 * Writes down what is tapped. Two fingers that take turns overlap: a tap ends the one before, and letting go of that
 * one ends nothing any more.
 */
export function tapper(): Pad & { readonly struck: () => readonly Struck[] } {
  let struck: readonly Struck[] = [];
  const ended = (each: Struck, at: number): Struck => (each.up === null ? { ...each, up: at } : each);
  return {
    struck: () => struck,
    down: (what, at) => {
      struck = [...struck.map((each) => ended(each, at)), { what, down: at, up: null }];
    },
    up: (what, at) => {
      struck = struck.map((each) => (each.what === what ? ended(each, at) : each));
    },
  };
}

/** Whoever taps on when the bar is over taps no commands, for so many milliseconds. */
const TAPS_ON_MS = 500;
let endedAt = 0;
let goesOn = false;

/** A bar that was tapped is over. */
export function endTapping(): void {
  endedAt = performance.now();
  goesOn = true;
}

/** Whether a key is tapped on behind the bar, or is still held from within it; Escape is no tap. */
export function isStillTapping({ key, repeat }: KeyboardEvent): boolean {
  if (!repeat && performance.now() - endedAt > TAPS_ON_MS) goesOn = false;
  return goesOn && key !== 'Escape';
}
