import { halfStepsAboveC, midiOf, pitchClassOf, type SpelledPitch } from '../base';
import { type Chord, degreeOf, type Key, nameOfDegree } from '../theory';
import { stepsOver } from './pitch';

/** The pitch class distance to the nearer side, −6 to 5. */
const nearWay = (halfSteps: number): number => ((((halfSteps + 6) % 12) + 12) % 12) - 6;

/**
 * A pitch carried from one chord to another by its degree: the third stays the third, major or minor as the scale
 * over the new chord has it; what is outside of the scale stays the degree that it is written as. The line keeps its
 * shape, since every root moves to the nearest one.
 */
export function byDegree(
  pitch: SpelledPitch,
  from: { readonly chord: Chord; readonly key: Key },
  to: { readonly chord: Chord; readonly key: Key },
): SpelledPitch {
  const degree = degreeOf(pitch, from.chord.root);
  const own = nameOfDegree(to.chord.root, degree);
  const stepIn = (over: typeof from) =>
    stepsOver(over).find((each) => degreeOf(each, over.chord.root).step === degree.step);
  const step = stepIn(from);
  const inScale = step !== undefined && pitchClassOf(step) === pitchClassOf(pitch);
  const name = inScale ? (stepIn(to) ?? own) : own;
  const above = nearWay(halfStepsAboveC(pitch) - halfStepsAboveC(from.chord.root));
  const rootMidi = midiOf(pitch) - above;
  const newRoot = rootMidi + nearWay(pitchClassOf(to.chord.root) - pitchClassOf(from.chord.root));
  const aim = newRoot + nearWay(pitchClassOf(name) - pitchClassOf(to.chord.root));
  return { ...name, octave: Math.round((aim - halfStepsAboveC(name)) / 12) - 1 };
}
