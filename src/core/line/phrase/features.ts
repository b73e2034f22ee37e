import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import { countedIn } from './counted';
import { formCounted } from './counted-form';
import { motionCounted } from './counted-motion';
import { notesCounted } from './counted-notes';
import { songCounted } from './counted-song';
import { tuneCounted } from './counted-tune';
import { waysCounted } from './counted-ways';
import { habitsOf } from './habits';
import { unusualIn } from './unusual';

/**
 * What can be counted in a line, each with the reason why it should matter. Shares run from 0 to 1; a feature that
 * has nothing to count is 0. They are told from the notes alone, so a line written by hand has them as well.
 */
export const FEATURES = {
  ledByStep: 'share of chord changes whose first note is reached by a step or half step',
  ledByLeap: 'share of changes reached by a leap beyond a third that is no dominant',
  ledByTritone: 'share of changes reached by a tritone or a sixth and more',
  stuck: 'share of changes where the note before is the note after',
  stutter: 'share of changes before which a pitch is struck twice',
  uniformLeads: 'how far the commonest way into a bar exceeds half of all ways in',
  oneSided: 'how far arrivals come from one side only, beyond three in four',
  seamByStep: '1 where the last note lies a step from the first',
  seamPickup: '1 where the last beat holds two notes or one short one that lead round',
  lateRoot: 'share of new chords that do not begin with their bass note',
  seventhsHeard: 'share of seventh chords that sound their seventh',
  colourHeard: 'share of bars that sound a sixth or seventh',
  foretold:
    'share of changes whose first note was the last but one before: the line turns on it and arrives nowhere',
  hangs: 'share of joins where a note outside the scale leads into a rest',
  bare: 'share of bars of three notes or more that never sound the third',
  pasted: 'share of bars of the second half that are the first half’s over again',
  twins: 'share of bars that some earlier bar had note for note',
  alikeNeighbours: 'share of bars that are the bar before over again',
  rhythms: 'different rhythms a bar',
  signature: 'share of bars in the commonest rhythm or its head',
  figureReturns:
    'share of bars under one chord that have the commonest figure, transposed, its last beat apart, as far as it is enough',
  headReturns:
    'share of bars under one chord that begin with the commonest two moves in the commonest rhythm, as far as it is enough',
  wornFigure: 'share of bars under one chord that have the commonest figure, beyond what makes it known',
  rhymingEnds: '1 where the last two bars end on the same note',
  lastBarStuck: '1 where a pitch is struck three times in the last bar, in lines with other notes',
  leadingHome: '1 where the last note lies a half step under the first',
  doubled: 'share of notes that strike the note before once more, which is no pickup',
  octaveHops: 'share of notes reached by an octave in bars that do not pump them',
  unpumped: 'share of bars with less than two octaves, in feels that pump them',
  strayEmpty:
    'share of bars whose beat one is empty, or sounds, unlike in most bars of their place in the phrase',
  stops: 'share of bars of a walk that hold or rest for two beats',
  noBreath: '1 where no bar holds a note or rests for a beat and a half, in lines of four bars and more',
  breaths: 'share of bars that hold or rest for a beat and a half',
  topHeld: 'bars beyond the first that reach the highest note',
  topEarly: 'how early the highest note comes, before 45 % of the line',
  narrow: 'half steps that the range lacks of eleven, in octaves',
  wide: 'half steps that the range exceeds nineteen, in octaves',
  unturned: 'share of notes reached by a sixth or more that is not turned back',
  tritones: 'share of moves that are a tritone between chords or outside a diminished one',
  piledLeaps: 'share of moves that add a second leap of a fourth or more the same way',
  jolts: 'share of moves of more than an octave, or a seventh',
  longChromatic: 'share of notes outside the scale that last longer than an eighth',
  shortChromatic: 'share of notes outside the scale that last an eighth at most',
  seesaw: 'share of notes that go there and back between two pitches twice',
  scaleRuns: 'share of bars that only run down or up the scale',
  backToRoot: 'share of bars whose third beat is the first once more',
  onePitch: 'share of bars of two notes or more on one pitch',
  grinding: 'share of notes outside the chord that last a beat or more and are not entered and left by step',
  strongOutside: 'share of bars with a note outside the chord on a strong beat after the first',
  marked: 'share of notes that are the third equal one in a row',
  high: 'mean height above an octave over the lowest note of the range, in octaves',
  fuller: 'how much of the silence that the feel asks for is missing',
  unanswered: 'share of pairs of bars whose second is the first over again, wherever it lies: no answer',
  drill: 'share of bars that go to and fro as root, fifth, third, fifth do, beyond one in four',
  flatCadence: 'notes of the last bar that strike the one before again, where a cadence would move',
  homeEmpty: 'share of bars that come home to the tonic whose beat one is empty',
  unrooted: 'share of new chords that never sound their bass note',
  thirdUntold: 'share of chords that turn the third of the one before and do not sound it',
  endUntold: '1 where the last chord does not sound its third before the line begins again',
  silentFours: 'share of bars whose beat four is silent, beyond one in eight, in feels that pump octaves',
  lurches: 'share of moves inside the bars of a walk that are a sixth',
  seamLost: '1 where the last note leads home neither by step nor as the dominant',
  farJoins: 'share of joins of bars that leap a seventh or more, pumped octaves apart',
  chromaticEnds: 'share of bars of a riff that end on a note outside the scale, beyond one in four',
  lowThirds: 'share of notes that are a third below C2, held for a beat or struck again',
  wornCell: '1 where bars 3 and 4 are bars 1 and 2 over again',
  arpeggios: 'share of bars that leap from note to note, in lines whose level has steps',
  zigzags: 'share of bars that turn at every note',
  march:
    'share of bars that have the rhythm of the bar before, beyond what a feel bears, in lines that may change it',
  endsAlike:
    '1 where the fourth and the eighth bar of a tune end in one rhythm on the same degrees, less where they have one rhythm',
  saidTwice: '1 where the last two bars end on the same notes in the same rhythm',
  splitTwins: 'share of bars of several chords that are the one before over again',
  halfStepJoins: 'share of changes whose first note is reached by a half step, up to a half',
  crowded: 'share of bars without a rest or a long note beyond three quarters of them, in riffs',
  onward: 'share of moves that go on the same way as the one before',
  stepwise: 'share of moves that are a step or half step',
  leaps: 'share of moves of a fifth and more, octaves apart',
  struckAgain: 'share of notes that strike the note before once more',
  pitches: 'different pitches, of twelve',
  airy: 'share of the time that is silent, as far as it is no hole',
  unusual: 'how far its habits lie from those of lines in its feel that readers marked well, in spreads',
} as const;

export type Feature = keyof typeof FEATURES;
export type FeatureVector = Readonly<Record<Feature, number>>;

/** Counts all features of a line. */
export function featuresOf(model: LineModel, heard: HeardLine): FeatureVector {
  const counted = countedIn(model, heard);
  // Many lines are counted: features are added to one record, which is quicker than a new one of all six.
  const features = Object.assign(
    waysCounted(counted),
    formCounted(counted),
    notesCounted(counted),
    tuneCounted(counted),
    songCounted(counted),
    motionCounted(counted),
  );
  const { feel, level } = model.request;
  return Object.assign(features, { unusual: unusualIn(feel.id, level, habitsOf(counted, features)) });
}
