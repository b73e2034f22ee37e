import { midiOf, remembered, rememberedFor } from '../base';
import type { Chart } from '../chart';
import { type Demands, pitchesOf, type Reach } from './demands';
import { levelLimits } from './level-limits';
import { freedomsOf } from './techniques/table';
import type { Aim, LineRequest, Technique } from './types';

/** Frets above a hand position that its four fingers stand on. */
const FINGERS = 3;

const underHands = rememberedFor((_: LineRequest) => new Map<number, readonly boolean[]>());

/** By MIDI number, what lies under the hand in a position, or on an open string. */
export const pitchesAtPosition = (request: LineRequest, position: number): readonly boolean[] =>
  remembered(underHands(request), position, () => pitchesUnder(request, position));

function pitchesUnder(request: LineRequest, position: number): readonly boolean[] {
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

/** Techniques that an aim for several bars wants, to be shown in one of them or more. */
const hopedIn = (aims: readonly Aim[]): ReadonlySet<Technique> =>
  new Set(aims.flatMap((aim) => (aim.where.kind === 'bar' ? [] : (aim.wanted ?? []))));

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
  const hoped = hopedIn(aims);
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
  const named = [...aims].sort(nearerFirst).find((aim) => aim.degrees !== undefined)?.degrees;
  const degrees = named === undefined ? null : new Set<number>(named);
  const places = (pitchClass: number | undefined): boolean =>
    pitchClass !== undefined && pitchesOf(narrow, pitchClass).length > 0;
  const fits = chords.every((chord) => chord.some(places));
  const rootless = fits && !chords.every(([home]) => places(home));
  const key = [
    [...techniques],
    [...wanted],
    [...hoped],
    density,
    silence,
    narrow.low,
    narrow.high,
    positions,
    named,
    fits,
    rootless,
  ].join(';');
  return {
    techniques,
    freedoms: freedomsOf(techniques),
    wanted,
    hoped,
    density,
    silence,
    degrees,
    reach: fits ? narrow : whole,
    rootless,
    key,
  };
}
