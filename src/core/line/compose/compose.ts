import { hearLine } from '../hearing';
import type { LineModel } from '../model';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { Aim, ComposedLine, ComposeRequest } from '../types';
import { aimMisses, isWithinLevel, techniquesOf, unfulfilled, type Wish, wishesOf } from './aim-misses';
import { type Draft, draftOf } from './draft';
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
function troubleOf(model: LineModel, { bars }: Draft, open: readonly Wish[]): number {
  const aims = open.filter(({ aim }) => aim >= 0).length;
  const breaches = findBreaches(model, hearLine(model, bars)).length;
  return (aims * RANK + breaches) * RANK + open.length - aims;
}

const RANK = 10_000;

/** How often wishes are tried in other bars; a phrase has four or five. */
const ROUNDS = 6;

/**
 * A technique wanted in a line or section has to be heard in every phrase: where a draft leaves a phrase without
 * it, one bar of the phrase after the other is asked for it, until one can.
 */
function fulfil(request: ComposeRequest, model: LineModel, first: Draft): Draft {
  const wishes = wishesOf(model).filter((wish) => isWithinLevel(wish, request.level));
  const openIn = ({ bars }: Draft) => unfulfilled(wishes, techniquesOf(model, hearLine(model, bars)));
  const tried = new Map<Wish, number>();
  let open = openIn(first);
  let [best, least] = [first, troubleOf(model, first, open)];
  for (let round = 0; round < ROUNDS && open.length > 0; round += 1) {
    for (const wish of open) tried.set(wish, (tried.get(wish) ?? -1) + 1);
    const asked = [...tried].flatMap(([wish, place]): readonly Aim[] => {
      const bar = placesFor(wish, request.kept)[place];
      return bar === undefined ? [] : [{ where: { kind: 'bar', bar }, wanted: [wish.technique] }];
    });
    if (asked.length === 0) break;
    const draft = draftOf({ ...request, aims: [...(request.aims ?? []), ...asked] });
    open = openIn(draft);
    const trouble = troubleOf(model, draft, open);
    if (trouble < least) [best, least] = [draft, trouble];
  }
  return best;
}

/**
 * Composes a whole line: for a rhythm plan of statement, answer and turnaround, the cheapest notes under the
 * score of `taste`, over every way the bars can follow each other. The seed chooses the statement's rhythm and
 * decides among equals; the same request and seed give the same line. Bars in `kept` stay as they are. Never
 * throws for a parsed chart; what could not be done is said in the remarks.
 */
export function composeLine(request: ComposeRequest): ComposedLine {
  const model = modelOf(request);
  const { bars, cost } = fulfil(request, model, draftOf(request));
  const misses = aimMisses(model, bars);
  return { bars, cost, misses, remarks: remarksFor(model, bars, misses) };
}
