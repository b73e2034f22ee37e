import type { PhraseRole } from '../../feel';
import { type Change, changesOf } from '../changes';
import { endsOffBeat } from '../figures';
import type { BarModel } from '../model';
import type { Workshop } from '../options';
import type { BarRhythm } from '../rhythm';
import { isEvenWith } from '../rules/evenness';
import { AN_EARLY_NOTE, planCost } from './plan-cost';
import type { Form, Given, PlannedBar } from './planned';

/** What every bar plays in rhythm and role, before any pitch is chosen. */
export interface Plan {
  readonly bars: readonly PlannedBar[];
  readonly cost: number;
}

const FORMS: readonly Form[] = ['answered', 'carried'];

const ROLES: Readonly<Record<Form, readonly PhraseRole[]>> = {
  answered: ['statement', 'answer', 'statement', 'turnaround'],
  carried: ['statement', 'statement', 'statement', 'turnaround'],
};

/** Roles of a section's bars; what is left over after whole phrases keeps the statement and then turns. */
function rolesOf(length: number, phrase: number, form: Form): readonly PhraseRole[] {
  const left = length % phrase;
  return Array.from({ length }, (_, bar): PhraseRole => {
    if (bar < length - left)
      return phrase === 2
        ? bar % 2 === 0
          ? 'statement'
          : 'answer'
        : (ROLES[form][bar % phrase] ?? 'statement');
    return left > 1 && bar === length - 1 ? 'turnaround' : 'statement';
  });
}

/** Chosen rhythms by role, as identities of cells; turnarounds take turns. */
interface Choice {
  readonly statement: string;
  readonly answer: string;
  readonly turns: readonly [string, string];
}

function rhythmOf(
  rhythms: readonly BarRhythm[],
  cell: string,
  role: PhraseRole,
  sounding: boolean,
): BarRhythm | null {
  const usable = sounding ? rhythms.filter((rhythm) => !rhythm.silentOne) : rhythms;
  return (
    usable.find((rhythm) => rhythm.cell.id === cell) ??
    usable.find((rhythm) => rhythm.cell.roles.includes(role)) ??
    usable[0] ??
    rhythms[0] ??
    null
  );
}

/** Whether the bar before (in play) leaves beat one silent. */
const followsSilence = (
  bar: BarModel,
  planned: readonly (PlannedBar | undefined)[],
  given: readonly Given[],
): boolean =>
  [...bar.before, ...bar.after].some((index) => {
    if (index === bar.index) return true;
    const option = given[index]?.option;
    if (option) return option.tones.length > 0 && option.tones[0]?.start !== 0;
    return planned[index]?.rhythm?.silentOne === true;
  });

function layOut(shop: Workshop, choice: Choice, form: Form, given: readonly Given[]): PlannedBar[] {
  const { model } = shop;
  const phrase = model.request.feel.phraseLength;
  const planned: (PlannedBar | undefined)[] = model.bars.map(() => undefined);
  for (const section of model.request.chart.sections) {
    const roles = rolesOf(section.length, phrase, form);
    roles.forEach((role, place) => {
      const bar = model.bars[section.start + place];
      if (!bar) return;
      planned[bar.index] = { role, rhythm: barRhythm(shop, bar, role, place, choice, planned, given) };
    });
  }
  return planned.map((bar) => bar ?? { role: 'statement', rhythm: null });
}

function barRhythm(
  shop: Workshop,
  bar: BarModel,
  role: PhraseRole,
  place: number,
  choice: Choice,
  planned: readonly (PlannedBar | undefined)[],
  given: readonly Given[],
): BarRhythm | null {
  if (!bar.playable || given[bar.index]?.option) return null;
  const phrase = shop.model.request.feel.phraseLength;
  const turn = choice.turns[Math.floor(place / phrase) % 2 === 0 ? 0 : 1];
  const cell = role === 'statement' ? choice.statement : role === 'answer' ? choice.answer : turn;
  const sounding =
    role === 'statement' ||
    bar.opensSection ||
    bar.stretches.length > 1 ||
    followsSilence(bar, planned, given);
  const rhythms = shop.rhythms(bar);
  const rhythm = rhythmOf(rhythms, cell, role, sounding);
  const missesRoot = rhythm?.silentOne === true && laggingChange(shop, bar, planned, given);
  return missesRoot ? rhythmOf(rhythms, choice.statement, role, true) : rhythm;
}

/** Whether the chord change before or after the one at this bar's beginning goes without its root, too. */
function laggingChange(
  shop: Workshop,
  bar: BarModel,
  planned: readonly (PlannedBar | undefined)[],
  given: readonly Given[],
): boolean {
  const changes = changesOf(shop.model);
  const lags = ({ bar: other, stretch }: Change): boolean => {
    if (stretch.index > 0 || other.index === bar.index) return false;
    const option = given[other.index]?.option;
    return option ? option.tones[0]?.start !== 0 : planned[other.index]?.rhythm?.silentOne === true;
  };
  return changes.some((change, place) => {
    if (change.bar.index !== bar.index || change.stretch.index > 0 || changes.length < 2) return false;
    const before = changes[(place + changes.length - 1) % changes.length];
    const after = changes[(place + 1) % changes.length];
    return (before !== undefined && lags(before)) || (after !== undefined && lags(after));
  });
}

/** A bar of the chart's most common metre, with as few chords as there are: what rhythms are chosen for. */
export function typicalBar(shop: Workshop): BarModel | null {
  const metres = new Map<string, { bar: BarModel; count: number }>();
  for (const bar of shop.model.bars) {
    if (!bar.playable) continue;
    const key = `${bar.metre.count}/${bar.metre.unit}`;
    const known = metres.get(key) ?? { bar, count: 0 };
    known.count += 1;
    if (bar.stretches.length < known.bar.stretches.length) known.bar = bar;
    metres.set(key, known);
  }
  return [...metres.values()].sort((one, other) => other.count - one.count)[0]?.bar ?? null;
}

/**
 * The rhythms of a bar that suit a role, all of them where none is marked for it; a statement sounds on
 * one, leaves the silence that the feel asks for, and from the level with thirds on has the notes of one of the
 * feel's figures.
 */
export function rhythmsByRole(shop: Workshop, bar: BarModel, role: PhraseRole): readonly BarRhythm[] {
  const rhythms = shop.rhythms(bar).filter((rhythm) => role !== 'statement' || !rhythm.silentOne);
  const { feel, level } = shop.model.request;
  const marked = rhythms.filter((rhythm) => rhythm.cell.roles.includes(role));
  const grown = marked.filter((rhythm) => rhythm.cell.highest >= level);
  const least =
    level < THIRDS_FROM ? 1 : Math.min(...feel.figures.map(({ shape }) => shape.split(' ').length));
  const spoken = grown.filter((rhythm) => role !== 'statement' || rhythm.onsets.length >= least);
  const airy = spoken.filter((rhythm) => rhythm.silence >= feel.silence.least);
  if (role === 'statement' && airy.length > 0) return airy;
  return [spoken, grown, marked, rhythms].find((some) => some.length > 0) ?? rhythms;
}

/** The level whose notes have thirds (see the levels' table). */
const THIRDS_FROM = 2;

/** Rhythms that a take tries as its answer and its turnaround; another seed likes others. */
const ANSWERS = 7;
const TURNS = 5;

/** Every plan for a statement's rhythm, the cheapest first. */
export function plansFor(
  shop: Workshop,
  statement: string,
  given: readonly Given[],
  liking: (cell: string) => number,
): readonly Plan[] {
  const bar = typicalBar(shop);
  const count = bar && shop.rhythms(bar).find(({ cell }) => cell.id === statement)?.onsets.length;
  const early = shop.model.request.techniques.has('anticipation');
  const liked = (role: PhraseRole, most: number): readonly string[] => {
    const rhythms = bar ? rhythmsByRole(shop, bar, role) : [];
    const even = rhythms.filter(({ onsets }) => isEvenWith(count ?? 0, onsets.length));
    return (even.length > 0 ? even : rhythms)
      .map(({ cell, onsets }) => ({
        id: cell.id,
        cost: liking(cell.id) - (early && bar && endsOffBeat(bar, onsets) ? AN_EARLY_NOTE : 0),
      }))
      .sort((one, other) => one.cost - other.cost)
      .slice(0, most)
      .map(({ id }) => id);
  };
  const answers = liked('answer', ANSWERS);
  const turns = liked('turnaround', TURNS);
  const plans = new Map<string, Plan>();
  for (const form of FORMS) {
    for (const answer of form === 'carried' ? [statement] : answers) {
      turns.forEach((turn, index) => {
        const other = turns[(index + 1) % turns.length] ?? turn;
        const bars = layOut(shop, { statement, answer, turns: [turn, other] }, form, given);
        const key = bars.map((bar) => `${bar.role} ${bar.rhythm?.cell.id}`).join('|');
        if (plans.has(key)) return;
        const cost = planCost(shop, bars, given, form) + liking(answer) + liking(turn) + liking(other);
        plans.set(key, { bars, cost });
      });
    }
  }
  return [...plans.values()].sort((one, other) => one.cost - other.cost);
}
