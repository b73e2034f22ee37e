import type { Engravable } from './types';

/** Work in small steps: between two of them the page may answer. */
export type Steps<Made> = Generator<undefined, Made, undefined>;

/** All steps at once. */
export function finished<Made>(steps: Steps<Made>): Made {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** Bars from which on a score is laid out in turns with whatever else the page has to do. */
const LONG = 200;

/** Whether a sheet is so long that it is laid out in turns. */
export function isLong(sheet: Engravable): boolean {
  const { bars } = sheet.kind === 'keyboard' ? sheet.right : sheet;
  return (typeof bars === 'number' ? bars : bars.length) >= LONG;
}

/** Milliseconds of work before whatever else the page has to do gets its turn: two thirds of a frame. */
const TURN_MS = 10;

/**
 * Takes the steps in turns with whatever else the page has to do.
 * @param isWanted - asked before each turn; once it says no, no more steps are taken
 * @returns what was made; null when it is no longer wanted
 */
export async function inTurns<Made>(
  steps: Steps<Made>,
  isWanted: () => boolean = () => true,
): Promise<Made | null> {
  while (isWanted()) {
    const end = performance.now() + TURN_MS;
    while (performance.now() < end) {
      const step = steps.next();
      if (step.done === true) return step.value;
    }
    await new Promise((resolve) => setTimeout(resolve));
  }
  return null;
}
