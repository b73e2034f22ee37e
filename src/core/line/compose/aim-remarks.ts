import { analyseBar } from '../analysis';
import { aimsIn, inReach } from '../demands';
import { type HeardLine, hearLine, silenceOf, struck } from '../hearing';
import { type BarModel, barNumber, type LineModel } from '../model';
import type { Aim, LineNotes, Technique } from '../types';

/** What one aim misses in one bar, as the end of a sentence; null when it is kept. */
function missed(heard: HeardLine, bar: BarModel, aim: Aim, shown: readonly Technique[]): string | null {
  const tones = heard[bar.index] ?? [];
  const lacking = aim.where.kind === 'bar' ? (aim.wanted ?? []).filter((one) => !shown.includes(one)) : [];
  if (lacking.length > 0) return `cannot show ${lacking.join(' and ')} with this chord, level and range`;
  const shownAnyway = (aim.forbidden ?? []).filter((one) => shown.includes(one));
  if (shownAnyway.length > 0) return `cannot do without ${shownAnyway.join(' and ')}`;
  const beats = bar.ticks / bar.beat;
  const count = struck(tones).length;
  if (aim.density === 'sparse' && count >= beats) return 'has no rhythm with fewer notes at this level';
  if (aim.density === 'busy' && count <= beats)
    return 'has no rhythm with more notes at this level and tempo';
  const silence = silenceOf(tones, bar.ticks).whole / bar.ticks;
  if (silence < (aim.silence ?? 0)) return 'has no rhythm with so much silence';
  const { reach } = bar.demands;
  const outside = tones.some(({ midi }) => midi < (aim.lowest ?? 0) || midi > (aim.highest ?? 127));
  if (outside || bar.demands.reachYields)
    return 'has no root in the range and position asked for, so it leaves them';
  return aim.position !== undefined && tones.some(({ midi }) => !inReach(reach, midi))
    ? 'leaves the hand position'
    : null;
}

/** Techniques that an aim wants from a line or section and that none of its bars shows. */
function neverShown(model: LineModel, aim: Aim, shown: readonly (readonly Technique[])[]): readonly string[] {
  if (aim.where.kind === 'bar') return [];
  const bars = model.bars.filter((bar) => aimsIn(model.request, bar.index).includes(aim));
  const lacking = (aim.wanted ?? []).filter(
    (technique) => !bars.some((bar) => shown[bar.index]?.includes(technique)),
  );
  const place = aim.where.kind === 'line' ? 'The line' : `Section ${aim.where.section + 1}`;
  return lacking.map((technique) => `${place} has no bar that can show ${technique} at this level.`);
}

/** Which bar cannot keep which aim; the composer offers the nearest it has. Kept bars are the teacher's own. */
export function aimRemarks(model: LineModel, line: LineNotes): readonly string[] {
  const aims = model.request.aims ?? [];
  if (aims.length === 0) return [];
  const heard = hearLine(model, line);
  const shown = model.bars.map((bar) => analyseBar(model, heard, bar.index).techniques);
  const single = model.bars
    .filter((bar) => bar.playable)
    .flatMap((bar) =>
      aimsIn(model.request, bar.index).flatMap((aim) => {
        const what = missed(heard, bar, aim, shown[bar.index] ?? []);
        return what === null ? [] : [`Bar ${barNumber(model, bar.index)} ${what}.`];
      }),
    );
  return [...new Set([...single, ...aims.flatMap((aim) => neverShown(model, aim, shown))])];
}
