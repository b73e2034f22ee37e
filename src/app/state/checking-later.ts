import { type Lesson, loadChecking } from '../../core/lesson';

type Checking = Awaited<ReturnType<typeof loadChecking>>;

export const NO_CHECKING =
  'What reads lessons could not be loaded, so nothing was changed. Check that the page is still reachable and load it again.';

let checking: Checking | null = null;

/** Fetches what reads lessons and checks edits; null where it cannot be had. */
export async function fetchChecking(): Promise<Checking | null> {
  checking ??= await loadChecking().catch(() => null);
  return checking;
}

/**
 * Why a document could not be read again once it is saved, in a sentence; null where it can, and while what checks it
 * is not here. That is fetched then, also where it could not be had before, and `again` is called once it is here.
 */
export function whyNotKeptSoon(document: Lesson, again: () => void): string | null {
  if (checking !== null) return checking.whyNotKept(document);
  void fetchChecking().then((here) => here !== null && again());
  return null;
}
