import { type LineNote, midiOf, ticks } from '../../base';
import { isBeyondLevel } from '../bar-findings';
import { inReach } from '../demands';
import { pitchAt } from '../harmony';
import { type BarModel, type LineModel, stretchAt } from '../model';
import { type Tone, toneOf } from '../tones';
import type { PlacedOnset, SimplerRhythm } from './simpler';

/** Other pitches that are tried for one note, the nearest first. */
const TRIED = 4;

const isFree = (model: LineModel, bar: BarModel, tone: Tone): boolean =>
  inReach(bar.demands.reach, tone.midi) && !isBeyondLevel(model, tone);

/** The pitches that the level has for a note over the chord at its place: its own where it may stay, then the nearest. */
function pitchesFor(model: LineModel, bar: BarModel, start: number, note: LineNote): readonly Tone[] {
  const midi = midiOf(note.pitch);
  const own = toneOf(bar, start, note.duration, midi, note.pitch);
  const stretch = stretchAt(bar, start);
  const stays = isFree(model, bar, own) ? [own] : [];
  if (!stretch?.chord) return stays;
  const names = [
    note.pitch,
    ...(stretch.home === null ? [] : [stretch.home]),
    ...stretch.steps.flatMap((step) => (step?.member ? [step.name] : [])),
  ];
  const seen = new Set<number>([midi]);
  const others: { readonly tone: Tone; readonly far: number }[] = [];
  for (let away = -24; away <= 24; away += 1) {
    const there = midi + away;
    if (seen.has(there)) continue;
    const name = names.find((each) => pitchAt(each, there) !== null);
    if (name === undefined) continue;
    const tone = toneOf(bar, start, note.duration, there, name);
    if (!isFree(model, bar, tone)) continue;
    seen.add(there);
    // The same note in another octave is nearer to the tune than a neighbour of the chord.
    others.push({ tone, far: away % 12 === 0 ? Math.abs(away) / 4 : Math.abs(away) });
  }
  others.sort((one, other) => one.far - other.far);
  return [...stays, ...others.slice(0, TRIED).map(({ tone }) => tone)];
}

function noteAt(onset: PlacedOnset, note: LineNote, tone: Tone): LineNote | null {
  const pitch = pitchAt(tone.name, tone.midi);
  if (pitch === null) return null;
  const { tiedOn, pins, ...plain } = note;
  const isOwn = tone.midi === midiOf(note.pitch);
  const reaches = onset.start + onset.duration === note.start + note.duration;
  return {
    ...plain,
    start: ticks(onset.start),
    duration: ticks(onset.duration),
    pitch,
    ...(isOwn && pins !== undefined ? { pins } : {}),
    ...(isOwn && reaches && tiedOn === true ? { tiedOn } : {}),
  };
}

/**
 * A bar in a simpler rhythm with the pitches of the level: first with the nearest of all, then with another one for each
 * note, one at a time. Empty where the level has no pitch for a note.
 */
export function barsInRhythm(
  model: LineModel,
  bar: BarModel,
  notes: readonly LineNote[],
  { onsets }: SimplerRhythm,
): readonly (readonly LineNote[])[] {
  const choices = onsets.map((onset) => {
    const note = notes[onset.from];
    return note === undefined
      ? []
      : pitchesFor(model, bar, onset.start, note).flatMap((tone) => noteAt(onset, note, tone) ?? []);
  });
  const first = choices.flatMap((each) => each.slice(0, 1));
  if (first.length < onsets.length) return [];
  const others = choices.flatMap((each, place) =>
    each.slice(1).map((note) => first.map((own, index) => (index === place ? note : own))),
  );
  return [first, ...others];
}
