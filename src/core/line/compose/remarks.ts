import { barNames, listed } from '../../base';
import { hearLine, isSilentOnOne } from '../hearing';
import { type BarModel, barHeading, barNumber, barPhrase, changesAtStart, type LineModel } from '../model';
import { barBreaches, findBreaches } from '../rules/check';
import { isHome } from '../tones';
import type { AimMiss, Breach, ComposeRequest, LineNotes } from '../types';
import { unheardRemarks } from './aim-misses';

/** Where nothing is composed, and nothing that was kept is heard either. */
function restRemark(model: LineModel, line: LineNotes, bar: BarModel): string[] {
  const place = barHeading(model, bar.index);
  const rests = ({ start, end }: { readonly start: number; readonly end: number }) =>
    (line[bar.index] ?? []).every((note) => note.start >= end || note.start + note.duration <= start);
  const unknown = bar.stretches.find((stretch) => stretch.unknown !== null && rests(stretch));
  if (unknown)
    return [`${place}: the chord “${unknown.unknown}” is not understood, so the bass rests under it.`];
  const isWithout = !bar.playable && bar.stretches.every((stretch) => stretch.unknown === null);
  return isWithout && rests({ start: 0, end: bar.ticks })
    ? [`${place} has no chord, so the bass rests.`]
    : [];
}

function fretRemarks(model: LineModel, line: LineNotes): string[] {
  const heard = hearLine(model, line);
  const high = model.bars.filter((bar) =>
    (heard[bar.index] ?? []).some((tone) => model.neck.beyond.has(tone.midi % 12)),
  );
  const numbers = high.map((bar) => barNumber(model, bar.index));
  return numbers.length === 0
    ? []
    : [
        `A note in ${barNames([...new Set(numbers)])} lies beyond fret ${model.limits.highestFret}, the last of this level.`,
      ];
}

/** Where roots alone leave no other way than a tritone into the next chord. */
function tritoneRemarks(model: LineModel, line: LineNotes): string[] {
  if (model.request.level > 1) return [];
  const heard = hearLine(model, line);
  return model.bars.flatMap((bar) => {
    const last = heard[bar.index]?.at(-1);
    const leaps = bar.after.some((index) => {
      const first = heard[index]?.[0];
      return (
        last !== undefined &&
        first !== undefined &&
        isHome(last) &&
        isHome(first) &&
        Math.abs(first.midi - last.midi) === 6
      );
    });
    return leaps
      ? [
          `${barHeading(model, bar.index)}: the roots lie a tritone apart, and this level knows no way round it.`,
        ]
      : [];
  });
}

/** Where a tick leaves beat one of a new chord empty in a feel that sounds it. */
function silentOneRemarks(model: LineModel, line: LineNotes): string[] {
  const { feel } = model.request;
  if (feel.bassRole.mayRestOnOne) return [];
  const heard = hearLine(model, line);
  const silent = model.bars.filter((bar) => {
    const tones = heard[bar.index] ?? [];
    const allowed = bar.demands.freedoms.has('silent beat one');
    return allowed && bar.playable && tones.length > 0 && isSilentOnOne(tones) && changesAtStart(model, bar);
  });
  if (silent.length === 0) return [];
  const bars = [...new Set(silent.map((bar) => barPhrase(model, bar.index)))];
  return [
    `Beat one is silent in ${listed(bars)}, as it is asked for; ${feel.name.toLowerCase()} gives a new chord its beat one otherwise.`,
  ];
}

/** Where a bar that is kept is why a rule is broken in it, on the way into it or out of it. */
function becauseKept(
  { kept, ...request }: ComposeRequest,
  model: LineModel,
  line: LineNotes,
  breach: Breach,
): string {
  const isKept = (bar: number) => (kept[bar]?.length ?? 0) > 0;
  const { bar, rule } = breach;
  const alone = barBreaches(request, line, bar).some((each) => each.rule === rule);
  if (alone) return isKept(bar) ? ` ${barHeading(model, bar)} is kept as it is.` : '';
  const next = model.bars[bar]?.after.find(isKept);
  if (isKept(bar) === (next !== undefined)) return '';
  const way = next === undefined ? `out of ${barPhrase(model, bar)}` : `into ${barPhrase(model, next)}`;
  return ` There is no better way ${way}, which is kept as it is.`;
}

/** What could not be done in a composed line, in sentences with the bar's number. */
export function remarksFor(
  request: ComposeRequest,
  model: LineModel,
  line: LineNotes,
  misses: readonly AimMiss[],
): readonly string[] {
  const breaches = findBreaches(model, hearLine(model, line));
  return [
    ...model.bars.flatMap((bar) => restRemark(model, line, bar)),
    ...misses.map(({ message, nearest }) => `${message} ${nearest}`),
    ...unheardRemarks(model, line),
    ...fretRemarks(model, line),
    ...tritoneRemarks(model, line),
    ...silentOneRemarks(model, line),
    ...breaches.map((breach) => breach.message + becauseKept(request, model, line, breach)),
  ];
}
