import { type MidiNumber, pitchClassOf, type SpelledName, type SpelledPitch } from '../base';
import { nameOfDegree } from './degrees';
import { keyNames } from './keys';
import { hasMinorThird } from './modes';
import { nameOnly, spellOnStep, stepOfName } from './names';
import { scaleFor } from './scales';
import type { Chord, Degree, Key } from './types';

/** What decides the spelling of a sounding pitch, the chord before the key. */
export interface SpellingContext {
  readonly key: Key;
  readonly chord?: Chord;
  /** Where the line goes next: sharps rise, flats fall. Only notes outside chord and key ask for it. */
  readonly direction?: 'up' | 'down';
}

/** Chromatic notes where no direction is known: as the key's own borrowed notes and leading tones are spelled. */
const CHROMATIC: Readonly<Record<'major' | 'minor', readonly Degree[]>> = {
  major: [
    { step: 2, alteration: -1 },
    { step: 3, alteration: -1 },
    { step: 4, alteration: 1 },
    { step: 6, alteration: -1 },
    { step: 7, alteration: -1 },
  ],
  minor: [
    { step: 2, alteration: -1 },
    { step: 3, alteration: 0 },
    { step: 4, alteration: 1 },
    { step: 6, alteration: 0 },
    { step: 7, alteration: 0 },
  ],
};

/** Spells a sounding pitch by its function: the chord's note, else its scale's, else the key's, else chromatic. */
export function spellMidi(midi: MidiNumber, context: SpellingContext): SpelledPitch {
  const pitchClass = midi % 12;
  return atMidi(nameFor(pitchClass, context), midi);
}

/** The pitch of a name that sounds as `midi`; the name must have its pitch class. */
function atMidi(name: SpelledName, midi: MidiNumber): SpelledPitch {
  const natural = midi - 12 - name.alteration;
  return spellOnStep(Math.floor(natural / 12) * 7 + stepOfName(name), midi - 12);
}

function nameFor(pitchClass: number, { key, chord, direction }: SpellingContext): SpelledName {
  const sounds = (name: SpelledName) => pitchClassOf(name) === pitchClass;
  const inKey = keyNames(key);
  const functional = [
    ...(chord ? chord.tones.map((tone) => tone.name) : []),
    ...(chord ? [chord.bass, ...scaleFor(chord, key).names] : []),
    ...inKey,
  ].find(sounds);
  if (functional) return nameOnly(functional);
  const raised =
    direction === 'up' ? inKey.find((name) => pitchClassOf(name) === (pitchClass + 11) % 12) : null;
  const lowered =
    direction === 'down' ? inKey.find((name) => pitchClassOf(name) === (pitchClass + 1) % 12) : null;
  const led = raised || lowered ? bent(raised ?? lowered ?? key.tonic, raised ? 1 : -1, pitchClass) : null;
  if (led !== null && !isNaturalInDisguise(led)) return led;
  const chromatic = CHROMATIC[hasMinorThird(key.mode) ? 'minor' : 'major']
    .map((degree) => nameOfDegree(key.tonic, degree))
    .find(sounds);
  return chromatic ?? led ?? bent(key.tonic, 0, pitchClass);
}

/**
 * F♭, C♭, E♯ and B♯, which sound like a plain letter: on the way from F down to D in B♭ major players read E♮, not F♭
 * (common practice, no source).
 */
const isNaturalInDisguise = ({ letter, alteration }: SpelledName): boolean =>
  (alteration === -1 && (letter === 'F' || letter === 'C')) ||
  (alteration === 1 && (letter === 'E' || letter === 'B'));

/** A neighbouring name bent to the pitch class on its own letter where a double alteration allows it. */
function bent(name: SpelledName, halfSteps: number, pitchClass: number): SpelledName {
  const written = spellOnStep(stepOfName(name), pitchClassOf(name) + halfSteps);
  return pitchClassOf(written) === pitchClass
    ? nameOnly(written)
    : nameOnly(spellOnStep(stepOfName(name), pitchClass));
}
