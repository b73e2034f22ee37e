import { fieldTable, sameFields } from '../base';
import { sameKey } from '../theory';
import { statementOf } from './claims';
import type { Stretch } from './harmony';
import type { Hearing } from './hearing';
import { type BarModel, barNumber, type LineModel } from './model';

/* Which bars of a line stand as they stood before: by their sound, and by the bars around them. */

/** What of a stretch the analysis of its notes reads; what is asked of a line is no part of it. */
const READ_OF_STRETCH = fieldTable<Stretch>()({
  index: true,
  start: true,
  end: true,
  label: true,
  chord: true,
  unknown: true,
  // Told apart by tonic and mode.
  key: false,
  // These follow from the chord.
  rootClass: false,
  homeClass: false,
  home: false,
  members: false,
  demands: false,
  // Without a chord there are none, in a list of its own.
  steps: false,
  keySteps: false,
});

const sameSteps = (one: Stretch, other: Stretch): boolean =>
  one.chord === null || (one.steps === other.steps && one.keySteps === other.keySteps);

const sameStretch = (one: Stretch, other: Stretch): boolean =>
  sameFields(READ_OF_STRETCH, one, other) && sameKey(one.key, other.key) && sameSteps(one, other);

/** Whether two bars have the same chords, whatever stands around them. */
const sameChords = (one: BarModel, other: BarModel): boolean =>
  one.stretches.length === other.stretches.length &&
  one.stretches.every((stretch, index) => {
    const against = other.stretches[index];
    return stretch.label === against?.label && stretch.end === against.end;
  });

/** Whether a note is heard alike in two bars, as far as they themselves tell. */
const sameBar = (one: BarModel, other: BarModel): boolean =>
  one.metre.count === other.metre.count &&
  one.metre.unit === other.metre.unit &&
  one.pickup === other.pickup &&
  one.opensSection === other.opensSection &&
  one.stretches.length === other.stretches.length &&
  one.stretches.every((stretch, index) => {
    const against = other.stretches[index];
    return against !== undefined && sameStretch(stretch, against);
  });

/** Whether a bar of a line before sounds as one does now. */
function soundsAlike(before: Hearing, was: number, now: Hearing, is: number): boolean {
  const [tones, others] = [before.heard[was], now.heard[is]];
  if (before.model === now.model) return tones === others;
  const [one, other] = [before.model.bars[was], now.model.bars[is]];
  return (
    one !== undefined &&
    other !== undefined &&
    before.line[was] === now.line[is] &&
    tones?.[0]?.held === others?.[0]?.held &&
    sameBar(one, other)
  );
}

/**
 * For each bar of a line before, its place now; null where it is gone or sounds otherwise. Bars before the first that has
 * other chords kept their places, those behind it moved by as many bars as came or went.
 */
export function placesNow(before: Hearing, now: Hearing): readonly (number | null)[] {
  const [was, is] = [before.model.bars, now.model.bars];
  const shift = is.length - was.length;
  const cut =
    shift === 0
      ? was.length
      : was.findIndex((bar, index) => {
          const against = is[index];
          return against === undefined || !sameChords(bar, against);
        });
  return was.map((_, index) => {
    const place = cut < 0 || index < cut ? index : index + shift;
    const taken = cut >= 0 && index >= cut && place < cut;
    return !taken && soundsAlike(before, index, now, place) ? place : null;
  });
}

/** Whether the same bars as before can sound beside a bar at its place now, and the same one begins its section. */
export function standsAlike(
  before: LineModel,
  was: number,
  now: LineModel,
  places: readonly (number | null)[],
): boolean {
  const is = places[was] ?? -1;
  const [one, other] = [before.bars[was], now.bars[is]];
  const moved = (bars: readonly number[] = [], others: readonly number[] = []) =>
    bars.length === others.length && bars.every((bar, index) => places[bar] === others[index]);
  return (
    moved(one?.before, other?.before) &&
    moved(one?.after, other?.after) &&
    places[statementOf(before, was)] === statementOf(now, is)
  );
}

/** Whether bars have the same numbers at their places now. */
export const sameNumbers = (
  before: LineModel,
  bars: Iterable<number>,
  now: LineModel,
  places: readonly (number | null)[],
): boolean => [...bars].every((bar) => barNumber(before, bar) === barNumber(now, places[bar] ?? -1));
