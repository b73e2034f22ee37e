import type { Changed, PastKeeper, PastKeeperParts } from './past-keeper';

/**
 * The keeper of what was before, which the first look does without: it is fetched at once and begins when it is here.
 * What is changed before that is told to it then. Where it cannot be fetched, the lesson itself is kept all the same.
 */
export function startPastLater(parts: PastKeeperParts): PastKeeper {
  let keeper: PastKeeper | null = null;
  let hasOpened = false;
  let stopped = false;
  const missed: Changed[] = [];
  const unsubscribe = parts.lessons.subscribe((...changed) => void missed.push(changed));
  import('./past-keeper').then(({ startPastKeeper }) => {
    unsubscribe();
    if (stopped) return;
    keeper = startPastKeeper(parts, missed.splice(0));
    if (hasOpened) keeper.opened();
  }, unsubscribe);
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
