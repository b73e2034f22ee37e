import type { Claim, Scene } from '../claim';
import type { Tone } from '../tones';
import { leapsAnOctave } from './octave';
import { COMMON_PRACTICE, type Seen, type TechniqueRow } from './types';

/** Several notes of a chord, or one alone in a bar whose notes show nothing else. */
function recognise({ tones, functions }: Seen): boolean {
  const first = functions.indexOf('chord tone');
  const one = tones[first];
  const several = tones.some(
    (tone, index) =>
      functions[index] === 'chord tone' && (tone.interval !== one?.interval || tone.stretch !== one.stretch),
  );
  if (!one || several) return several;
  const others = functions.some((role) => role !== null && role !== 'chord tone');
  return !others && !leapsAnOctave(tones);
}

function directionOf(tones: readonly Tone[]): 'up' | 'down' | 'both' {
  const distances = tones.slice(1).map((tone, index) => tone.midi - (tones[index]?.midi ?? tone.midi));
  if (distances.every((distance) => distance >= 0) && distances.some((distance) => distance > 0)) return 'up';
  return distances.every((distance) => distance <= 0) && distances.some((distance) => distance < 0)
    ? 'down'
    : 'both';
}

/** The chord tones: what they spell and which way they move. */
function claim({ tones, facts }: Scene): Claim | null {
  const notes = tones.flatMap((_, index) => (facts.notes[index]?.function === 'chord tone' ? [index] : []));
  const [first] = notes;
  const members = notes.flatMap((index) => tones[index] ?? []);
  if (first === undefined) return null;
  const several = new Set(members.map((tone) => tone.stretch)).size > 1;
  const texts = new Set(notes.map((index) => facts.notes[index]?.degreeText));
  if (several)
    return members.every(({ interval }) => interval === 0)
      ? { kind: 'roots', notes }
      : { kind: 'change', notes };
  if (texts.size === 1) return { kind: 'carries', note: first };
  return { kind: 'spells', notes, direction: directionOf(members) };
}

export const CHORD_TONES: TechniqueRow = {
  technique: 'chord tones',
  from: 0,
  source: COMMON_PRACTICE,
  hint: 'notes of the chord',
  belongs: () => true,
  always: true,
  allows: [],
  place: 'anywhere',
  recognise,
  recognisePart: recognise,
  mayShow: ({ classes, members }) => new Set(classes.filter((_, index) => members[index])).size > 1,
  lead: null,
  telling: 6,
  claim,
};
