import { type Lesson, loadChecking } from '../../core/lesson';

type Checking = Awaited<ReturnType<typeof loadChecking>>;

export const NO_CHECKING =
  'What reads lessons could not be loaded, so nothing was changed. Check that the page is still reachable and try again.';

let checking: Checking | null = null;

/** Fetches what reads lessons and checks edits; null where it cannot be had. */
export async function fetchChecking(): Promise<Checking | null> {
  checking ??= await loadChecking().catch(() => null);
  return checking;
}

/**
 * Why a document could not be read again once it is saved, in a sentence; null where it can, and in the first moment,
 * while what checks it is on its way: what is saved is checked again.
 */
export const whyNotKeptSoon = (document: Lesson): string | null => checking?.whyNotKept(document) ?? null;
