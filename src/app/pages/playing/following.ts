import type { StoreApi } from 'zustand/vanilla';
import type { PlayPosition } from '../../../sound';
import type { PlaybackState } from './playback-state';

type Follower = (position: PlayPosition | null) => void;

const isCountedIn = ({ playedBar, performance, tick }: PlayPosition): boolean =>
  playedBar === null && tick < performance.countIn - performance.intro;

/** The bar to show; the last hit belongs to the bar that was shown before it. */
function barShown(position: PlayPosition | null, before: number | null): number | null {
  if (position === null) return null;
  const { ending } = position.performance;
  return ending !== null && position.tick >= ending ? before : position.bar;
}

/**
 * Follows what is heard frame by frame: says in the state which bar, rung and round sound, and tells whoever asks where
 * exactly.
 * @param position - what is heard now; null for nothing
 */
export function createFollowing(store: StoreApi<PlaybackState>, position: () => PlayPosition | null) {
  const followers = new Set<Follower>();
  const tell = (heard: PlayPosition | null): void => {
    for (const follower of followers) follower(heard);
  };

  const show = (heard: PlayPosition | null): void => {
    const shown = store.getState();
    const step = heard?.place.rung ?? 0;
    const round = heard?.place.round ?? 0;
    const bar = barShown(heard, shown.bar);
    const counting = heard === null ? shown.counting : isCountedIn(heard);
    if (bar !== shown.bar || counting !== shown.counting || step !== shown.step || round !== shown.round) {
      store.setState({ bar, counting, step, round });
    }
  };

  let watching = false;
  const frame = (): void => {
    if (store.getState().kind !== 'playing') {
      watching = false;
      return;
    }
    const heard = position();
    show(heard);
    tell(heard);
    requestAnimationFrame(frame);
  };

  return {
    tell,
    /** Begins to follow; ends by itself when nothing is played any more. */
    watch: (): void => {
      if (watching) return;
      watching = true;
      requestAnimationFrame(frame);
    },
    /** Calls `follower` every frame while something sounds, and once with null when it ends. */
    follow: (follower: Follower): (() => void) => {
      followers.add(follower);
      return () => followers.delete(follower);
    },
    end: (): void => followers.clear(),
  };
}
