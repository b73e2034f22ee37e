import { beatAt, capitalised, listed, numberWord, unreachable } from '../base';
import type { Claim, Facts } from './claim';
import { type BarModel, barPhrase, chordText, type LineModel, nameText } from './model';
import type { Tone } from './tones';

/** Where in the bar a tick lies, as a teacher counts it. */
function beatPhrase(bar: BarModel, tick: number): string {
  const { index, start, length } = beatAt(bar.metre, tick);
  const beat = numberWord(index + 1);
  if (tick === start) return `beat ${beat}`;
  return (tick - start) * 2 === Math.min(bar.beat, length)
    ? `the “and” of ${beat}`
    : `the end of beat ${beat}`;
}

/** The bar that a claim is about. */
export interface Spoken {
  readonly model: LineModel;
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
  readonly facts: Facts;
}

const nameOf = ({ model }: Spoken, tone: Tone | undefined): string =>
  tone ? nameText(model, tone.name) : '';

/** A note with its beat; of a pickup, the end of a bar, by its name alone: its first beat is not beat one. */
function placed(spoken: Spoken, note: number): string {
  const name = nameOf(spoken, spoken.tones[note]);
  const { bar, tones } = spoken;
  return bar.pickup ? name : `${name} on ${beatPhrase(bar, tones[note]?.start ?? 0)}`;
}

function symbolOf({ model, tones }: Spoken, note: number | undefined): string {
  const chord = tones[note ?? 0]?.stretch?.chord;
  return chord ? chordText(model, chord) : '';
}

const symbolsOf = (spoken: Spoken, notes: readonly number[]): string =>
  listed([...new Set(notes.map((note) => symbolOf(spoken, note)))]);

/** Degrees in order, a repeated one once. */
const degrees = ({ facts }: Spoken, notes: readonly number[]): string =>
  notes
    .map((note) => facts.notes[note]?.degreeText ?? '')
    .filter((text, index, texts) => text !== '' && text !== texts[index - 1])
    .join('–');

function spelled(spoken: Spoken, claim: Extract<Claim, { kind: 'spells' }>): string {
  const text = degrees(spoken, claim.notes);
  const chord = symbolOf(spoken, claim.notes[0]);
  if (claim.direction === 'up') return `${text} climbs through ${chord}`;
  return claim.direction === 'down' ? `${text} comes down through ${chord}` : `${text} outlines ${chord}`;
}

function carried(spoken: Spoken, note: number): string {
  const text = spoken.facts.notes[note]?.degreeText ?? '';
  const what =
    text === 'R' || text === '8'
      ? `the root of ${symbolOf(spoken, note)}`
      : `${text} of ${symbolOf(spoken, note)}`;
  return `${what} carries the bar`;
}

function leadText(spoken: Spoken, note: number, target: Tone): string {
  const distance = target.midi - (spoken.tones[note]?.midi ?? target.midi);
  const way = distance > 0 ? 'up' : 'down';
  if (Math.abs(distance) === 1)
    return `${placed(spoken, note)} leads ${way} a half step to ${nameOf(spoken, target)}`;
  if (Math.abs(distance) === 2) return `${placed(spoken, note)} steps ${way} to ${nameOf(spoken, target)}`;
  return `${placed(spoken, note)} is the fifth of ${nameOf(spoken, target)} and moves ${way} to it`;
}

function walkText(spoken: Spoken, from: number, target: Tone): string {
  const walk = spoken.tones.slice(from);
  const way = target.midi > (walk[0]?.midi ?? 0) ? 'up' : 'down';
  return `${walk.map((tone) => nameOf(spoken, tone)).join('–')} walks ${way} by step to ${nameOf(spoken, target)}`;
}

/** A claim in the trade's words, without a full stop. */
export function wordsFor(spoken: Spoken, claim: Claim): string {
  const { model, bar, tones } = spoken;
  switch (claim.kind) {
    case 'rest':
      return claim.chord ? 'the bass rests for the whole bar' : 'there is no chord here, so the bass rests';
    case 'silent one':
      return claim.answers === null
        ? `beat one is silent and the bass comes in on ${beatPhrase(bar, claim.enters)}`
        : `beat one is silent and the figure answers ${barPhrase(model, claim.answers)} from ${beatPhrase(bar, claim.enters)}`;
    case 'silence':
      return `one short figure leaves ${numberWord(claim.beats)} ${claim.beats === 1 ? 'beat' : 'beats'} of silence`;
    case 'anticipation':
      return `${placed(spoken, claim.note)} anticipates the next chord`;
    case 'octave':
      return `${placed(spoken, claim.note)} is an octave leap`;
    case 'walk':
      return walkText(spoken, claim.from, claim.target);
    case 'passing':
      return `${placed(spoken, claim.note)} passes from ${nameOf(spoken, tones[claim.note - 1])} to ${nameOf(spoken, tones[claim.note + 1])}`;
    case 'neighbour':
      return `${placed(spoken, claim.note)} is a neighbour of ${nameOf(spoken, tones[claim.note - 1])}`;
    case 'step':
      return `${placed(spoken, claim.note)} is a step of the scale`;
    case 'lead':
      return leadText(spoken, claim.note, claim.target);
    case 'spells':
      return spelled(spoken, claim);
    case 'carries':
      return carried(spoken, claim.note);
    case 'roots':
      return 'each chord gets its root';
    case 'change':
      return `chord tones ${degrees(spoken, claim.notes)} mark the change between ${symbolsOf(spoken, claim.notes)}`;
    case 'rhythm':
      return `the rhythm is that of ${barPhrase(model, claim.bar)}`;
    case 'third':
      return `listen for ${nameOf(spoken, tones[claim.note])}, the ${claim.quality} third of ${symbolOf(spoken, claim.note)}`;
    case 'open':
      return 'the bass plays without a chord to lean on';
    default:
      return unreachable(claim);
  }
}

/** Claims as one sentence. */
export const sentenceOf = (spoken: Spoken, claims: readonly Claim[]): string =>
  `${capitalised(claims.map((claim) => wordsFor(spoken, claim)).join('; '))}.`;
