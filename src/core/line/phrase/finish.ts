import { remembered } from '../../base';
import { type Ahead, functionsIn } from '../functions';
import type { LineModel } from '../model';
import { HELD_IN_PARTS, soloBreaches } from '../rules/check';
import { type Exit, exitOf } from '../rules/ends';
import { TECHNIQUE_ROWS } from '../techniques/table';
import { type Tone, toneOf } from '../tones';
import { joinCost, type LeadRules, type LeadWay, solveLead, type Target } from './leads';
import type { Node } from './nodes';
import type { Beginning } from './pools';
import type { Segment } from './segments';
import { bitOf, shownIn, shownInPart, type Techniques } from './shown';
import { spell } from './spelling';

/** Where a segment goes: how what comes begins. */
export interface Goal extends Target {
  readonly segment: Segment;
  readonly begins: Beginning;
}

/** A node with its leads solved. */
export interface Finished {
  readonly tones: readonly Tone[];
  readonly exit: Exit | null;
  /** Rules that it breaks by itself, as bits. */
  readonly solo: number;
  /** What it shows, whatever comes; null where that depends on what comes. */
  readonly shows: Techniques | null;
  /** What it was seen to show before one thing or another; null as long as nothing was asked, as of the next two. */
  seen: Map<number, Techniques> | null;
  /** What it was seen to cost to meet a beginning that opens a section, and any other. */
  opening: Map<Beginning, number> | null;
  meeting: Map<Beginning, number> | null;
}

/** How a segment leads on under a plan: its goals, what its leads may do, and those that are known. */
export interface Leading {
  readonly goals: readonly Goal[];
  readonly rules: LeadRules;
  readonly known: Map<number, LeadWay>;
  /** Tells apart what comes, as far as what is shown before it depends on it; null where it is too much to tell. */
  readonly sign: number | null;
}

export interface Finisher {
  /** How a segment leads into its goals. */
  leading(segment: Segment, goals: readonly Goal[], asks: Techniques): Leading;
  /** The way that a node leads on; null where it has no leads. */
  leadOf(segment: Segment, node: Node, leading: Leading): LeadWay | null;
  finish(segment: Segment, node: Node, way: LeadWay | null, leading: Leading): Finished;
  /** What a finished node shows on its way into its goals. */
  shown(segment: Segment, finished: Finished, leading: Leading): Techniques;
}

/** More than there are segments and sets of techniques: numbers below it are joined into one. */
const NUMBERS = 2 ** 17;

/** Numbers segments by a text, equal texts alike; each segment's text is made once. */
function numberer(textOf: (segment: Segment) => string): (segment: Segment) => number {
  const numbers = new Map<string, number>();
  const known = new WeakMap<Segment, number>();
  return (segment) =>
    remembered(known, segment, () => remembered(numbers, textOf(segment), () => numbers.size));
}

/** Finishes nodes for a request, remembering what was asked. */
export function finisherFor(
  model: LineModel,
  rules: { readonly longChromatics: boolean; readonly walk: boolean },
): Finisher {
  const { level } = model.request;
  const leads = new Map<number | string, Pick<Leading, 'rules' | 'known'>>();
  /** By the tones that a node has by itself, which nodes of several pools share. */
  const finished = new Map<readonly Tone[], Map<number, Finished>>();

  function rulesFor({ bar }: Segment, asks: Techniques): LeadRules {
    const { freedoms, reach, wanted } = bar.demands;
    const asked = TECHNIQUE_ROWS.filter(
      ({ technique, from, allows }) =>
        (wanted.has(technique) || (asks & bitOf(technique)) !== 0) &&
        level >= from &&
        allows.every((freedom) => freedoms.has(freedom)),
    );
    return {
      level,
      steps: freedoms.has('notes outside the chord'),
      approaches: freedoms.has('notes outside the scale') && model.limits.halfSteps,
      longChromatics: rules.longChromatics,
      walk: rules.walk,
      low: reach.low,
      high: reach.high,
      onNeck: reach.onNeck,
      octaves: freedoms.has('octave leap'),
      wants: new Set(asked.flatMap(({ lead }) => lead ?? [])),
    };
  }

  /** Without anything to lead to, a lead comes home to its own chord. */
  const homeward = (segment: Segment, node: Node): Target | null =>
    segment.ladder ? { midi: node.first, ladder: segment.ladder, changes: false, late: true } : null;

  const keyText = ({ stretch }: Segment): string =>
    stretch
      ? `${stretch.label} ${stretch.key.tonic.letter}${stretch.key.tonic.alteration}${stretch.key.mode}`
      : '';

  /** Numbers for what leads depend on of the segment they leave, of the one they go into, and for what is shown before it. */
  const leavingNumber = numberer((segment) => `${keyText(segment)} ${segment.bar.demands.key}`);
  const enteringNumber = numberer(keyText);
  const labelNumber = numberer(({ stretch, start }) => `${stretch?.label} ${start > 0}`);

  function signOf(goals: readonly Goal[]): number | null {
    const [only] = goals;
    if (goals.length > 1) return null;
    return only ? labelNumber(only.segment) * 256 + only.midi * 2 + (only.late ? 1 : 0) : -1;
  }

  function leading(segment: Segment, goals: readonly Goal[], asks: Techniques): Leading {
    const [main, ...others] = goals;
    const into = main ? 1 + enteringNumber(main.segment) * 2 + (main.changes ? 1 : 0) : 0;
    const key = (leavingNumber(segment) * NUMBERS + into) * NUMBERS + asks;
    const also = others.map(({ segment: to, midi, late }) => `${keyText(to)}:${midi}${late}`).join();
    const shared = remembered(leads, others.length > 0 ? `${key} ${also}` : key, () => ({
      rules: rulesFor(segment, asks),
      known: new Map<number, LeadWay>(),
    }));
    return { goals, rules: shared.rules, known: shared.known, sign: signOf(goals) };
  }

  function leadOf(segment: Segment, node: Node, { goals, rules: own, known }: Leading): LeadWay | null {
    const { ladder } = segment;
    if (node.leads.length === 0 || !ladder) return null;
    const main = goals[0] ?? homeward(segment, node);
    if (!main) return null;
    let key = (node.last * 128 + (node.before ?? 0)) * 256 + main.midi * 2 + (main.late ? 1 : 0);
    for (const beat of node.leadBeats) key = key * 24 + Math.round(beat * 6);
    const found = known.get(key);
    if (found) return found;
    const standing = { last: node.last, before: node.before };
    const way = solveLead(own, ladder, standing, node.leadBeats, goals.length > 0 ? goals : [main]);
    known.set(key, way);
    return way;
  }

  function make(segment: Segment, node: Node, way: LeadWay | null, { goals }: Leading): Finished {
    const { bar, ladder } = segment;
    const tones = [...node.tones];
    const [main] = goals;
    way?.pitches.forEach((midi, place) => {
      const note = node.leads[place];
      if (!note || !ladder) return;
      const after = way.pitches[place + 1] ?? main?.midi ?? null;
      const tone = toneOf(
        bar,
        note.start,
        note.duration,
        midi,
        spell(ladder, midi, after, main?.ladder.names ?? null),
      );
      const early = way.kind === 'early' && place === way.pitches.length - 1;
      tones.push(early ? { ...tone, tiedOn: true } : tone);
    });
    const solo = soloBreaches(model, bar, tones);
    const plain = tones.every((tone) => tone.member);
    return {
      tones,
      exit: exitOf(tones),
      solo: segment.whole ? solo : solo & HELD_IN_PARTS,
      shows: plain && segment.whole ? shownIn(bar, tones, { before: [], ahead: [] }) : null,
      seen: null,
      opening: null,
      meeting: null,
    };
  }

  const aheadOf = (goals: readonly Goal[]): readonly Ahead[] =>
    goals.map(({ segment, begins }) => ({
      stretch: segment.stretch ?? undefined,
      first: begins.entry?.first ?? null,
    }));

  function shownByPart({ bar, start }: Segment, tones: readonly Tone[], goals: readonly Goal[]): Techniques {
    const inside = goals.find((goal) => goal.segment.bar === bar && goal.segment.start > 0);
    const next = inside?.begins.entry?.first ?? null;
    const around = { before: [], ahead: aheadOf(goals) };
    const functions = functionsIn(bar, next ? [...tones, next] : tones, around);
    return shownInPart({ bar, tones, functions: functions.slice(0, tones.length), opens: start === 0, next });
  }

  return {
    leading,
    leadOf,
    finish(segment, node, way, into) {
      let key = way?.kind === 'early' ? 1 : 0;
      for (const pitch of way?.pitches ?? []) key = key * 128 + pitch;
      const table = finished.get(node.tones) ?? new Map<number, Finished>();
      finished.set(node.tones, table);
      const known = table.get(key);
      if (known) return known;
      const done = make(segment, node, way, into);
      table.set(key, done);
      return done;
    },
    shown(segment, of, { goals, sign }) {
      const { tones, shows, seen } = of;
      if (shows !== null) return shows;
      const known = sign === null ? undefined : seen?.get(sign);
      if (known !== undefined) return known;
      const { bar } = segment;
      const found =
        segment.start === 0 && segment.end === bar.ticks
          ? shownIn(bar, tones, { before: [], ahead: aheadOf(goals) })
          : shownByPart(segment, tones, goals);
      of.seen ??= new Map();
      if (sign !== null) of.seen.set(sign, found);
      return found;
    },
  };
}

/** What a segment's join with its goals costs, leads apart. */
export function plainJoin(node: Node, goals: readonly Goal[]): number {
  let cost = 0;
  goals.forEach((goal, index) => {
    cost += joinCost(node.last, goal, node.rests || goal.late) / (index === 0 ? 1 : 2);
  });
  return cost;
}
