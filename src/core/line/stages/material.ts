import { type LineNote, midiOf, type SpelledPitch, ticks } from '../../base';
import { isBeyondLevel } from '../bar-findings';
import { pitchAt, type Stretch } from '../harmony';
import { type HeardLine, hearLine, hearWith, struck } from '../hearing';
import { notesPerSecond, rhythmLevelIn } from '../level';
import { type BarModel, isStrongBeat, type LineModel } from '../model';
import type { Tone } from '../tones';
import type { LineNotes } from '../types';

/** What a note is to a build-up. */
export interface PlacedNote {
  readonly note: LineNote;
  /** `own`: no chord tells a root for it, so it keeps its pitch from the first stage that has it. */
  readonly kind: 'chord tone' | 'step' | 'own';
  /** What is played in its place until its own pitch comes: the root, or its own pitch. */
  readonly root: SpelledPitch;
  /** The first note that brings it: with the roots, on a strong beat, or with the rhythm. */
  readonly comes: 'roots' | 'strong beats' | 'rhythm';
}

/** A bar of a line as its stages are made of it. */
export interface StageBar {
  readonly notes: readonly PlacedNote[];
  /** What fills the silence on one until that comes; null where beat one is not empty, or nothing may fill it. */
  readonly fill: LineNote | null;
}

const OCTAVE = 12;

/** The root of a stretch as its stages play it: the line's own lowest one, else the nearest to its first note that the level has. */
function rootOf(model: LineModel, stretch: Stretch, tones: readonly Tone[]): SpelledPitch | null {
  const { home } = stretch;
  const [first] = tones;
  if (home === null || first === undefined) return null;
  const own = tones.filter(({ midi }) => midi % OCTAVE === stretch.homeClass).map(({ midi }) => midi);
  if (own.length > 0) return pitchAt(home, Math.min(...own));
  const near = model.neck.onNeck
    .flatMap((there, midi) => (there && midi % OCTAVE === stretch.homeClass ? [midi] : []))
    .sort((one, other) => Math.abs(one - first.midi) - Math.abs(other - first.midi) || one - other)[0];
  return near === undefined ? null : pitchAt(home, near);
}

/** Notes that a tie joins over bar lines, each by its bar: they sound as one and get one pitch. */
type Tied = readonly { readonly bar: number; readonly place: number }[];

/** The notes that a bar's last note is tied to, in every bar that can follow. */
function tiedFrom(heard: HeardLine, bar: BarModel): Tied {
  const tones = heard[bar.index] ?? [];
  const last = tones.at(-1);
  if (last?.tiedOn !== true) return [];
  return bar.after.flatMap((next) => {
    const first = heard[next]?.[0];
    return first?.start === 0 && first.midi === last.midi ? [{ bar: next, place: 0 }] : [];
  });
}

interface Voice {
  readonly kind: PlacedNote['kind'];
  readonly root: SpelledPitch;
}

const voiceOf = (tone: Tone, note: LineNote, root: SpelledPitch | null): Voice =>
  root === null ? { kind: 'own', root: note.pitch } : { kind: tone.member ? 'chord tone' : 'step', root };

/**
 * What each note is and which root stands for it. Notes that are tied together get what the last of them is, whose chord
 * the others anticipate; where those they lead to differ in it, they keep their own pitch.
 */
function voicesOf(model: LineModel, line: LineNotes, heard: HeardLine): readonly (readonly Voice[])[] {
  const alone = model.bars.map(({ index }) => {
    const tones = heard[index] ?? [];
    return tones.map((tone, place): Voice => {
      const note = line[index]?.[place];
      const { stretch } = tone;
      const under = tones.filter((other) => other.stretch === stretch);
      const root = stretch?.chord ? rootOf(model, stretch, under) : null;
      return note === undefined
        ? { kind: 'own', root: { letter: 'E', alteration: 0, octave: 1 } }
        : voiceOf(tone, note, root);
    });
  });
  const settled = alone.map((voices) => voices.slice());
  for (const chain of chainsOf(model, heard)) {
    const held = chain.slice(1).flatMap(({ bar, place }) => alone[bar]?.[place] ?? []);
    const [one] = held;
    const agree =
      one !== undefined &&
      held.every(({ kind, root }) => kind === one.kind && midiOf(root) === midiOf(one.root));
    const known = agree && isKnownThere(model, line, heard, chain[0], one.root);
    for (const { bar, place } of chain) {
      const note = line[bar]?.[place];
      const voices = settled[bar];
      if (note && voices) voices[place] = known ? one : { kind: 'own', root: note.pitch };
    }
  }
  return settled;
}

/** Whether the level has a root where the tie to it is struck: round the end of a line it is heard under the chord before. */
function isKnownThere(
  model: LineModel,
  line: LineNotes,
  heard: HeardLine,
  struckAt: Tied[number] | undefined,
  root: SpelledPitch,
): boolean {
  if (struckAt === undefined) return true;
  const { bar, place } = struckAt;
  const notes = (line[bar] ?? []).map((note, index) => (index === place ? { ...note, pitch: root } : note));
  const tone = hearWith(model, heard, bar, notes)[bar]?.[place];
  return tone === undefined || !isBeyondLevel(model, tone);
}

/** Groups of notes that are tied together, the first the one that is struck. */
function chainsOf(model: LineModel, heard: HeardLine): readonly Tied[] {
  const groups: { bar: number; place: number }[][] = [];
  const groupAt = new Map<string, { bar: number; place: number }[]>();
  for (const bar of model.bars) {
    const to = tiedFrom(heard, bar);
    if (to.length === 0) continue;
    const members = [{ bar: bar.index, place: (heard[bar.index]?.length ?? 1) - 1 }, ...to];
    const joined = new Set(members.flatMap(({ bar: at, place }) => groupAt.get(`${at} ${place}`) ?? []));
    const known = [...groups].filter((group) => group.some((member) => joined.has(member)));
    const whole = [
      ...new Map([...known.flat(), ...members].map((each) => [`${each.bar} ${each.place}`, each])).values(),
    ];
    for (const group of known) groups.splice(groups.indexOf(group), 1);
    groups.push(whole);
    for (const member of whole) groupAt.set(`${member.bar} ${member.place}`, whole);
  }
  return groups;
}

/** The places where the roots come: the first note under each chord, as far as the level has the rhythm that this leaves. */
function rootPlaces(
  model: LineModel,
  bar: BarModel,
  tones: readonly Tone[],
  fill: LineNote | null,
): ReadonlySet<number> {
  const firsts = tones.flatMap((tone, place) =>
    place === 0 || tone.stretch !== tones[place - 1]?.stretch ? [place] : [],
  );
  const filled =
    fill === null ? firsts : firsts.filter((place) => tones[place]?.stretch !== tones[0]?.stretch);
  return withinRhythm(model, bar, tones, filled);
}

/** Places of a bar's rhythm without those that would be harder alone than the level, or the whole bar, is. */
function withinRhythm(
  model: LineModel,
  bar: BarModel,
  tones: readonly Tone[],
  places: readonly number[],
): ReadonlySet<number> {
  const { level, feel } = model.request;
  const rhythm = (kept: readonly number[]) =>
    rhythmLevelIn(
      kept.flatMap((place) => tones[place] ?? []),
      bar.metre,
      feel.bassRole,
    );
  const most = Math.max(level, rhythm(tones.map((_, place) => place)));
  const kept: number[] = [];
  for (const place of places) {
    kept.push(place);
    if (rhythm(kept) > most) kept.pop();
  }
  return new Set(kept);
}

/** A root on the empty beat one, up to the first note and no longer than a beat; none where it would be too fast for the level. */
function fillOf(model: LineModel, bar: BarModel, tones: readonly Tone[]): LineNote | null {
  const [first] = tones;
  const stretch = bar.stretches[0];
  if (first === undefined || first.start === 0 || bar.pickup || !stretch?.chord) return null;
  const under = tones.filter((tone) => tone.stretch === stretch);
  const root = rootOf(model, stretch, under.length > 0 ? under : [first]);
  const faster = notesPerSecond(struck(tones).length + 1, bar.metre, model.request.tempo);
  if (root === null || faster > model.limits.notesPerSecond) return null;
  return { start: ticks(0), duration: ticks(Math.min(first.start, bar.beat, stretch.end)), pitch: root };
}

/** A line as its stages are made of it, one entry a written bar. */
export function materialOf(model: LineModel, line: LineNotes): readonly StageBar[] {
  const heard = hearLine(model, line);
  const voices = voicesOf(model, line, heard);
  return model.bars.map((bar) => {
    const tones = heard[bar.index] ?? [];
    const fill = fillOf(model, bar, tones);
    const roots = rootPlaces(model, bar, tones, fill);
    const notes = (line[bar.index] ?? []).flatMap((note, place): PlacedNote[] => {
      const voice = voices[bar.index]?.[place];
      if (voice === undefined) return [];
      const strong = isStrongBeat(bar, note.start);
      return [{ note, ...voice, comes: roots.has(place) ? 'roots' : strong ? 'strong beats' : 'rhythm' }];
    });
    return { notes, fill };
  });
}
