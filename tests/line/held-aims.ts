import { barTicks, beatTicks, COMMON_TIME, type LineNote, midiNumber, midiOf } from '../../src/core/base';
import { placesOf } from '../../src/core/fretboard';
import type { Aim, ComposeRequest, Technique } from '../../src/core/line';

/** The bars in which an aim holds, by the request's own words. */
export const barsOf = (asked: ComposeRequest, { where }: Aim): readonly number[] =>
  asked.chart.bars.flatMap((bar, index) =>
    bar.spans.some(({ harmony }) => harmony.kind === 'chord') &&
    (where.kind === 'line' || (where.kind === 'bar' ? where.bar === index : bar.section === where.section))
      ? [index]
      : [],
  );

/** Everything an aim asks that a bar does not do, read from its notes and their analysis. */
export function brokenIn(
  asked: ComposeRequest,
  aim: Aim,
  notes: readonly LineNote[],
  techniques: readonly Technique[],
  bar: number,
): readonly string[] {
  const metre = asked.chart.bars[bar]?.metre ?? COMMON_TIME;
  const beats = barTicks(metre) / beatTicks(metre);
  const silent = 1 - notes.reduce((sum, note) => sum + note.duration, 0) / barTicks(metre);
  const midis = notes.map((note) => midiOf(note.pitch));
  const { position } = aim;
  const inPosition = (midi: number) =>
    placesOf(midiNumber(midi), asked.instrument).some(
      (place) => place.fret === 0 || (place.fret >= (position ?? 0) && place.fret <= (position ?? 0) + 3),
    );
  return [
    ...(aim.where.kind === 'bar' ? (aim.wanted ?? []).filter((one) => !techniques.includes(one)) : []),
    ...(aim.forbidden ?? []).filter((one) => techniques.includes(one)),
    ...(aim.density === 'sparse' && notes.length >= beats ? ['sparse'] : []),
    ...(aim.density === 'busy' && notes.length <= beats ? ['busy'] : []),
    ...(silent < (aim.silence ?? 0) ? ['silence'] : []),
    ...(midis.some((midi) => midi < (aim.lowest ?? 0) || midi > (aim.highest ?? 127)) ? ['range'] : []),
    ...(position !== undefined && !midis.every(inPosition) ? ['position'] : []),
  ];
}
