import { type LineNote, midiOf, ticks } from '../../base';
import { isBeyondLevel } from '../bar-findings';
import { inReach } from '../demands';
import { pitchAt } from '../harmony';
import { type BarModel, isStrongBeat, type LineModel, stretchAt } from '../model';
import { type Tone, toneOf } from '../tones';

/** The shortest note that is added, by what is split: an eighth, from level 4 on a sixteenth. */
const SIXTEENTH = 240;

/** A place for one more note: where it begins, how long it lasts, and the notes of the bar without it. */
interface Room {
  readonly start: number;
  readonly duration: number;
  readonly rest: readonly LineNote[];
}

const cut = (note: LineNote, duration: number): LineNote => {
  const { tiedOn: _, ...plain } = note;
  return { ...plain, duration: ticks(duration) };
};

/** Where a bar has room for one more note: in the second part of a note, or in a silence before the next one. */
function roomsIn(bar: BarModel, notes: readonly LineNote[]): readonly Room[] {
  const split = notes.flatMap((note, index) =>
    [note.duration / 2, bar.beat, bar.beat / 2, bar.beat / 4].flatMap((duration): readonly Room[] => {
      const first = note.duration - duration;
      if (first <= 0 || duration % SIXTEENTH !== 0 || first % SIXTEENTH !== 0) return [];
      const rest = notes.map((each, place) => (place === index ? cut(note, first) : each));
      return [{ start: note.start + first, duration, rest }];
    }),
  );
  const ends = [...notes.map(({ start }) => Number(start)), bar.ticks];
  const silent = ends.flatMap((end, index): readonly Room[] => {
    const before = notes[index - 1];
    const from = before === undefined ? bar.ticks : before.start + before.duration;
    return [bar.beat, bar.beat / 2, bar.beat / 4].flatMap((duration) =>
      end - duration >= from && duration % SIXTEENTH === 0
        ? [{ start: end - duration, duration, rest: notes }]
        : [],
    );
  });
  return [...split, ...silent];
}

/** Pitches for an added note: the note before once more, its octave, the chord around it, and steps to the next note. */
function pitchesIn(
  model: LineModel,
  bar: BarModel,
  start: number,
  duration: number,
  near: readonly number[],
): readonly Tone[] {
  const stretch = stretchAt(bar, start);
  if (!stretch?.chord) return [];
  const names = stretch.steps.flatMap((step) => (step === null ? [] : [step.name]));
  const chromatic = model.limits.halfSteps ? CHROMATIC : [];
  const from = Math.min(...near) - 12;
  const tones: Tone[] = [];
  for (let midi = from; midi <= Math.max(...near) + 12; midi += 1) {
    const name = [...names, ...chromatic].find((each) => pitchAt(each, midi) !== null);
    if (name === undefined) continue;
    const tone = toneOf(bar, start, duration, midi, name);
    const close = near.some((other) => Math.abs(other - midi) <= 2);
    if ((tone.member || close) && inReach(bar.demands.reach, midi) && !isBeyondLevel(model, tone))
      tones.push(tone);
  }
  return tones;
}

/** Names of notes outside the scale, by which approaches are written. */
const CHROMATIC = [
  { letter: 'F', alteration: 1 },
  { letter: 'C', alteration: 1 },
  { letter: 'G', alteration: 1 },
  { letter: 'B', alteration: -1 },
  { letter: 'E', alteration: -1 },
  { letter: 'C', alteration: 0 },
  { letter: 'D', alteration: 0 },
  { letter: 'E', alteration: 0 },
  { letter: 'F', alteration: 0 },
  { letter: 'G', alteration: 0 },
  { letter: 'A', alteration: 0 },
  { letter: 'B', alteration: 0 },
] as const;

const written = (tone: Tone): LineNote | null => {
  const pitch = pitchAt(tone.name, tone.midi);
  return pitch === null ? null : { start: ticks(tone.start), duration: ticks(tone.duration), pitch };
};

/**
 * A bar with one thing more: a note in the second half of another one or in a silence, or another note of the level on a
 * weak beat. The notes on strong beats stay where they are and what they are.
 * @param next the first note of the bar that follows, where there is one
 */
export function richerBars(
  model: LineModel,
  bar: BarModel,
  notes: readonly LineNote[],
  next: LineNote | null,
): readonly (readonly LineNote[])[] {
  const added = roomsIn(bar, notes).flatMap(({ start, duration, rest }) => {
    const before = rest.findLast((note) => note.start < start);
    const after = rest.find((note) => note.start > start) ?? next;
    const near = [before, after].flatMap((note) => (note ? [midiOf(note.pitch)] : []));
    if (near.length === 0) return [];
    return pitchesIn(model, bar, start, duration, near).flatMap((tone) => {
      const note = written(tone);
      return note === null ? [] : [[...rest, note].sort((one, other) => one.start - other.start)];
    });
  });
  const changed = notes.flatMap((note, index) => {
    if (isStrongBeat(bar, note.start) || note.tiedOn === true) return [];
    const near = [notes[index - 1], notes[index + 1] ?? next].flatMap((each) =>
      each ? [midiOf(each.pitch)] : [],
    );
    return pitchesIn(model, bar, note.start, note.duration, [midiOf(note.pitch), ...near]).flatMap((tone) => {
      const other = written(tone);
      if (other === null || tone.midi === midiOf(note.pitch)) return [];
      return [notes.map((each, place) => (place === index ? other : each))];
    });
  });
  // A note that moves over a beat, so that what was plain is dotted or off the beat.
  const moved = notes.flatMap((note, index) => {
    const before = notes[index - 1];
    if (before === undefined || before.duration < bar.beat || before.start + before.duration !== note.start)
      return [];
    return [bar.beat / 2, bar.beat / 4].flatMap((by) => {
      if (isStrongBeat(bar, note.start) || by % SIXTEENTH !== 0) return [];
      return [by, -by].flatMap((way) => {
        const duration = note.duration - way;
        if (duration < SIXTEENTH) return [];
        return [
          notes.map((each, place) =>
            place === index - 1
              ? cut(each, each.duration + way)
              : place === index
                ? { ...each, start: ticks(each.start + way), duration: ticks(duration) }
                : each,
          ),
        ];
      });
    });
  });
  return [...added, ...changed, ...moved];
}

/** The rhythm of a bar in words of its own: equal for equal ones. */
export const rhythmOf = (notes: readonly LineNote[]): string =>
  notes.map(({ start, duration }) => `${start}+${duration}`).join(' ');
