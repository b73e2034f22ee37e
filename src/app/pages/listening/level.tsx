import type { HeardLevel } from '../../../sound';

/** Decibels below full level; the figures are ours. */
const LOUD_ROOM = -42;
const HEARD = -38;

/** What is said of the level, in words. */
function levelWords({ now, quiet, clipped }: HeardLevel): string {
  if (clipped) return 'Too strong: turn the input down, or move the microphone away.';
  if (now > Math.max(HEARD, quiet + 12)) return 'The bass is heard.';
  if (quiet > LOUD_ROOM) return 'It is loud here, even while nothing is played: soft notes may not be heard.';
  return 'It is quiet. Play your lowest string: the bar should move.';
}

/** How loud it is now, and what the room sounds like while nothing is played. */
export function Level({ level }: { readonly level: HeardLevel }) {
  return (
    <div className="listening__level">
      <meter aria-label="Level of the input" min={-70} max={0} value={Math.max(-70, level.now)} />
      <p>{levelWords(level)}</p>
    </div>
  );
}
