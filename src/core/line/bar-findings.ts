import {
  beatAt,
  type LineNote,
  midiOf,
  pitchClassOf,
  type SpelledName,
  type SpelledPitch,
  sameName,
} from '../base';
import { writtenMetres } from '../chart';
import { classAbove, pitchAt, type StepTone, type Stretch } from './harmony';
import { struck } from './hearing';
import { notesPerSecond, rhythmLevelIn } from './level';
import type { LevelLimits } from './level-limits';
import { type BarModel, barHeading, chordText, type LineModel, nameText } from './model';
import type { Tone } from './tones';

/** What a careful colleague would point out about the music of a line. */
export interface MusicFinding {
  readonly kind: 'chord' | 'spelling' | 'foundation' | 'level' | 'fret' | 'key' | 'tempo' | 'rule';
  /** Index of the written bar; null for the whole line. */
  readonly bar: number | null;
  /** Index of the note in its bar; null where no single note is meant. */
  readonly note: number | null;
  /** Number of the rule that is broken, where the finding is about one. */
  readonly rule?: number;
  /** One sentence: what stands there and why it matters. */
  readonly message: string;
  /** One sentence: what would mend it. */
  readonly repair: string;
  /** The bar's notes with the repair made, and what is done to them; null where only the teacher can choose one. */
  readonly mended: Mended | null;
}

/** A repair that can be made at once. */
export interface Mended {
  /** What is done, as a command: `Write E♭`. */
  readonly deed: string;
  readonly notes: readonly LineNote[];
}

/** `Bar 3, beat 2`, or `Bar 3, after beat 2` between the beats; of a pickup, as under its notes. */
function placeOf(model: LineModel, bar: BarModel, tone: Tone): string {
  const { metre, from } = writtenMetres(model.request.chart)[bar.index] ?? { metre: bar.metre, from: 0 };
  const { index, start } = beatAt(metre, from + tone.start);
  const between = from + tone.start > start ? 'after ' : '';
  return `${barHeading(model, bar.index)}, ${between}beat ${index + 1}`;
}

/** A line under the check: what was written, and how it is heard. */
export interface Checked {
  readonly model: LineModel;
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
  readonly notes: readonly LineNote[];
}

/** The bar's notes with one of them at another pitch. */
const withPitch = (
  deed: string,
  notes: readonly LineNote[],
  index: number,
  pitch: SpelledPitch | null,
): Mended | null =>
  pitch === null
    ? null
    : { deed, notes: notes.map((note, place) => (place === index ? { ...note, pitch } : note)) };

/** The place of a name that lies nearest to a note and on the neck. */
function nearestPitch(model: LineModel, name: SpelledName, midi: number): SpelledPitch | null {
  const places = [-1, 0, 1].map((octave) => midi - classAbove(midi, pitchClassOf(name)) + OCTAVE * octave);
  const [nearest] = places
    .filter((place) => model.neck.onNeck[place] === true)
    .sort((one, other) => Math.abs(one - midi) - Math.abs(other - midi));
  return nearest === undefined ? null : pitchAt(name, nearest);
}

const OCTAVE = 12;

/** Names that fit a chord in its key: its scale, which includes its own tones, and the slash bass. */
const namesOver = (stretch: Stretch) => [
  ...stretch.steps.flatMap((step) => (step ? [step.name] : [])),
  ...(stretch.home ? [stretch.home] : []),
];

/** A note that is spelled unlike the chord's own note of the same sound. */
function spellingFindings({ model, bar, tones, notes }: Checked): MusicFinding[] {
  return tones.flatMap((tone, note): MusicFinding[] => {
    if (!tone.stretch?.chord) return [];
    const names = namesOver(tone.stretch).filter((name) => pitchClassOf(name) === pitchClassOf(tone.name));
    const [right] = names;
    if (!right || names.some((name) => sameName(name, tone.name))) return [];
    const [written, meant] = [nameText(model, tone.name), nameText(model, right)];
    const deed = `Write ${meant}`;
    return [
      {
        kind: 'spelling',
        bar: bar.index,
        note,
        message: `${placeOf(model, bar, tone)}: ${written} is written where ${chordText(model, tone.stretch.chord)} has ${meant}.`,
        repair: `${deed}; it sounds the same.`,
        mended: withPitch(deed, notes, note, pitchAt(right, tone.midi)),
      },
    ];
  });
}

/** The note of the chord next to an interval above its root. */
const nearestMember = (stretch: Stretch, interval: number): StepTone | undefined =>
  stretch.steps
    .flatMap((step) => (step?.member ? [step] : []))
    .sort((one, other) => Math.abs(one.halfSteps - interval) - Math.abs(other.halfSteps - interval))[0];

/** The step of the scale, as the chords around or the key have it, that lies so far above the root; 0 for none. */
function stepNumber({ steps, keySteps }: Stretch, interval: number): number {
  const at = (list: Stretch['steps']) => list.findIndex((step) => step?.halfSteps === interval) + 1;
  return at(steps) || at(keySteps);
}

/** Whether a beat leads on by a half step or comes early, wherever the line goes from there. */
function approaches({ bar, tones }: Checked, after: readonly Tone[], note: number): boolean {
  const tone = tones[note];
  const next = tones[note + 1];
  const goals = next ? [next] : after;
  if (!tone || goals.length === 0 || tone.duration > bar.beat) return false;
  return goals.every(({ midi }) => Math.abs(midi - tone.midi) <= 1);
}

/** A long note that belongs neither to its chord nor to the scale over it, and does not lead on. */
function chordFindings(checked: Checked, after: readonly Tone[]): MusicFinding[] {
  const { model, bar, tones, notes } = checked;
  return tones.flatMap((tone, note): MusicFinding[] => {
    const { stretch } = tone;
    if (!stretch?.chord || tone.member || tone.duration < bar.beat) return [];
    if (model.limits.halfSteps && approaches(checked, after, note)) return [];
    if (stepNumber(stretch, tone.interval) > 0) return [];
    const nearest = nearestMember(stretch, tone.interval)?.name ?? stretch.chord.root;
    const deed = `Play ${nameText(model, nearest)}`;
    return [
      {
        kind: 'chord',
        bar: bar.index,
        note,
        message: `${placeOf(model, bar, tone)}: ${nameText(model, tone.name)} contradicts ${chordText(model, stretch.chord)}.`,
        repair: `${deed}, the nearest note of the chord.`,
        mended: withPitch(deed, notes, note, nearestPitch(model, nearest, tone.midi)),
      },
    ];
  });
}

const isFoundation = (tone: Tone, stretch: Stretch): boolean => {
  const above = classAbove(tone.midi, stretch.rootClass);
  const fifth = above >= 6 && above <= 8 && stretch.members[above] === true;
  return above === 0 || fifth || tone.midi % OCTAVE === stretch.homeClass;
};

/** Chords of two beats or more that never get their root or fifth. */
function foundationFindings({ model, bar, tones, notes }: Checked): MusicFinding[] {
  if (tones.length === 0) return [];
  return bar.stretches.flatMap((stretch): MusicFinding[] => {
    if (!stretch.chord || stretch.end - stretch.start < 2 * bar.beat) return [];
    const carried = tones.some(
      (tone) =>
        tone.start < stretch.end && tone.start + tone.duration > stretch.start && isFoundation(tone, stretch),
    );
    if (carried) return [];
    const home = stretch.home ?? stretch.chord.root;
    const first = tones.findIndex(
      (tone) => tone.stretch === stretch && tone.start < stretch.start + 2 * bar.beat,
    );
    const tone = tones[first];
    const deed = `Play ${nameText(model, home)} within its first two beats`;
    return [
      {
        kind: 'foundation',
        bar: bar.index,
        note: tone ? first : null,
        message: `${barHeading(model, bar.index)}: ${chordText(model, stretch.chord)} gets neither its root nor its fifth.`,
        repair: `${deed}.`,
        mended: tone ? withPitch(deed, notes, first, nearestPitch(model, home, tone.midi)) : null,
      },
    ];
  });
}

/** Rhythms and speeds that the level does not have yet. */
function paceFindings({ model, bar, tones }: Checked): MusicFinding[] {
  const { level, tempo } = model.request;
  const found = (message: string, repair: string): MusicFinding => ({
    kind: 'level',
    bar: bar.index,
    note: null,
    message,
    repair,
    mended: null,
  });
  const place = barHeading(model, bar.index);
  const asked = rhythmLevelIn(tones, bar.metre, model.request.feel.bassRole);
  const speed = notesPerSecond(struck(tones).length, bar.metre, tempo);
  return [
    ...(asked > level
      ? [
          found(
            `${place} has a rhythm of level ${asked}.`,
            `Choose a simpler idea or raise the level from ${level}.`,
          ),
        ]
      : []),
    ...(speed > model.limits.notesPerSecond
      ? [
          found(
            `${place} asks for ${speed.toFixed(1)} notes a second; level ${level} allows ${model.limits.notesPerSecond}.`,
            'Take notes out or slow the tempo down.',
          ),
        ]
      : []),
  ];
}

/** Notes beyond the level's last fret; those that have no place below it are the chart's own doing. */
function fretFindings({ model, bar, tones, notes }: Checked): MusicFinding[] {
  const { onNeck } = model.neck;
  return tones.flatMap((tone, note): MusicFinding[] => {
    if (onNeck[tone.midi] === true) return [];
    const nearest = nearestPitch(model, tone.name, tone.midi);
    const level = model.request.level;
    const deed = nearest
      ? `Play it an octave ${midiOf(nearest) < tone.midi ? 'lower' : 'higher'}`
      : 'Choose another note';
    return [
      {
        kind: 'fret',
        bar: bar.index,
        note,
        message: `${placeOf(model, bar, tone)}: ${nameText(model, tone.name)} lies beyond fret ${model.neck.highestFret}, the last of level ${level}.`,
        repair: `${deed} or raise the level.`,
        mended: withPitch(deed, notes, note, nearest),
      },
    ];
  });
}

/** Notes that the level does not have yet. */
function toneFindings({ model, bar, tones, notes }: Checked): MusicFinding[] {
  return tones.flatMap((tone, note): MusicFinding[] => {
    const { stretch } = tone;
    if (!stretch?.chord || !isBeyondLevel(model, tone)) return [];
    const { level } = model.request;
    const known = stretch.steps.map((step, index) => (model.limits.steps.has(index + 1) ? step : null));
    const nearest = nearestMember({ ...stretch, steps: known }, tone.interval)?.name ?? stretch.home;
    const deed = `Keep to the notes of level ${level}`;
    return [
      {
        kind: 'level',
        bar: bar.index,
        note,
        message: `${placeOf(model, bar, tone)}: ${nameText(model, tone.name)} over ${chordText(model, stretch.chord)} is a note of a later level.`,
        repair: `${deed} or raise it.`,
        mended: nearest ? withPitch(deed, notes, note, nearestPitch(model, nearest, tone.midi)) : null,
      },
    ];
  });
}

/** A step above the root that the level does not have yet; notes outside the scale come with half steps. */
export const isBeyondLevel = ({ limits }: LineModel, tone: Tone): boolean => isBeyondLimits(limits, tone);

/** {@link isBeyondLevel} for a level's limits. */
export function isBeyondLimits(
  { steps, halfSteps }: LevelLimits,
  { stretch, midi, interval }: Tone,
): boolean {
  if (!stretch?.chord || midi % 12 === stretch.homeClass) return false;
  const step = stepNumber(stretch, interval);
  return step === 0 ? !halfSteps : !steps.has(step);
}

/** What of a bar is beyond the level: its rhythm and speed, its frets, its steps over the chords. */
export const levelFindings = (checked: Checked): readonly MusicFinding[] => [
  ...paceFindings(checked),
  ...fretFindings(checked),
  ...toneFindings(checked),
];

/**
 * What is to be pointed out about the notes of one bar over its chords.
 * @param after the first notes of the bars that sound next
 */
export const barFindings = (checked: Checked, after: readonly Tone[]): readonly MusicFinding[] => [
  ...chordFindings(checked, after),
  ...spellingFindings(checked),
  ...foundationFindings(checked),
  ...levelFindings(checked),
];
