import { barName, barRange, capitalised, counted, lengthWords, type SpelledPitch } from '../base';
import type { Lesson } from '../lesson';
import { formatNameIn, formatPitchIn, type Naming } from '../theory';
import { countedAt, type Desk, deskOf, lengthOf } from './context';
import type { Mend } from './mend';
import { atHand, toldAtHand } from './places';
import {
  BEGINNING,
  type Did,
  type DidKind,
  type Done,
  type Moment,
  type Pencil,
  type Refusal,
} from './types';

const REFUSALS: Readonly<Record<Refusal, string>> = {
  'no line': 'There are no bars to write in yet: write the chart first.',
  'end of the line': 'This is the end of the line.',
  'no note at hand': 'There is no note here: write one first, or go to one.',
  'off the instrument': 'The instrument has no such note.',
  'above the neck': 'That is higher than the neck goes: play it lower, or set the keyboard an octave down.',
  'below the neck': 'That is lower than the neck goes: play it higher, or set the keyboard an octave up.',
  'no other string': 'This pitch lies on one string only.',
  'no such string': 'There is no further string.',
  'no longer value': 'A note cannot be longer than a whole note: tie it to go on.',
  'no shorter value': 'A note cannot be shorter than a sixteenth.',
  'cannot be dotted': 'This length takes no dot.',
  'cannot be a triplet': 'This length makes no triplet.',
  'nothing to tie to': 'The next note has another pitch, so there is nothing to tie to.',
  'no room before': 'The note before takes that place: make it shorter first.',
  'no room behind': 'There is no room behind this note: make the next one shorter first.',
  'not to be split': 'This note is too short to be struck twice.',
  'nothing to join': 'There is no further note in this bar to join.',
  'no bar before': 'There is no bar before this one.',
  'bar before is silent': 'The bars before are silent.',
  'nothing copied': 'Nothing has been copied yet.',
  'nothing selected': 'There is only silence here.',
  'bar is silent': 'The bar is silent: there is nothing to change in it.',
  'no chord': 'There is no chord to lead to.',
  'easy already':
    'The bar has only roots on the beats, or the bass notes of slash chords: it does not get easier.',
  'easy without chords': 'The notes are on the beats already; to become easier, each of them needs a chord.',
  'busy already': 'The bar has no note long enough to be struck twice.',
  'sparse already': 'The bar has one note: without it, it is silent.',
  'silent on one already': 'Beat one is silent already.',
  'one beat only': 'The bar has one beat only: without it, it is silent.',
  'same rhythm already': 'The bar has this rhythm already.',
  'turns on itself': 'The bar stays on one note, so it is the same upside down.',
  'too much in the bar': 'The bar holds too much: mend that first.',
  'idea is used up': 'The idea has no further note in this bar.',
  'nothing to mend': 'Every bar is whole.',
  'too many notes': 'A bar cannot hold more notes than it has now.',
  'feel has no rhythm': 'The feel has no other rhythm for a bar of this metre and level.',
  'nothing tapped': 'Nothing was tapped, so the bar is as it was.',
  'no louder sign': 'It is as loud as can be written.',
  'no softer sign': 'It is as soft as can be written.',
  'no sign here': 'There is no sign of loudness here.',
  'same word already': 'The bar has this word already.',
};

/** Why nothing happened, in one sentence. */
export const refusalWords = (why: Refusal): string => REFUSALS[why];

/** Steps for *Undo*: a verb and its object; the bar is added. */
const STEPS: Readonly<Record<DidKind, string>> = {
  write: 'write a note',
  silence: 'write silence',
  pitch: 'change the pitch',
  octave: 'change the octave',
  string: 'change the string',
  length: 'change the length',
  tie: 'tie a note',
  move: 'move a note',
  split: 'split a note',
  join: 'join notes',
  'take out': 'take out a note',
  empty: 'make silence',
  copy: 'copy',
  cut: 'cut',
  paste: 'paste',
  repeat: 'repeat',
  rhythm: 'take another rhythm',
  fill: 'fill up with a note',
  mend: 'mend a bar',
  easier: 'make it easier',
  busier: 'make it busier',
  sparser: 'make it sparser',
  'silent on one': 'leave beat one silent',
  inverted: 'turn it upside down',
  leading: 'lead to the next chord',
  mark: 'mark a note',
  dynamics: 'change the dynamics',
  word: 'change the word',
  go: 'go',
};

type Numbered = Pick<Desk, 'bars'>;

const barsText = (desk: Numbered, bars: readonly number[]): string => {
  const numbers = bars.map((bar) => desk.bars[bar]?.number ?? bar + 1);
  const [first, last] = [numbers[0], numbers.at(-1)];
  return barRange(first ?? 1, last ?? 1);
};

/** How the bar of an index is called. */
const nameOf = (desk: Numbered, bar: number): string => barName(desk.bars[bar]?.number ?? bar + 1);

/** The name of the step for *Undo*: `write a note in bar 3`. */
export const stepName = (desk: Numbered, did: Did): string =>
  `${STEPS[did.kind]} in ${barsText(desk, did.bars)}`;

const MENDS: Readonly<Record<Mend, string>> = {
  'close up': 'drawn together into its silences',
  cut: 'cut at the bar line',
  'push on': 'pushed on into the next bar',
};

/** The words of a way to mend, for a button. */
export const mendWords = (way: Mend, lost: number): string => {
  if (way === 'close up') return 'Draw together';
  if (way === 'push on') return 'Push on into the next bar';
  return lost === 0 ? 'Shorten at the bar line' : `Leave out ${counted(lost, 'note')}`;
};

const isMend = (text: string): text is Mend => text in MENDS;

/** What a gesture did, where the note at hand does not tell it by itself; '' where it does. */
function deedText(desk: Desk, did: Did): string {
  const bars = barsText(desk, did.bars);
  const Bars = capitalised(bars);
  const { detail = '' } = did;
  switch (did.kind) {
    case 'write':
      return detail;
    case 'silence':
      return 'Silence';
    case 'length':
    case 'split':
    case 'join':
    case 'fill':
    case 'tie':
      return { length: '', split: 'Split', join: 'Joined', fill: 'Filled up', tie: 'Tied' }[did.kind];
    case 'take out':
      return 'Taken out';
    case 'empty':
      return did.replaced === undefined ? 'Silence' : `${counted(did.replaced, 'note')} gone, silence now`;
    case 'copy':
      return `Copied ${counted(Number(detail), 'note')}`;
    case 'cut':
      return `Cut ${counted(did.replaced ?? 0, 'note')}`;
    case 'paste':
      return detail === 'by degree' ? 'Pasted by degree' : 'Pasted as it was';
    case 'repeat':
      return detail === 'by degree' ? `${Bars}: repeated by degree` : `${Bars}: repeated as it was`;
    case 'rhythm':
      return `${Bars} has ${rhythmText(desk, detail)}${did.replaced === undefined ? '' : `, ${counted(did.replaced, 'note')} fewer`}${did.leftOut === undefined ? '' : `, without ${counted(did.leftOut, 'tap')} that fell on another or behind the bar line`}`;
    case 'mend':
      return isMend(detail) ? `${Bars} ${MENDS[detail]}` : Bars;
    case 'easier':
      return `${Bars} is easier: ${detail}`;
    case 'busier':
      return `${Bars} is busier: ${detail}`;
    case 'sparser':
      return `${Bars} is sparser: ${detail}`;
    case 'silent on one':
      return `${Bars} is silent on one: ${detail}`;
    case 'octave':
      return detail === '' ? '' : `${Bars} is an octave ${detail}`;
    case 'inverted':
      return `${Bars} is upside down ${detail}`;
    case 'leading':
      return `${Bars} leads on ${detail}`;
    case 'mark':
      return `Marked: ${detail}`;
    case 'dynamics':
      return detail === 'none' ? 'The signs of loudness are gone' : `From here: ${detail}`;
    case 'word':
      return detail === '' ? `${Bars} has no word above it now` : `Above ${bars}: ${detail}`;
    case 'go':
      return capitalised(detail);
    default:
      return '';
  }
}

const rhythmText = (desk: Numbered, from: string): string => {
  if (from === 'feel') return 'a rhythm of the feel';
  if (from.startsWith(BEGINNING)) return `the beginning of ${rhythmText(desk, from.slice(BEGINNING.length))}`;
  return from === 'tapped' ? 'the rhythm that was tapped' : `the rhythm of ${nameOf(desk, Number(from))}`;
};

/** `beat 2 of bar 3`, `the & of 3 of bar 3`: where a moment lies; what is too much lies behind the bar line. */
function momentText(desk: Desk, { bar, tick }: Moment): string {
  const words = countedAt(desk, bar, tick);
  const beat = /^[0-9]/.test(words) ? `beat ${words}` : words;
  return `${tick < lengthOf(desk, bar) ? beat : 'behind the bar line'} of ${nameOf(desk, bar)}`;
}

/**
 * What is at hand, in full: `F1, R, quarter, beat 1 of bar 3, D string, fret 3`; silence by its place. In the lesson's
 * note names.
 */
export function describeAtHand(lesson: Lesson, pencil: Pencil): string {
  const desk = deskOf(lesson, pencil);
  if (desk === null) return '';
  const naming = lesson.noteNames ?? 'letters';
  const where = momentText(desk, pencil);
  if (pencil.from !== null) return `Selected from ${momentText(desk, pencil.from)} to ${where}`;
  const held = atHand(desk);
  if (held === null) return `Silence, ${where}`;
  const about = toldAtHand(desk);
  const string = about?.fingered == null ? undefined : desk.instrument.openStrings[about.fingered.string - 1];
  return [
    formatPitchIn(naming, held.note.pitch),
    ...(about === undefined || about.degreeText === '' ? [] : [about.degreeText]),
    lengthWords(held.note.duration),
    where,
    ...(string === undefined || about?.fingered == null
      ? []
      : [
          `${stringName(naming, string)} string`,
          about.fingered.fret === 0 ? 'open' : `fret ${about.fingered.fret}`,
        ]),
  ].join(', ');
}

const stringName = (naming: Naming, open: SpelledPitch): string => formatNameIn(naming, open);

/** What just happened and what is at hand now, for the page's live region; what went wrong, where something did. */
export function announce(done: Done): string {
  if (done.did.kind === 'refused') return refusalWords(done.did.why);
  const desk = deskOf(done.lesson, done.pencil);
  if (desk === null) return '';
  const deed = deedText(desk, done.did);
  const tooMuch =
    done.did.tooMuch === undefined
      ? []
      : [`${capitalised(barsText(desk, done.did.tooMuch))} now holds too much`];
  return [...(deed === '' ? [] : [deed]), ...tooMuch, describeAtHand(done.lesson, done.pencil)].join('. ');
}

/**
 * What was done to a bar, and the first of what the lesson check has to say since; how that is mended stands in its list.
 * What is at hand is left out then, and the bar is named once: on a small screen there is room for little.
 * @param messages - sentences of the lesson check, what is wrong before what mends it
 */
export function withFindings(did: string, messages: readonly string[]): string {
  const [first, ...others] = messages;
  if (first === undefined) return did;
  const what = /^.*?[.!?](?= |$)/.exec(first)?.[0] ?? first;
  const [deed = did] = did.split('. ');
  const [bar = ''] = /^(Bar \d+|The pickup)/.exec(deed) ?? [];
  const place = [`${bar}, `, `${bar}: `].find((each) => bar !== '' && what.startsWith(each)) ?? '';
  const more =
    others.length === 0
      ? ''
      : ` ${capitalised(counted(others.length, 'further thing'))} in the lesson check.`;
  return `${deed}. But: ${what.slice(place.length)}${more}`;
}
