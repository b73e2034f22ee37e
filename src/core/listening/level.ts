/** How loud it was at a moment. */
export interface Loudness {
  /** Seconds. */
  readonly at: number;
  /** Decibels below full level. */
  readonly level: number;
  /** The input was at its limit. */
  readonly clipped: boolean;
}

export type LevelVerdict = 'good' | 'nothing' | 'too quiet' | 'too loud' | 'noisy';

/** What a check of the level has found so far: first the room alone, then the bass. */
export type LevelCheck =
  /** `restless` where the room has not been silent for long. */
  | { readonly stage: 'room'; readonly restless: boolean }
  /** `verdict` where it is known that the bass does not come through. */
  | { readonly stage: 'bass'; readonly floor: number; readonly verdict: 'nothing' | 'too quiet' | null }
  | {
      readonly stage: 'done';
      /** Loudness of the room and of the bass, in decibels below full level. */
      readonly floor: number;
      readonly bass: number;
      readonly verdict: Exclude<LevelVerdict, 'nothing'>;
    };

/** Seconds and decibels of the check; ours. */
const OURS = {
  /** The input may crackle when it is opened. */
  settles: 0.3,
  room: 1.5,
  /** A room wavers by less than this, a bass that is played by more. */
  wavers: 12,
  restless: 6,
  /** The bass stands out of the room by so much, for so long in all; who is not heard after so long is told so. */
  above: 9,
  played: 0.5,
  patience: 6,
  /** Below this an input sends nothing at all. */
  nothing: -90,
  /** Softer notes are fifteen decibels below the loud ones: the ear must still find their pitch. */
  quietBass: -36,
  /** So much louder than the room the bass has to be, so that its soft notes are. */
  clear: 20,
} as const;

const atShare = (values: readonly number[], share: number): number => {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? OURS.nothing;
};

/** The end of the first stretch in which nothing was played, and how loud it was; null where there was none yet. */
function roomOf(readings: readonly Loudness[]): { readonly end: number; readonly floor: number } | null {
  const first = (readings[0]?.at ?? 0) + OURS.settles;
  for (const [index, { at }] of readings.entries()) {
    if (at - first < OURS.room) continue;
    const levels = readings
      .slice(0, index + 1)
      .filter((each) => each.at >= at - OURS.room && each.at >= first)
      .map(({ level }) => Math.max(OURS.nothing, level));
    if (atShare(levels, 0.95) - atShare(levels, 0.05) <= OURS.wavers)
      return { end: at, floor: atShare(levels, 0.5) };
  }
  return null;
}

function verdictOf(floor: number, bass: number, clipped: boolean): Exclude<LevelVerdict, 'nothing'> {
  if (clipped) return 'too loud';
  if (bass < OURS.quietBass) return 'too quiet';
  return bass - floor < OURS.clear ? 'noisy' : 'good';
}

/**
 * What the level says before anything is listened to.
 * @param readings - since the input was opened, in the order of time
 */
export function checkLevel(readings: readonly Loudness[]): LevelCheck {
  const last = readings.at(-1)?.at ?? 0;
  const room = roomOf(readings);
  if (room === null) return { stage: 'room', restless: last - (readings[0]?.at ?? last) > OURS.restless };
  const { end, floor } = room;
  const after = readings.filter(({ at }) => at > end);
  let seconds = 0;
  const played: Loudness[] = [];
  for (const [index, reading] of after.entries()) {
    if (reading.level < floor + OURS.above && !reading.clipped) continue;
    played.push(reading);
    seconds += reading.at - (after[index - 1]?.at ?? end);
    if (seconds < OURS.played) continue;
    const bass = atShare(
      played.map(({ level }) => level),
      0.9,
    );
    const clipped = played.some((each) => each.clipped);
    return { stage: 'done', floor, bass, verdict: verdictOf(floor, bass, clipped) };
  }
  const silent = after.every(({ level }) => level <= OURS.nothing);
  const waited = last - end > OURS.patience;
  return { stage: 'bass', floor, verdict: !waited ? null : silent ? 'nothing' : 'too quiet' };
}

/** What a room says of itself by its loudness, in decibels below full level. */
const roomWords = (floor: number): string =>
  floor > -42 ? 'It is loud here.' : floor > -56 ? 'There is some noise here.' : 'It is quiet here.';

const VERDICTS: Readonly<Record<LevelVerdict, string>> = {
  good: 'The bass comes through well.',
  nothing:
    'Nothing at all comes in. Look whether the input is muted or not connected, or whether another one is meant.',
  'too quiet': 'The bass is too quiet: turn the input up, or go nearer to the microphone.',
  'too loud': 'The bass is too loud for the input: turn it down, or go away from the microphone.',
  noisy:
    'It is noisy: the bass is hardly louder than the room, so soft notes may not be heard. Go nearer to the microphone, or turn off what hums.',
};

/** The check in words: what it found, and what to do next. */
export function levelWords(check: LevelCheck): string {
  switch (check.stage) {
    case 'room':
      return check.restless
        ? 'I hear something all the time. Be silent for a moment, or go on without the check.'
        : 'First the room: be silent for a moment.';
    case 'bass':
      return check.verdict === null
        ? `${roomWords(check.floor)} Now play your lowest string, as strongly as you will play.`
        : VERDICTS[check.verdict];
    case 'done':
      return `${roomWords(check.floor)} ${VERDICTS[check.verdict]}`;
  }
}
