import type { BarBox, PlayheadPlace, PlayheadSpan, ScoreLayout, SystemLayout } from './types';

/** How far the playhead reaches over the staff and under the tab, a staff space being 10: the words stand farther off. */
const BEYOND = 5;

/** Top and bottom of the playhead in CSS pixels from the system's top: it runs through the music and strikes no word. */
export function playheadSpan({
  staff,
  tab,
  scale,
}: Pick<SystemLayout, 'staff' | 'tab' | 'scale'>): PlayheadSpan {
  const beyond = BEYOND * scale;
  return { top: staff.top - beyond, bottom: tab.bottom + beyond };
}

/**
 * Where the playhead stands at a moment of a written bar, gliding evenly from note to note.
 * @param bar index of the written bar, from 0
 * @param tick ticks from the bar's beginning, swing already taken out
 * @returns null for a bar that is not in the score
 */
export function playheadX(layout: ScoreLayout, bar: number, tick: number): PlayheadPlace | null {
  for (const system of layout.systems) {
    const box = system.bars.find((candidate) => candidate.bar === bar);
    if (box) return { system: system.index, x: xInBar(box, tick) };
  }
  return null;
}

function xInBar(box: BarBox, tick: number): number {
  const [first] = box.positions;
  if (!first || tick <= first.tick) return first?.x ?? box.x;
  let before = first;
  for (const after of box.positions) {
    if (after.tick > tick) {
      const share = (tick - before.tick) / (after.tick - before.tick);
      return before.x + share * (after.x - before.x);
    }
    before = after;
  }
  return before.x;
}
