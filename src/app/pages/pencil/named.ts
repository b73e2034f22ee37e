import { fret, type SpelledPitch, stringNumber } from '../../../core/base';
import { degreeOf, formatDegree, formatNameIn } from '../../../core/theory';
import { type Desk, harmonyAt, placePitch, target } from '../../../core/writing';

type Moment = Parameters<typeof harmonyAt>[1];

/** A pitch as it would be written at a moment: its degree over the chord there, and its name: `♭3 A♭`. */
export function degreeAndName(desk: Desk, moment: Moment, pitch: SpelledPitch): string {
  const { chord } = harmonyAt(desk, moment);
  const degree = chord === null ? '' : `${formatDegree(degreeOf(pitch, chord.root))} `;
  return degree + formatNameIn(desk.lesson.noteNames ?? 'letters', pitch);
}

/** What a place of the neck would be written as; '' where there is none. */
export function placeText(desk: Desk, string: number, at: number): string {
  const moment = target(desk);
  const pitch = placePitch(desk, moment, stringNumber(string), fret(at));
  return pitch === null ? '' : degreeAndName(desk, moment, pitch);
}

/** How far up the neck the tones of the chord are told at a string of the tab: over all an octave's frets. */
const TOLD_FRETS = 11;

/** The tones of the chord on a string, by their frets: `0 is 3 A, 3 is 5 C`; '' over no chord. */
export function tonesOn(desk: Desk, moment: Moment, string: number): string {
  const { chord } = harmonyAt(desk, moment);
  if (chord === null) return '';
  return Array.from({ length: Math.min(TOLD_FRETS, desk.instrument.frets) + 1 }, (_, at) => {
    const pitch = placePitch(desk, moment, stringNumber(string), at);
    const isTone =
      pitch !== null &&
      chord.tones.some(({ name }) => name.letter === pitch.letter && name.alteration === pitch.alteration);
    return isTone ? [`${at} is ${degreeAndName(desk, moment, pitch)}`] : [];
  })
    .flat()
    .join(', ');
}
