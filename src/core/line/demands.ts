import { midiOf } from '../base';
import type { Chart } from '../chart';
import { levelLimits } from './level';
import type { Aim, LineRequest, Technique } from './types';

/** What the level and the teacher's aims ask of one bar. */
export interface Demands {
  /** Techniques that the bar may show; chord tones are always allowed. */
  readonly techniques: ReadonlySet<Technique>;
  /** Techniques that the bar has to show. */
  readonly wanted: ReadonlySet<Technique>;
  /** Techniques that it had better show, because an aim for more bars falls to this one. */
  readonly hoped: ReadonlySet<Technique>;
  readonly density: 'sparse' | 'busy' | null;
  readonly silence: number;
  readonly reach: Reach;
  /** The aims leave room for the fifth of a chord in the bar, but not for its root. */
  readonly rootless: boolean;
  /** Equal for equal demands. */
  readonly key: string;
}

/** The pitches a bar may use. */
export interface Reach {
  readonly low: number;
  readonly high: number;
  /** By MIDI number: whether the pitch lies on the neck within the allowed frets. */
  readonly onNeck: readonly boolean[];
}

export const inReach = (reach: Reach, midi: number): boolean =>
  midi >= reach.low && midi <= reach.high && reach.onNeck[midi] === true;

/** Pitches of a class within reach, lowest first. */
export function pitchesOf(reach: Reach, pitchClass: number): readonly number[] {
  const found: number[] = [];
  for (let midi = reach.low; midi <= reach.high; midi += 1) {
    if (midi % 12 === pitchClass && inReach(reach, midi)) found.push(midi);
  }
  return found;
}

/** Frets above a hand position that its four fingers stand on. */
const FINGERS = 3;

/** By MIDI number, what lies under the hand in a position, or on an open string. */
export function pitchesAtPosition(request: LineRequest, position: number): readonly boolean[] {
  const there = Array.from({ length: 128 }, () => false);
  // The hand may stand so high that its last fingers lie beyond the level.
  const last = Math.min(position + FINGERS, Math.max(position, levelLimits(request.level).highestFret));
  for (const string of request.instrument.openStrings) {
    const open = midiOf(string);
    if (request.hand.openStrings !== 'avoid') there[open] = true;
    for (let fret = position; fret <= last; fret += 1) there[open + fret] = true;
  }
  return there;
}

const holdsIn = (aim: Aim, chart: Chart, bar: number): boolean =>
  aim.where.kind === 'line' ||
  (aim.where.kind === 'bar' ? aim.where.bar === bar : chart.bars[bar]?.section === aim.where.section);

/** In which bar of a phrase a technique is best shown: space where it answers, walks where the phrase turns. */
function isPlaceFor(technique: Technique, place: number, length: number, phrase: number): boolean {
  const inPhrase = place % phrase;
  if (technique === 'chord tones') return true;
  const answers = inPhrase === 1 || (length === 1 && place === 0);
  if (technique === 'space' || technique === 'octave' || technique === 'anticipation') return answers;
  return inPhrase === phrase - 1 || place === length - 1;
}

/** Techniques that are off until the teacher asks for them: then the line should show them. */
const SWITCHED_ON: readonly Technique[] = ['octave', 'approach note', 'anticipation'];

function hopedIn(request: LineRequest, aims: readonly Aim[], bar: number): ReadonlySet<Technique> {
  const { chart, feel } = request;
  const section = chart.sections[chart.bars[bar]?.section ?? 0];
  const place = bar - (section?.start ?? 0);
  const asked = SWITCHED_ON.filter((technique) => request.techniques.has(technique));
  for (const aim of aims) if (aim.where.kind !== 'bar') asked.push(...(aim.wanted ?? []));
  return new Set(
    asked.filter((technique) => isPlaceFor(technique, place, section?.length ?? 1, feel.phraseLength)),
  );
}

const NEARNESS = { bar: 0, section: 1, line: 2 } as const;

/** An aim for a bar speaks before one for its section, and that before one for the line. */
const nearerFirst = (one: Aim, other: Aim): number => NEARNESS[one.where.kind] - NEARNESS[other.where.kind];

/** The aims that hold in a bar. */
export const aimsIn = (request: LineRequest, bar: number): readonly Aim[] =>
  (request.aims ?? []).filter((aim) => holdsIn(aim, request.chart, bar));

/**
 * Adds up what is asked of a bar.
 * @param chords of the bar: the pitch classes that each can begin with, its root or bass note first
 * @param whole the pitches that the level and the instrument allow
 */
export function demandsOf(
  request: LineRequest,
  bar: number,
  chords: readonly (readonly number[])[],
  whole: Reach,
): Demands {
  const aims = aimsIn(request, bar);
  const wanted = new Set(aims.flatMap((aim) => (aim.where.kind === 'bar' ? (aim.wanted ?? []) : [])));
  const hoped = hopedIn(request, aims, bar);
  const forbidden = new Set(aims.flatMap((aim) => aim.forbidden ?? []));
  const techniques = new Set(
    [...request.techniques, ...aims.flatMap((aim) => aim.allowed ?? []), ...wanted, ...hoped].filter(
      (one) => !forbidden.has(one),
    ),
  );
  const positions = aims.flatMap((aim) => (aim.position === undefined ? [] : [aim.position]));
  const hands = positions.map((position) => pitchesAtPosition(request, position));
  const narrow: Reach = {
    low: Math.max(whole.low, ...aims.map((aim) => aim.lowest ?? 0)),
    high: Math.min(whole.high, ...aims.map((aim) => aim.highest ?? 127)),
    onNeck:
      hands.length === 0
        ? whole.onNeck
        : whole.onNeck.map((there, midi) => there && hands.every((hand) => hand[midi] === true)),
  };
  const density = [...aims].sort(nearerFirst).find((aim) => aim.density !== undefined)?.density ?? null;
  const silence = Math.max(0, ...aims.map((aim) => aim.silence ?? 0));
  const key = [
    [...techniques],
    [...wanted],
    [...hoped],
    density,
    silence,
    narrow.low,
    narrow.high,
    positions,
  ].join(';');
  const places = (pitchClass: number | undefined): boolean =>
    pitchClass !== undefined && pitchesOf(narrow, pitchClass).length > 0;
  const fits = chords.every((chord) => chord.some(places));
  return {
    techniques,
    wanted,
    hoped,
    density,
    silence,
    reach: fits ? narrow : whole,
    rootless: fits && !chords.every(([home]) => places(home)),
    key,
  };
}
