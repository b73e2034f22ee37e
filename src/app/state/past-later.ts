import type { PastKeeper, PastKeeperParts } from './past-keeper';

/**
 * The keeper of what was before, which the first look does without: it is fetched at once and begins when it is here.
 * Where it cannot be fetched, the lesson itself is kept all the same.
 */
export function startPastLater(parts: PastKeeperParts): PastKeeper {
  let keeper: PastKeeper | null = null;
  let hasOpened = false;
  let stopped = false;
  import('./past-keeper').then(
    ({ startPastKeeper }) => {
      if (stopped) return;
      keeper = startPastKeeper(parts);
      if (hasOpened) keeper.opened();
    },
    () => {},
  );
  return {
    opened: () => {
      hasOpened = true;
      keeper?.opened();
    },
    flush: async () => keeper?.flush(),
    stop: () => {
      stopped = true;
      keeper?.stop();
    },
  };
}
