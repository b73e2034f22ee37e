import { halfStepsAboveC, midiOf, pitchClassOf, type SpelledPitch } from '../base';
import { type Chord, degreeOf, type Key, nameOfDegree } from '../theory';
import { stepsOver } from './pitch';

/** The pitch class distance to the nearer side, −6 to 5. */
const nearWay = (halfSteps: number): number => ((((halfSteps + 6) % 12) + 12) % 12) - 6;

/**
 * A pitch carried from one chord to another by its degree: the third stays the third, major or minor as the scale
 * over the new chord has it; what was bent out of the scale is bent by as much. The line keeps its shape, since every
 * root moves to the nearest one.
 */
export function byDegree(
  pitch: SpelledPitch,
  from: { readonly chord: Chord; readonly key: Key },
  to: { readonly chord: Chord; readonly key: Key },
): SpelledPitch {
  const degree = degreeOf(pitch, from.chord.root);
  const scaleName = stepsOver(from).find((name) => degreeOf(name, from.chord.root).step === degree.step);
  const bent = scaleName === undefined ? 0 : nearWay(pitchClassOf(pitch) - pitchClassOf(scaleName));
  const target =
    stepsOver(to).find((name) => degreeOf(name, to.chord.root).step === degree.step) ??
    nameOfDegree(to.chord.root, degree);
  const alteration = target.alteration + bent;
  const name = alteration >= -2 && alteration <= 2 ? nameOf(target.letter, alteration) : target;
  const above = nearWay(halfStepsAboveC(pitch) - halfStepsAboveC(from.chord.root));
  const rootMidi = midiOf(pitch) - above;
  const newRoot = rootMidi + nearWay(pitchClassOf(to.chord.root) - pitchClassOf(from.chord.root));
  const aim = newRoot + nearWay(pitchClassOf(name) - pitchClassOf(to.chord.root));
  return { ...name, octave: Math.round((aim - halfStepsAboveC(name)) / 12) - 1 };
}

function nameOf(
  letter: SpelledPitch['letter'],
  alteration: number,
): Pick<SpelledPitch, 'letter' | 'alteration'> {
  return { letter, alteration: alteration as SpelledPitch['alteration'] };
}
