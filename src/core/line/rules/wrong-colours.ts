import { TICKS_PER_QUARTER } from '../../base';
import { hasMajorThird, hasMinorThird, type Stretch } from '../harmony';
import { type BarModel, isStrongBeat } from '../model';
import { isStep, type Tone } from '../tones';
import { type Rule, TEACHERS_LIST } from './types';

const EIGHTH = TICKS_PER_QUARTER / 2;
const [FOURTH, SHARP_FOURTH, FIFTH, FLAT_SIXTH, FLAT_SEVENTH, SEVENTH] = [5, 6, 7, 8, 10, 11] as const;

/** How a note rubs against its chord: it tells of another one, or it is a plain step that may pass. */
type Colour = 'another chord' | 'passing' | null;

/** Whether a chord has its third and its fifth diminished. */
const isDiminished = ({ members }: Stretch): boolean =>
  members[3] === true && members[SHARP_FOURTH] === true && members[FIFTH] !== true;

/** What a note outside the chord tells of; a chord without a third takes any. */
function colourOf({ stretch, member, interval }: Tone): Colour {
  if (!stretch?.chord || member) return null;
  const { members } = stretch;
  const [major, minor] = [hasMajorThird(stretch), hasMinorThird(stretch)];
  if (isDiminished(stretch)) return interval === FOURTH || interval === FIFTH ? 'another chord' : null;
  if (!major && !minor) return null;
  if (interval === SHARP_FOURTH) return 'another chord';
  // A sixth chord has no minor seventh, nor has one with a major seventh; a minor seventh rules out the major one.
  if (interval === FLAT_SEVENTH && (members[9] || members[SEVENTH])) return 'another chord';
  if (interval === SEVENTH && members[FLAT_SEVENTH]) return 'another chord';
  if (major && interval === FOURTH) return 'passing';
  return minor && interval === FLAT_SIXTH ? 'passing' : null;
}

/** Whether a note before a silence, or on a strong beat, or longer than a beat, stands out, whatever is around it. */
function standsOut(bar: BarModel, tone: Tone, next: Tone | undefined): boolean {
  if (isStrongBeat(bar, tone.start) || tone.duration > TICKS_PER_QUARTER) return true;
  const quiet = Math.min(next?.start ?? bar.ticks, tone.stretch?.end ?? bar.ticks);
  return quiet - (tone.start + tone.duration) >= EIGHTH;
}

/** Whether a beat of it goes on as it should: a step that passes by step, another chord's note by half a step. */
function passesOn(colour: Colour, tone: Tone, next: Tone): boolean {
  if (tone.duration < TICKS_PER_QUARTER) return true;
  return colour === 'passing' ? isStep(tone.midi, next.midi) : Math.abs(tone.midi - next.midi) === 1;
}

/** A fourth on one or three is for the rule about fourths. */
const isOthers = (bar: BarModel, { stretch, interval, start }: Tone): boolean =>
  stretch !== null && interval === FOURTH && hasMajorThird(stretch) && isStrongBeat(bar, start);

export const WRONG_COLOURS: Rule = {
  number: 16,
  rule: 'A note that tells of another chord (the sharp fourth of a triad, the flat seventh of a sixth chord, the fourth of a diminished one, a fourth over a major third) never stands on a strong beat, lasts or falls silent, and no fourth over a major chord leads back to the beginning.',
  source: TEACHERS_LIST,
  heard: 'a note that belongs to another chord stands out',
  mend: 'take a note of the chord, or let it pass by step',
  caution: { own: 'beside its neighbours it tells of another chord', entering: null },
  alone: ({ bar, tones }) =>
    tones.some((tone, index) => {
      const colour = colourOf(tone);
      if (colour === null || isOthers(bar, tone)) return false;
      const next = tones[index + 1];
      return standsOut(bar, tone, next) || (next !== undefined && !passesOn(colour, tone, next));
    }),
  inParts: true,
  meeting({ from, exit: { last }, to, entry: { first } }) {
    const colour = colourOf(last);
    if (colour === null || isOthers(from, last)) return false;
    if (first.start > 0 || !passesOn(colour, last, first)) return true;
    return to.index <= from.index && last.interval === FOURTH;
  },
  tied: null,
  whole: null,
};
