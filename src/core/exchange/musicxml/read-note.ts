import {
  type Alteration,
  type Finger,
  fret,
  halfStepsAboveC,
  LETTERS,
  midiNumber,
  type Pins,
  type SpelledPitch,
  stringNumber,
} from '../../base';
import { C_MAJOR, type Interval, spellMidi, transposePitch } from '../../theory';
import type { RawNote } from './raw';
import { marksIn, ringsOn } from './read-signs';
import { childOf, childrenOf, numberOf, textOf, type XmlNode } from './xml-tree';

const ALTERATIONS: readonly Alteration[] = [-2, -1, 0, 1, 2];
const OCTAVES = { least: -1, most: 8 } as const;

/** A name from a `…-step` and a `…-alter` element; a quarter tone goes to the half step next to it. */
export function readStep(
  node: XmlNode | undefined,
  step: string,
  alter: string,
): { readonly letter: SpelledPitch['letter']; readonly alter: number } | null {
  const letter = LETTERS.find((each) => each === textOf(node, step)?.toUpperCase());
  return letter === undefined ? null : { letter, alter: Math.round(numberOf(node, alter) ?? 0) };
}

/** A pitch as it is written; beyond double flats and sharps it takes the name of its sound. */
export function readPitch(node: XmlNode | undefined, prefix: '' | 'tuning-'): SpelledPitch | null {
  const name = readStep(node, `${prefix}step`, `${prefix}alter`);
  const octave = numberOf(node, `${prefix}octave`);
  if (name === null || octave === null || !Number.isInteger(octave)) return null;
  if (octave < OCTAVES.least || octave > OCTAVES.most) return null;
  const alteration = ALTERATIONS.find((each) => each === name.alter);
  if (alteration !== undefined) return { letter: name.letter, alteration, octave };
  const midi = (octave + 1) * 12 + halfStepsAboveC({ letter: name.letter, alteration: 0 }) + name.alter;
  return midi < 0 || midi > 127 ? null : spellMidi(midiNumber(midi), { key: C_MAJOR });
}

/** The pitch as it sounds; null beyond what a lesson can hold. */
function sounding(pitch: SpelledPitch, interval: Interval): SpelledPitch | null {
  const heard = interval.steps === 0 && interval.halfSteps === 0 ? pitch : transposePitch(pitch, interval);
  const midi = (heard.octave + 1) * 12 + halfStepsAboveC(heard);
  const fits = heard.octave >= OCTAVES.least && heard.octave <= OCTAVES.most && midi >= 0 && midi <= 127;
  return fits ? heard : null;
}

const FINGERS: readonly Finger[] = [0, 1, 2, 3, 4];
const MOST_STRINGS = 8;
const MOST_FRETS = 36;

function pinsOf(technical: readonly XmlNode[]): Pins {
  const whole = (name: string, least: number, most: number): number | undefined => {
    const found = technical.map((node) => numberOf(node, name)).find((value) => value !== null);
    return found !== undefined && Number.isInteger(found) && found >= least && found <= most
      ? found
      : undefined;
  };
  const string = whole('string', 1, MOST_STRINGS);
  const place = whole('fret', 0, MOST_FRETS);
  const finger = FINGERS.find((each) => each === whole('fingering', 0, 4));
  return {
    ...(string === undefined ? {} : { string: stringNumber(string) }),
    ...(place === undefined ? {} : { fret: fret(place) }),
    ...(finger === undefined ? {} : { finger }),
  };
}

interface NotePlace {
  readonly start: number;
  readonly duration: number;
  readonly staff: number;
  readonly voice: string;
  readonly interval: Interval;
  /** A slur leads from the note to the next one. */
  readonly slurred: boolean;
}

/** A note with a pitch, as it sounds; null for a rest, an unpitched note, or a pitch that no lesson can hold. */
export function readNote(note: XmlNode, place: NotePlace): RawNote | null {
  const written = readPitch(childOf(note, 'pitch'), '');
  const pitch = written && sounding(written, place.interval);
  if (pitch === null) return null;
  const notations = childrenOf(note, 'notations');
  const tied = [...childrenOf(note, 'tie'), ...notations.flatMap((each) => childrenOf(each, 'tied'))];
  const has = (type: string): boolean => tied.some(({ attributes }) => attributes.type === type);
  const marks = marksIn(note, place.slurred);
  return {
    start: place.start,
    duration: place.duration,
    pitch,
    staff: place.staff,
    voice: place.voice,
    tieStart: has('start'),
    tieStop: has('stop'),
    // Where it is named, it is no tie that goes on elsewhere.
    letRing: ringsOn(note) && marks?.length !== 'let ring',
    marks,
    pins: pinsOf(notations.flatMap((each) => childrenOf(each, 'technical'))),
  };
}
