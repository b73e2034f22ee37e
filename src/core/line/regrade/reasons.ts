import { type SpelledName, unreachable } from '../../base';
import type { Chord } from '../../theory';
import { isBeyondLevel } from '../bar-findings';
import { hearLine, hearWith, struck } from '../hearing';
import { notesPerSecond, rhythmLevelIn } from '../level';
import { barPhrase, chordText, type LineModel, nameText } from '../model';
import { findBreaches, wordsOfRule } from '../rules/check';
import type { RuleNumber } from '../rules/numbers';
import type { Tone } from '../tones';
import type { Level, LineNotes } from '../types';

/** Why a bar of a regraded line is another one. */
export type RegradeReason =
  | { readonly kind: 'rhythm'; readonly level: Level; readonly gained: boolean }
  | { readonly kind: 'speed'; readonly perSecond: number; readonly allowed: number; readonly gained: boolean }
  | { readonly kind: 'step'; readonly name: SpelledName; readonly chord: Chord; readonly gained: boolean }
  | { readonly kind: 'fret'; readonly name: SpelledName; readonly fret: number; readonly gained: boolean }
  | { readonly kind: 'rule'; readonly rule: RuleNumber; readonly bar: number }
  /** It keeps the rhythm of the bars that had its rhythm before, or leads into a bar that is another one now. */
  | { readonly kind: 'alike' };

interface Changed {
  readonly model: LineModel;
  /** The level below, where the line became harder. */
  readonly below: LineModel | null;
  readonly line: LineNotes;
  readonly bars: LineNotes;
  readonly bar: number;
}

/** What of a bar's notes is beyond the level of a model. */
function beyond(
  model: LineModel,
  bar: number,
  tones: readonly Tone[],
  gained: boolean,
): readonly RegradeReason[] {
  const there = model.bars[bar];
  if (there === undefined) return [];
  const { feel, level, tempo } = model.request;
  const rhythm = rhythmLevelIn(tones, there.metre, feel.bassRole);
  const perSecond = notesPerSecond(struck(tones).length, there.metre, tempo);
  const allowed = model.limits.notesPerSecond;
  const named = new Set<string>();
  const notes = tones.flatMap((tone): readonly RegradeReason[] => {
    const { name, midi, stretch } = tone;
    const id = `${name.letter}${name.alteration} ${stretch?.label}`;
    if (named.has(id)) return [];
    named.add(id);
    if (stretch?.chord && isBeyondLevel(model, tone))
      return [{ kind: 'step', name, chord: stretch.chord, gained }];
    return model.neck.onNeck[midi] === true
      ? []
      : [{ kind: 'fret', name, fret: model.neck.highestFret, gained }];
  });
  return [
    ...(rhythm > level ? [{ kind: 'rhythm', level: rhythm, gained } as const] : []),
    ...(perSecond > allowed ? [{ kind: 'speed', perSecond, allowed, gained } as const] : []),
    ...notes,
  ];
}

/** Why a bar is another one: what was beyond the level, what is new in it, or the rule that its own notes would break now. */
export function reasonsOf({ model, below, line, bars, bar }: Changed): readonly RegradeReason[] {
  const before = hearLine(model, line)[bar] ?? [];
  const heard = hearLine(model, bars);
  const lost = beyond(model, bar, before, false);
  const gained = below === null ? [] : beyond(below, bar, heard[bar] ?? [], true);
  if (lost.length + gained.length > 0) return [...lost, ...gained];
  const restored = findBreaches(model, hearWith(model, heard, bar, line[bar] ?? []));
  const known = findBreaches(model, heard);
  const broken = restored.filter(
    ({ rule, bar: where }) => !known.some((each) => each.rule === rule && each.bar === where),
  );
  if (broken.length > 0) return broken.map(({ rule, bar: where }) => ({ kind: 'rule', rule, bar: where }));
  return [{ kind: 'alike' }];
}

/** A reason as a sentence, in the note names of the request. */
export function regradeSentence(model: LineModel, reason: RegradeReason): string {
  const { level } = model.request;
  switch (reason.kind) {
    case 'rhythm':
      return reason.gained
        ? `Its rhythm is one of level ${reason.level} now.`
        : `Its rhythm was one of level ${reason.level}.`;
    case 'speed':
      return reason.gained
        ? `It has ${reason.perSecond.toFixed(1)} notes a second now; the level below has ${reason.allowed} at most.`
        : `It had ${reason.perSecond.toFixed(1)} notes a second; level ${level} has ${reason.allowed} at most.`;
    case 'step': {
      const what = `${nameText(model, reason.name)} over ${chordText(model, reason.chord)}`;
      return reason.gained
        ? `${what} comes with level ${level}.`
        : `${what} comes later than level ${level}.`;
    }
    case 'fret':
      return reason.gained
        ? `${nameText(model, reason.name)} lies beyond fret ${reason.fret}, the last of the level below.`
        : `${nameText(model, reason.name)} lies beyond fret ${reason.fret}, the last of level ${level}.`;
    case 'rule': {
      const { heard } = wordsOfRule(reason.rule);
      return `As it was, ${heard} in ${barPhrase(model, reason.bar)}.`;
    }
    case 'alike':
      return 'It goes with the bars around it, which are other ones now.';
    default:
      return unreachable(reason);
  }
}
