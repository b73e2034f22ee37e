import { LETTERS, pitchClassOf } from '../../base';
import { classAbove, hasMajorThird } from '../harmony';
import { knowsRootsOnly, type LineModel } from '../model';
import { isHome, type Tone } from '../tones';
import { type Rule, TEACHERS_LIST } from './types';

/** The natural seventh over the major chord on the fifth degree of a minor key. */
function isFlatLeadingTone({ stretch, member, midi }: Tone): boolean {
  if (!stretch?.chord || member || stretch.key.mode !== 'minor') return false;
  const tonic = pitchClassOf(stretch.key.tonic);
  const majorFive = hasMajorThird(stretch) && classAbove(stretch.rootClass, tonic) === 7;
  return majorFive && classAbove(midi, tonic) === 10;
}

/** The sixth and the raised seventh of a minor key side by side: an augmented second. */
function isAugmentedSecond(one: Tone, other: Tone): boolean {
  const key = one.stretch?.key;
  if (key?.mode !== 'minor') return false;
  const tonic = pitchClassOf(key.tonic);
  const classes = [classAbove(one.midi, tonic), classAbove(other.midi, tonic)];
  const letters = Math.abs(LETTERS.indexOf(one.name.letter) - LETTERS.indexOf(other.name.letter));
  return classes.includes(8) && classes.includes(11) && (letters === 1 || letters === 6);
}

/** A level of roots cannot help how the chords' roots lie. */
const isHeard = (model: LineModel, one: Tone, other: Tone): boolean =>
  isAugmentedSecond(one, other) && !(knowsRootsOnly(model) && isHome(one) && isHome(other));

export const MINOR_SEVENTH: Rule = {
  number: 3,
  rule: 'The dominant of a minor key takes the raised seventh; the flat sixth and the raised seventh are never adjacent.',
  source: TEACHERS_LIST,
  heard: 'the leading tone of the minor key is missing or meets the sixth in an augmented second',
  mend: 'raise the seventh and go round the sixth',
  caution: { own: 'beside its neighbours it makes an augmented second', entering: null },
  alone: ({ model, tones }) =>
    tones.some((tone, index) => {
      const before = tones[index - 1];
      return isFlatLeadingTone(tone) || (before !== undefined && isHeard(model, before, tone));
    }),
  inParts: true,
  meeting: ({ model, exit, entry }) => isHeard(model, exit.last, entry.first),
  tied: null,
  whole: null,
};
