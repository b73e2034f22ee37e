import { barFindings } from '../bar-findings';
import { hearLine } from '../hearing';
import { hurriedBars } from '../phrase/judge';
import { BROKEN, type Desk, type Draft, openDesk } from './desk';
import { draftOf, withNeighbours } from './draft';

/** A fault in more than this share of the bars is one of the whole line. */
const LOCAL = 0.75;

/** How far round a fault the bars are composed once more, in steps. */
const ROUND = [1, 2] as const;

/** How often they are looked at. */
const LOOKS = 2;

/**
 * A draft with what a colleague would point out in it beside rules and aims: what the search prices, but does not
 * forbid. Shifts that the hand has no time for, notes that contradict their chord or come with a later level, chords
 * without root and fifth.
 */
function withFindings({ request, model }: Desk, draft: Draft): Draft {
  const heard = hearLine(model, draft.bars);
  const odd = model.bars.filter((bar) => {
    const notes = draft.bars[bar.index] ?? [];
    const after = bar.after.flatMap((index) => heard[index]?.slice(0, 1) ?? []);
    return barFindings({ model, bar, tones: heard[bar.index] ?? [], notes }, after).length > 0;
  });
  // What the teacher keeps is as it is.
  const found = [...odd.map(({ index }) => index), ...hurriedBars(model, draft.bars)].filter(
    (bar) => (request.kept[bar] ?? null) === null,
  );
  const more = found.length * BROKEN;
  return {
    ...draft,
    cost: draft.cost + more,
    trouble: draft.trouble + more,
    faults: new Set([...draft.faults, ...found]),
  };
}

/**
 * A draft whose bars with faults, and those around them, are composed once more where all others stay: in a long chart
 * the plans are few, and each has to be right everywhere at once. As it is where that leaves no less open.
 */
export function mended(desk: Desk, seed: number, draft: Draft): Draft {
  const { request, model } = desk;
  let best = withFindings(desk, draft);
  for (const steps of ROUND) {
    let again = best.faults;
    for (let step = 0; step < steps; step += 1) again = withNeighbours(model, again);
    if (again.size === 0 || again.size > LOCAL * model.bars.length) break;
    const kept = best.bars.map((notes, bar) => (again.has(bar) ? (request.kept[bar] ?? null) : notes));
    const { bars } = draftOf(openDesk({ ...request, kept }), seed + steps, LOOKS);
    const sketch = { heard: hearLine(model, bars), cost: 0, whole: 0, chance: 0 };
    const looked = desk.inspect(sketch, best.trouble);
    const found = looked && withFindings(desk, looked);
    // What its plan costs is not known here, so that stays what it was.
    if (found && found.trouble < best.trouble)
      best = { ...found, cost: best.cost - best.trouble + found.trouble };
  }
  return best;
}
