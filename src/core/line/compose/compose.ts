import { hearLine } from '../hearing';
import type { LineModel } from '../model';
import { draftByBook, lineCost, type PhraseDraft } from '../phrase/compose';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { Aim, ComposedLine, ComposeRequest } from '../types';
import { aimMisses, isWithinLevel, techniquesOf, unfulfilled, type Wish, wishesOf } from './aim-misses';
import { draftOf } from './draft';
import { remarksFor } from './remarks';

/** In which bars of a phrase a technique is tried first: from the second on, or from the last back. */
function placesFor({ technique, bars }: Wish, kept: ComposeRequest['kept']): readonly number[] {
  const free = bars.filter((bar) => (kept[bar] ?? null) === null);
  return TECHNIQUE_TABLE[technique].place !== 'turn'
    ? [...free.slice(1), ...free.slice(0, 1)]
    : [...free].reverse();
}

/**
 * How far a draft is from what is wished for: aims that are open weigh more than any number of broken rules, and
 * those more than techniques that are only switched on.
 */
function troubleOf(model: LineModel, { bars }: PhraseDraft, open: readonly Wish[]): number {
  const aims = aimMisses(model, bars).length;
  const breaches = findBreaches(model, hearLine(model, bars)).length;
  return (aims * RANK + breaches) * RANK + open.filter(({ aim }) => aim < 0).length;
}

const RANK = 10_000;

/** How often wishes are tried in other bars; a phrase has four or five. */
const ROUNDS = 5;

/** Share of the plans for each of those tries. */
const SECOND_LOOK = 0.6;

/** A line, and how far it is from what is wished for. */
interface Fulfilled {
  readonly draft: PhraseDraft;
  readonly trouble: number;
}

type Drafter = (request: ComposeRequest, effort: number) => PhraseDraft;

/**
 * A technique wanted in a line or section has to be heard in every phrase: where a draft leaves a phrase without
 * it, one bar of the phrase after the other is asked for it, until one can.
 */
function fulfil(
  request: ComposeRequest,
  model: LineModel,
  drafter: Drafter,
  isAsked: (wish: Wish) => boolean,
): Fulfilled {
  const wishes = wishesOf(model).filter((wish) => isWithinLevel(wish, request.level) && isAsked(wish));
  const openIn = ({ bars }: PhraseDraft) => unfulfilled(wishes, techniquesOf(model, hearLine(model, bars)));
  const tried = new Map<Wish, number>();
  const first = drafter(request, 1);
  let open = openIn(first);
  let [best, least] = [first, troubleOf(model, first, open)];
  for (let round = 0; round < ROUNDS && open.length > 0; round += 1) {
    for (const wish of open) tried.set(wish, (tried.get(wish) ?? -1) + 1);
    const asked = [...tried].flatMap(([wish, place]): readonly Aim[] => {
      const bar = placesFor(wish, request.kept)[place];
      return bar === undefined ? [] : [{ where: { kind: 'bar', bar }, wanted: [wish.technique] }];
    });
    if (asked.length === 0) break;
    const draft = drafter({ ...request, aims: [...(request.aims ?? []), ...asked] }, SECOND_LOOK);
    open = openIn(draft);
    const trouble = troubleOf(model, draft, open);
    if (trouble < least) [best, least] = [draft, trouble];
  }
  return { draft: best, trouble: least };
}

/** What it costs beside its features that a line is not made of phrases. */
const WITHOUT_PHRASES = 10;

/** A line of single bars: less of a tune, but where the phrases break a rule or miss an aim it may keep it. */
function draftOfBars(request: ComposeRequest, model: LineModel): Fulfilled {
  const found = fulfil(
    request,
    model,
    draftOf,
    ({ aim, technique }) => aim >= 0 || technique !== 'space' || request.feel.bassRole.mayRestOnOne,
  );
  return { ...found, draft: { ...found.draft, cost: lineCost(model, found.draft.bars) + WITHOUT_PHRASES } };
}

/**
 * Composes a whole line from the feel's phrases: for many plans of the form the best way through it, and of those
 * lines the one that reads best. The seed chooses the theme and draws the plans; the same request and seed give
 * the same line. Where that breaks a rule or leaves an aim open, single bars of the feel's rhythms are tried, too,
 * and the line with less amiss is taken. Bars in `kept` stay as they are. Never throws for a parsed chart; what
 * could not be done is said in the remarks.
 */
export function composeLine(request: ComposeRequest): ComposedLine {
  const model = modelOf(request);
  const phrased = fulfil(request, model, draftByBook, () => true);
  const other =
    phrased.trouble >= RANK || phrased.draft.bars.every((bar) => bar.length === 0)
      ? draftOfBars(request, model)
      : null;
  const { bars, cost } = (other && other.trouble < phrased.trouble ? other : phrased).draft;
  const misses = aimMisses(model, bars);
  return { bars, cost, misses, remarks: remarksFor(model, bars, misses) };
}
