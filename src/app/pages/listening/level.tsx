import { type LevelCheck, levelWords } from '../../../core/listening';
import type { HeardLevel } from '../../../sound';

/** Decibels below full level; the figures are ours. */
const LOUD_ROOM = -42;
const HEARD = -38;

/** What is said of the level while it is listened to, in words. */
function wordsNow({ now, quiet, clipped }: HeardLevel): string {
  if (clipped) return 'Too strong: turn the input down, or move the microphone away.';
  if (now > Math.max(HEARD, quiet + 12)) return 'The bass is heard.';
  if (quiet > LOUD_ROOM) return 'It is loud here, even while nothing is played: soft notes may not be heard.';
  return 'It is quiet. Play your lowest string: the bar should move.';
}

interface LevelProps {
  readonly level: HeardLevel;
  /** Null where the level is not checked. */
  readonly check: LevelCheck | null;
  readonly onCheck: () => void;
  readonly onSkip: () => void;
}

/** The check of the level that comes first, and how loud it is now. */
export function Level({ level, check, onCheck, onSkip }: LevelProps) {
  const checking = check !== null && check.stage !== 'done';
  return (
    <div className="listening__level">
      <meter aria-label="Level of the input" min={-70} max={0} value={Math.max(-70, level.now)} />
      {!checking && <p>{wordsNow(level)}</p>}
      <p role="status" aria-label="Check of the level">
        {check !== null && levelWords(check)}
      </p>
      <button type="button" className="button" onClick={checking ? onSkip : onCheck}>
        {checking ? 'Go on without the check' : 'Check the level again'}
      </button>
    </div>
  );
}
