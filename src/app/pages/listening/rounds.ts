import type { PlayedRound } from '../../../core/listening';
import { secondsAt } from '../../../core/performance';
import type { PlayPosition } from '../../../sound';

interface Following {
  readonly name: string;
  round: PlayedRound;
}

/**
 * Notes which rounds are played and when each began, from where playing is told to be frame by frame. A place is told late
 * by chance and never early, so the earliest beginning that is told is the right one.
 */
export function createRounds() {
  const followed: Following[] = [];
  return {
    /** @param now - seconds on the page's own clock */
    follow: ({ performance, tick, place }: PlayPosition, now: number): void => {
      const origin = now - secondsAt(performance, tick);
      const name = `${place.rung} ${place.round}`;
      const last = followed.at(-1);
      if (last?.name === name && last.round.performance === performance)
        last.round = { ...last.round, origin: Math.min(last.round.origin, origin) };
      else followed.push({ name, round: { performance, round: followed.length, origin } });
    },
    played: (): readonly PlayedRound[] => followed.map(({ round }) => round),
    forget: (): void => {
      followed.length = 0;
    },
  };
}
