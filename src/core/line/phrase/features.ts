import { LETTERS, TICKS_PER_QUARTER } from '../../base';
import { phraseBookOf } from '../../feel';
import type { HeardLine } from '../hearing';
import { type BarModel, changesBetween, type LineModel } from '../model';
import { isHome, type Tone } from '../tones';

/**
 * What can be counted in a line, each with the reason why it should matter. Shares run from 0 to 1; a feature that
 * has nothing to count is 0. They are told from the notes alone, so a line written by hand has them as well.
 */
export const FEATURES = {
  ledByStep: 'share of chord changes whose first note is reached by a step or half step',
  ledByLeap: 'share of changes reached by a leap beyond a third that is no dominant',
  ledByTritone: 'share of changes reached by a tritone or a sixth and more',
  stuck: 'share of changes where the note before is the note after',
  stutter: 'share of changes before which a pitch is struck twice',
  uniformLeads: 'how far the commonest way into a bar exceeds half of all ways in',
  oneSided: 'how far arrivals come from one side only, beyond three in four',
  seamByStep: '1 where the last note lies a step from the first',
  seamPickup: '1 where the last beat holds two notes or one short one that lead round',
  lateRoot: 'share of new chords that do not begin with their bass note',
  seventhsHeard: 'share of seventh chords that sound their seventh',
  colourHeard: 'share of bars that sound a sixth or seventh',
  bare: 'share of bars of three notes or more that never sound the third',
  pasted: 'share of bars of the second half that are the first half’s over again',
  twins: 'share of bars that some earlier bar had note for note',
  alikeNeighbours: 'share of bars that are the bar before over again',
  rhythms: 'different rhythms a bar',
  signature: 'share of bars in the commonest rhythm or its head',
  figureReturns:
    'share of bars under one chord that have the commonest figure, transposed, its last beat apart',
  headReturns:
    'share of bars under one chord that begin with the commonest two moves in the commonest rhythm',
  rhymingEnds: '1 where the last two bars end on the same note',
  lastBarStuck: '1 where a pitch is struck three times in the last bar, in lines with other notes',
  leadingHome: '1 where the last note lies a half step under the first',
  doubled: 'share of notes that strike the note before once more',
  octaveHops: 'share of moves that are an octave',
  stops: 'share of bars of a walk that hold or rest for two beats',
  noBreath: '1 where no bar holds a note or rests for a beat and a half, in lines of four bars and more',
  breaths: 'share of bars that hold or rest for a beat and a half',
  topHeld: 'bars beyond the first that reach the highest note',
  topEarly: 'how early the highest note comes, before 45 % of the line',
  narrow: 'half steps that the range lacks of eleven, in octaves',
  wide: 'half steps that the range exceeds nineteen, in octaves',
  unturned: 'share of notes reached by a sixth or more that is not turned back',
  tritones: 'share of moves that are a tritone between chords or outside a diminished one',
  piledLeaps: 'share of moves that add a second leap of a fourth or more the same way',
  jolts: 'share of moves of more than an octave, or a seventh',
  longChromatic: 'share of notes outside the scale that last longer than an eighth',
  shortChromatic: 'share of notes outside the scale that last an eighth at most',
  seesaw: 'share of notes that go there and back between two pitches twice',
  scaleRuns: 'share of bars that only run down or up the scale',
  backToRoot: 'share of bars whose third beat is the first once more',
  onePitch: 'share of bars of two notes or more on one pitch',
  grinding: 'share of notes outside the chord that last a beat or more and are not entered and left by step',
  strongOutside: 'share of bars with a note outside the chord on a strong beat after the first',
  marked: 'share of notes that are the third equal one in a row',
  high: 'mean height above an octave over the lowest note of the range, in octaves',
  fuller: 'how much of the silence that the feel asks for is missing',
  crowded: 'share of bars without a rest or a long note beyond three quarters of them, in riffs',
} as const;

export type Feature = keyof typeof FEATURES;
export type FeatureVector = Readonly<Record<Feature, number>>;

const share = (part: number, whole: number): number => (whole === 0 ? 0 : part / whole);
const mod = (midi: number): number => ((midi % 12) + 12) % 12;
const inScale = (tone: Tone): boolean =>
  tone.member || tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval) === true;
const mostOf = (texts: readonly string[]): number => {
  const counts = new Map<string, number>();
  let most = 0;
  for (const text of texts) {
    const count = (counts.get(text) ?? 0) + 1;
    counts.set(text, count);
    most = Math.max(most, count);
  }
  return most;
};

interface Meeting {
  readonly last: Tone;
  readonly before: Tone | undefined;
  readonly first: Tone;
  readonly barLine: boolean;
}

/** Where one chord goes over into another, also in the middle of a bar and round the end. */
function changesOfLine(model: LineModel, heard: HeardLine): { changes: Meeting[]; joins: Meeting[] } {
  const changes: Meeting[] = [];
  const joins: Meeting[] = [];
  for (const bar of model.bars) {
    const tones = heard[bar.index] ?? [];
    tones.forEach((tone, index) => {
      const before = tones[index - 1];
      if (before && before.stretch !== tone.stretch)
        changes.push({ last: before, before: tones[index - 2], first: tone, barLine: false });
    });
    const last = tones.at(-1);
    for (const index of bar.after) {
      const next = model.bars[index];
      const first = heard[index]?.[0];
      if (!last || !next || !first) continue;
      const meeting = { last, before: tones.at(-2), first, barLine: true };
      joins.push(meeting);
      if (changesBetween(bar, next) && first.stretch?.chord) changes.push(meeting);
    }
  }
  return { changes, joins };
}

const rhythmOf = (tones: readonly Tone[]): string => tones.map(({ start }) => start).join(' ');
const textOf = (tones: readonly Tone[]): string =>
  tones.map(({ start, midi }) => `${start},${midi}`).join(' ');

function longestHold(tones: readonly Tone[], bar: BarModel): number {
  let longest = 0;
  let from = 0;
  for (const tone of tones) {
    longest = Math.max(longest, tone.duration, tone.start - from);
    from = tone.start + tone.duration;
  }
  return Math.max(longest, bar.ticks - from);
}

/** The height of a tone in steps of the staff. */
const staffOf = ({ midi, name }: Tone): number =>
  LETTERS.indexOf(name.letter) + 7 * Math.floor((midi - name.alteration) / 12);

/** A bar's rhythm and shape without its last beat, whatever chord it stands on; null where there is no shape. */
function figureOf(bar: BarModel, tones: readonly Tone[]): { whole: string; head: string } | null {
  const [first] = tones;
  if (!first || bar.stretches.length !== 1) return null;
  const kept = tones.filter(({ start }) => start < bar.ticks - bar.beat);
  if (kept.length < 2) return null;
  const text = (list: readonly Tone[]) =>
    list.map((tone) => `${tone.start}:${staffOf(tone) - staffOf(first)}`).join(' ');
  return { whole: text(kept), head: text(kept.slice(0, 3)) };
}

/** Counts all features of a line. */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one pass counts all features
export function featuresOf(model: LineModel, heard: HeardLine): FeatureVector {
  const bars = model.bars.filter((bar) => (heard[bar.index]?.length ?? 0) > 0);
  const lists = bars.map((bar) => heard[bar.index] ?? []);
  const flat = lists.flat();
  const count = bars.length;
  const { changes, joins } = changesOfLine(model, heard);
  const step = ({ last, first }: Meeting) => Math.abs(first.midi - last.midi);
  const dominant = ({ last, first }: Meeting) => mod(last.midi - first.midi) === 7;
  const walk = model.request.feel.silence.least === 0;

  const rhythms = lists.map(rhythmOf);
  const heads = lists.map((tones, index) => {
    const bar = bars[index];
    return rhythmOf(tones.filter((tone) => bar !== undefined && tone.start < bar.ticks - bar.beat));
  });
  const texts = lists.map(textOf);
  const figures = bars.flatMap((bar, index) => figureOf(bar, lists[index] ?? []) ?? []);
  const half = Math.floor(count / 2);
  let pasted = 0;
  for (let index = 0; index < half; index += 1) if (texts[index] === texts[index + half]) pasted += 1;
  const seen = new Set<string>();
  let twins = 0;
  for (const text of texts) {
    if (seen.has(text)) twins += 1;
    seen.add(text);
  }
  const time = bars.reduce((all, bar) => all + bar.ticks, 0);
  const silence = time - flat.reduce((all, tone) => all + tone.duration, 0);
  const breaths = bars.filter((bar, index) => longestHold(lists[index] ?? [], bar) >= bar.beat * 1.5).length;
  const stopped = bars.filter((bar, index) => longestHold(lists[index] ?? [], bar) >= bar.beat * 2).length;
  const full = bars.filter((bar, index) => longestHold(lists[index] ?? [], bar) < bar.beat).length;

  let top = 0;
  let bottom = flat.length > 0 ? 127 : 0;
  let whole = 0;
  for (const { midi } of flat) {
    top = Math.max(top, midi);
    bottom = Math.min(bottom, midi);
    whole += midi;
  }
  const topBars = lists.flatMap((tones, index) => (tones.some(({ midi }) => midi === top) ? [index] : []));
  const place = count > 1 ? (topBars[0] ?? 0) / (count - 1) : 1;

  let [unturned, tritones, piled, jolts, seesaw, marked, longC, shortC, grinding] = [
    0, 0, 0, 0, 0, 0, 0, 0, 0,
  ];
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one pass counts all features
  flat.forEach((tone, index) => {
    const before = flat[index - 1];
    const prior = flat[index - 2];
    const next = flat[index + 1] ?? flat[0];
    const beat = TICKS_PER_QUARTER;
    const move = before ? tone.midi - before.midi : 0;
    const size = Math.abs(move);
    const onward = next ? next.midi - tone.midi : 0;
    if (size >= 8 && size !== 12 && onward * move > 0) unturned += 1;
    if (size === 6 && !(tone.member && before?.member && tone.stretch === before.stretch)) tritones += 1;
    if (
      prior &&
      before &&
      size >= 5 &&
      Math.abs(before.midi - prior.midi) >= 5 &&
      move * (before.midi - prior.midi) > 0
    )
      piled += 1;
    if (size > 12 || size === 10 || size === 11) jolts += 1;
    const older = flat[index - 3];
    if (
      older &&
      prior &&
      before &&
      prior.midi === tone.midi &&
      older.midi === before.midi &&
      size > 0 &&
      size !== 12
    )
      seesaw += 1;
    if (before?.midi === tone.midi && prior?.midi === tone.midi) marked += 1;
    if (tone.stretch?.chord && !inScale(tone)) {
      if (tone.duration > beat / 2) longC += 1;
      else shortC += 1;
    }
    if (tone.stretch?.chord && !tone.member && tone.duration >= beat && (size > 2 || Math.abs(onward) > 2))
      grinding += 1;
  });

  const sevenths = bars.flatMap((bar, index) =>
    bar.stretches.flatMap((stretch) => {
      const seventh = [9, 10, 11].find(
        (at) => stretch.members[at] && stretch.steps[6]?.member && stretch.steps[6].halfSteps === at,
      );
      if (!stretch.chord || seventh === undefined) return [];
      return [
        (lists[index] ?? []).some((tone) => tone.stretch === stretch && tone.interval === seventh) ? 1 : 0,
      ];
    }),
  );
  const moves = (tones: readonly Tone[]): readonly number[] =>
    tones.slice(1).map((tone, index) => tone.midi - (tones[index]?.midi ?? tone.midi));
  const lastTone = flat.at(-1);
  const firstTone = flat[0];
  const lastBar = bars.at(-1);
  const lastNotes = lists.at(-1) ?? [];
  const inLastBeat = lastBar ? lastNotes.filter(({ start }) => start >= lastBar.ticks - lastBar.beat) : [];
  const arrivals = joins.filter((meeting) => step(meeting) > 0);
  const ups = arrivals.filter(({ last, first }) => first.midi > last.midi).length;
  const mean = flat.length > 0 ? whole / flat.length : 0;
  const opens = bars.flatMap((bar, index) =>
    bar.stretches.flatMap((stretch, at) => {
      const fresh =
        at > 0 ||
        bar.before.some((other) => {
          const before = model.bars[other];
          return before !== undefined && changesBetween(before, bar);
        });
      const first = (lists[index] ?? []).find((tone) => tone.stretch === stretch);
      return stretch.chord && fresh && first ? [isHome(first) ? 0 : 1] : [];
    }),
  );
  const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

  return {
    ledByStep: share(changes.filter((one) => step(one) === 1 || step(one) === 2).length, changes.length),
    ledByLeap: share(changes.filter((one) => step(one) > 4 && !dominant(one)).length, changes.length),
    ledByTritone: share(
      changes.filter((one) => step(one) === 6 || (step(one) > 7 && step(one) !== 12)).length,
      changes.length,
    ),
    stuck: share(changes.filter((one) => step(one) === 0).length, changes.length),
    stutter: share(changes.filter((one) => one.before?.midi === one.last.midi).length, changes.length),
    uniformLeads:
      arrivals.length >= 4
        ? Math.max(
            0,
            share(mostOf(arrivals.map(({ last, first }) => `${first.midi - last.midi}`)), arrivals.length) -
              0.5,
          )
        : 0,
    oneSided: arrivals.length >= 4 ? Math.max(0, Math.abs(share(ups, arrivals.length) - 0.5) - 0.25) : 0,
    seamByStep: lastTone && firstTone && [1, 2].includes(Math.abs(lastTone.midi - firstTone.midi)) ? 1 : 0,
    seamPickup:
      inLastBeat.length >= 2 ||
      (inLastBeat.length === 1 && (inLastBeat[0]?.duration ?? 0) < (lastBar?.beat ?? 0))
        ? 1
        : 0,
    lateRoot: share(sum(opens), opens.length),
    seventhsHeard: share(sum(sevenths), sevenths.length),
    colourHeard: share(lists.filter((tones) => tones.some(({ interval }) => interval >= 9)).length, count),
    bare: share(
      lists.filter(
        (tones) => tones.length >= 3 && tones.every(({ interval }) => interval !== 3 && interval !== 4),
      ).length,
      count,
    ),
    pasted: share(pasted, half),
    twins: share(twins, count),
    alikeNeighbours: share(
      texts.filter((text, index) => index > 0 && text === texts[index - 1]).length,
      count,
    ),
    rhythms: share(new Set(rhythms).size, Math.max(4, count)),
    signature: share(mostOf(heads), count),
    figureReturns: share(mostOf(figures.map(({ whole }) => whole)), figures.length),
    headReturns: share(mostOf(figures.map(({ head }) => head)), figures.length),
    rhymingEnds: count > 1 && lists.at(-2)?.at(-1)?.midi === lastTone?.midi ? 1 : 0,
    lastBarStuck: mostOf(lastNotes.map(({ midi }) => `${midi}`)) >= 3 ? 1 : 0,
    leadingHome: lastTone && firstTone && firstTone.midi - lastTone.midi === 1 ? 1 : 0,
    doubled: share(
      flat.filter((tone, index) => index > 0 && tone.midi === flat[index - 1]?.midi).length,
      flat.length,
    ),
    octaveHops: share(
      flat.filter((tone, index) => index > 0 && Math.abs(tone.midi - (flat[index - 1]?.midi ?? 0)) === 12)
        .length,
      flat.length,
    ),
    stops: phraseBookOf(model.request.feel.id).manner === 'walk' ? share(stopped, count) : 0,
    noBreath: count >= 4 && breaths === 0 ? 1 : 0,
    breaths: share(breaths, count),
    topHeld: topBars.length > 1 ? topBars.length - 1 : 0,
    topEarly: count >= 4 ? Math.max(0, 0.45 - place) : 0,
    narrow: count >= 2 ? Math.max(0, 11 - (top - bottom)) / 12 : 0,
    wide: Math.max(0, top - bottom - 19) / 12,
    unturned: share(unturned, flat.length),
    tritones: share(tritones, flat.length),
    piledLeaps: share(piled, flat.length),
    jolts: share(jolts, flat.length),
    longChromatic: share(longC, flat.length),
    shortChromatic: share(shortC, flat.length),
    seesaw: share(seesaw, flat.length),
    scaleRuns: share(
      lists.filter((tones) => {
        const all = moves(tones);
        return (
          all.length >= 3 &&
          Math.abs(sum(all.map(Math.sign))) === all.length &&
          all.every((move) => Math.abs(move) <= 2)
        );
      }).length,
      count,
    ),
    backToRoot: share(
      bars.filter((bar, index) => {
        const tones = lists[index] ?? [];
        const three = tones.find(({ start }) => start === 2 * bar.beat);
        return (
          walk &&
          bar.stretches.length === 1 &&
          three !== undefined &&
          three.midi === tones[0]?.midi &&
          tones.length >= 3
        );
      }).length,
      count,
    ),
    onePitch: share(
      lists.filter((tones) => tones.length > 1 && tones.every(({ midi }) => midi === tones[0]?.midi)).length,
      count,
    ),
    grinding: share(grinding, flat.length),
    strongOutside: share(
      bars.filter((bar, index) =>
        (lists[index] ?? []).some(
          (tone) => tone.stretch?.chord && !tone.member && tone.start > 0 && tone.start === bar.ticks / 2,
        ),
      ).length,
      count,
    ),
    marked: share(marked, flat.length),
    high: Math.max(0, mean - bottom - 12) / 12,
    fuller: Math.max(0, model.request.feel.silence.least - share(silence, time)),
    crowded: walk ? 0 : Math.max(0, share(full, count) - 0.75),
  };
}
