/** Where a rhythm is being tapped, for whatever taps besides thumb and keys; times in milliseconds of the page's clock. */
export interface Pad {
  readonly down: (at: number) => void;
  readonly up: (at: number) => void;
}

let pad: Pad | null = null;

/** The pad that is on the page now; null where no rhythm is being tapped. */
export const padNow = (): Pad | null => pad;

/** Lays a pad out; what is handed back takes it away. */
export function layPad(out: Pad): () => void {
  pad = out;
  return () => {
    if (pad === out) pad = null;
  };
}
