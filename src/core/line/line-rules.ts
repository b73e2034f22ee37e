import { beatTicks, TICKS_PER_QUARTER } from '../base';
import { entryOf, exitOf, leadsHome, meetingBreaches, ruleBit, rulesIn, soloBreaches } from './bar-rules';
import { type Change, changesOf } from './changes';
import { type HeardLine, hearLine, isSilentOnOne, struck } from './hearing';
import { type BarModel, barNumber, type LineModel, modelOf } from './model';
import { isHome, type Tone } from './tones';
import type { Breach, LineNotes, LineRequest } from './types';

/** What is heard when a rule is broken, and what mends it. */
const MESSAGES: Readonly<Record<number, string>> = {
  1: 'a long note outside the chord is reached or left by a leap; enter and leave it by step',
  2: 'a fourth or a third of the wrong kind stands out against the chord; take the chord’s own third',
  3: 'the leading tone of the minor key is missing or meets the sixth in an augmented second; raise the seventh and go round the sixth',
  4: 'a seventh or a leading tone does not resolve; let the seventh fall and the leading tone rise by step',
  5: 'a tritone leap into the new chord; reach the root by step, fourth or fifth',
  6: 'the next root sounds before the bar line and is struck again on one; lead into it with another note',
  7: 'a run breaks off into another register; let it land by step',
  8: 'leaps in one direction go beyond an octave; turn back by step',
  9: 'beat one is silent where the ear needs it, or two chord changes pass without their root; put the root on one',
  10: 'the line neither closes on its root nor leads back to the start; end on 2, 3, 5 or 7',
  11: 'chords begin with their fifth below twice within four bars; begin with the root',
  12: 'one note is struck more than four times, or a bar has more than twice the notes of its neighbour; even it out',
  13: 'no rhythm is shared by half of the bars, or a figure goes on unchanged for more than eight; keep one rhythm and vary the turn',
  14: 'the bass leaves beat three empty in most bars or only doubles the chops; sound on three',
  15: 'a note rings on into a chord it does not belong to; end it at the change',
};

type Place = readonly [rule: number, bar: number];

const isBroken = (bits: number): boolean => bits !== 0;

function barPlaces(model: LineModel, heard: HeardLine): Place[] {
  const places: Place[] = [];
  for (const bar of model.bars) {
    const tones = heard[bar.index] ?? [];
    for (const rule of rulesIn(soloBreaches(model, bar, tones))) places.push([rule, bar.index]);
    const exit = exitOf(tones);
    for (const index of bar.after) {
      const next = model.bars[index];
      const entry = entryOf(heard[index] ?? []);
      if (!exit || !next || !entry) continue;
      for (const rule of rulesIn(meetingBreaches(model, bar, exit, next, entry)))
        places.push([rule, bar.index]);
    }
  }
  return places;
}

const hasHomeOn = (tones: readonly Tone[], tick: number): boolean =>
  tones.some((tone) => tone.start === tick && isHome(tone));

function barsNear(model: LineModel, near?: ReadonlySet<number>): readonly BarModel[] {
  if (!near) return model.bars;
  return [...near].flatMap((index) => model.bars[index] ?? []);
}

/** Whether beat one may be asked for at all: a bar that begins without a chord may begin empty. */
const expectsOne = (bar: BarModel): boolean =>
  bar.stretches[0]?.chord !== null && bar.stretches[0] !== undefined;

/** @param near the bars that are asked about; all when left out */
function downbeatPlaces(model: LineModel, heard: HeardLine, near?: ReadonlySet<number>): Place[] {
  const places: Place[] = [];
  const silent = (bar: BarModel) => expectsOne(bar) && isSilentOnOne(heard[bar.index] ?? []);
  for (const bar of barsNear(model, near)) {
    if (!silent(bar)) continue;
    const running = bar.before.some((index) => {
      const before = model.bars[index];
      return before !== undefined && silent(before);
    });
    if (bar.opensSection || running) places.push([9, bar.index]);
  }
  const changes = changesOf(model);
  changes.forEach((change, place) => {
    const before = changes[(place + changes.length - 1) % changes.length];
    if (!before || changes.length < 2 || near?.has(change.bar.index) === false) return;
    const lacks = ({ bar, stretch }: Change) => !hasHomeOn(heard[bar.index] ?? [], stretch.start);
    if (lacks(before) && lacks(change)) places.push([9, change.bar.index]);
  });
  return places;
}

function closingPlaces(model: LineModel, heard: HeardLine): Place[] {
  const index = model.order.at(-1);
  const last = index === undefined ? undefined : heard[index]?.at(-1);
  if (index === undefined || !last || model.request.level === 0) return [];
  const start = model.bars[model.order[0] ?? 0]?.stretches[0] ?? null;
  return isHome(last) || last.interval === 0 || leadsHome(last, start) ? [] : [[10, index]];
}

/** A change that begins with the chord's fifth under its root. */
function beginsOnFifthBelow(tones: readonly Tone[], { stretch }: Change): boolean {
  const inside = tones.filter((tone) => tone.stretch === stretch);
  const first = inside[0];
  if (!first?.member || isHome(first) || first.interval < 6 || first.interval > 8) return false;
  const root = inside.find((tone) => tone.interval === 0);
  return root === undefined || root.midi > first.midi;
}

function fifthPlaces(model: LineModel, heard: HeardLine): Place[] {
  const places: Place[] = [];
  let last = Number.NEGATIVE_INFINITY;
  let label = '';
  model.order.forEach((index, played) => {
    const bar = model.bars[index];
    if (!bar) return;
    for (const stretch of bar.stretches) {
      const begins = stretch.label !== label && beginsOnFifthBelow(heard[index] ?? [], { bar, stretch });
      if (begins && played - last < 4) places.push([11, index]);
      if (begins) last = played;
      label = stretch.label;
    }
  });
  return places;
}

const onsetCount = (tones: readonly Tone[]): number => struck(tones).length;

/** Whether two bars' numbers of notes stay within two to one; empty bars are left out. */
export const isEvenWith = (one: number, other: number): boolean =>
  one === 0 || other === 0 || Math.max(one, other) <= 2 * Math.min(one, other);

/** Whether neighbours are even; a pickup, a part of a bar only, is not held against a whole one. */
export const areEven = (one: BarModel, notes: number, next: BarModel | undefined, others: number): boolean =>
  one.pickup || next === undefined || next.pickup || isEvenWith(notes, others);

function evennessPlaces(model: LineModel, heard: HeardLine, near?: ReadonlySet<number>): Place[] {
  return barsNear(model, near).flatMap((bar): Place[] => {
    const count = onsetCount(heard[bar.index] ?? []);
    const uneven = bar.before.some(
      (index) => !areEven(bar, count, model.bars[index], onsetCount(heard[index] ?? [])),
    );
    return uneven ? [[12, bar.index]] : [];
  });
}

/** The onsets of a bar without its last beat: what a rhythm keeps when only its tail changes. */
function headOf(bar: BarModel, tones: readonly Tone[]): string {
  const tail = bar.ticks - beatTicks(bar.metre);
  const starts = tones.flatMap((tone) => (tone.start < tail ? [tone.start] : []));
  return `${bar.ticks}: ${starts.join(' ')}`;
}

function sharedRhythmPlaces(model: LineModel, heard: HeardLine): Place[] {
  return model.request.chart.sections.flatMap((section): Place[] => {
    const heads = model.bars
      .slice(section.start, section.start + section.length)
      .filter((bar) => (heard[bar.index]?.length ?? 0) > 0)
      .map((bar) => headOf(bar, heard[bar.index] ?? []));
    const most = Math.max(0, ...heads.map((head) => heads.filter((other) => other === head).length));
    return most * 2 < heads.length ? [[13, section.start]] : [];
  });
}

const textOf = (tones: readonly Tone[]): string =>
  tones.map((tone) => `${tone.start},${tone.duration},${tone.midi}`).join(' ');

/** Figures of one, two or four bars that go on unchanged for more than eight. */
function unchangedPlaces(model: LineModel, heard: HeardLine): Place[] {
  const texts = model.bars.map((bar) => textOf(heard[bar.index] ?? []));
  return [1, 2, 4].flatMap((period): Place[] => {
    let same = 0;
    return texts.flatMap((text, index): Place[] => {
      same = text !== '' && index >= period && text === texts[index - period] ? same + 1 : 0;
      return same + period === 9 ? [[13, index]] : [];
    });
  });
}

const soundsOn = (tones: readonly Tone[], tick: number): boolean =>
  tones.some((tone) => tone.start <= tick && tone.start + tone.duration > tick);

function dropPlaces(model: LineModel, heard: HeardLine): Place[] {
  if (model.request.feel.id !== 'one-drop') return [];
  const bars = model.bars.filter(
    (bar) => bar.metre.count === 4 && bar.metre.unit === 4 && (heard[bar.index]?.length ?? 0) > 0,
  );
  const empty = bars.filter((bar) => !soundsOn(heard[bar.index] ?? [], TICKS_PER_QUARTER * 2));
  const first = empty[0];
  return first && empty.length * 2 >= bars.length ? [[14, first.index]] : [];
}

/** Every breach of the fifteen rules in a heard line, each rule once a bar, in order of bars. */
export function findBreaches(model: LineModel, heard: HeardLine): readonly Breach[] {
  const places = [
    ...barPlaces(model, heard),
    ...downbeatPlaces(model, heard),
    ...closingPlaces(model, heard),
    ...fifthPlaces(model, heard),
    ...evennessPlaces(model, heard),
    ...sharedRhythmPlaces(model, heard),
    ...unchangedPlaces(model, heard),
    ...dropPlaces(model, heard),
  ];
  const byBar = new Map<number, number>();
  for (const [rule, bar] of places) byBar.set(bar, (byBar.get(bar) ?? 0) | ruleBit(rule));
  return [...byBar]
    .filter(([, bits]) => isBroken(bits))
    .sort(([one], [other]) => one - other)
    .flatMap(([bar, bits]) => rulesIn(bits).map((rule) => breachOf(model, rule, bar)));
}

export const ruleSentence = (rule: number): string => MESSAGES[rule] ?? '';

function breachOf(model: LineModel, rule: number, bar: number): Breach {
  return { rule, bar, message: `Bar ${barNumber(model, bar)}: ${ruleSentence(rule)}.` };
}

/** The fifteen rules over a whole line: empty when a good teacher would not wince. */
export function checkLine(request: LineRequest, line: LineNotes): readonly Breach[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  return heard.every((bar) => bar.length === 0) ? [] : findBreaches(model, heard);
}

/** The rules about a single bar only, whatever its neighbours play. */
export function barBreaches(request: LineRequest, line: LineNotes, barIndex: number): readonly Breach[] {
  const model = modelOf(request);
  const bar = model.bars[barIndex];
  if (!bar) return [];
  const bits = soloBreaches(model, bar, hearLine(model, line)[barIndex] ?? []);
  return rulesIn(bits).map((rule) => breachOf(model, rule, barIndex));
}

/** Rules that one bar breaks by itself or with the bars it meets, by number: what an idea has to own up to. */
export interface BrokenAround {
  /** In the bar and on the way out of it. */
  readonly own: readonly number[];
  /** On the way in from the bar before. */
  readonly entering: readonly number[];
}

export function rulesBrokenAround(model: LineModel, heard: HeardLine, index: number): BrokenAround {
  const bar = model.bars[index];
  if (!bar) return { own: [], entering: [] };
  const tones = heard[index] ?? [];
  let own = soloBreaches(model, bar, tones);
  let entering = 0;
  for (const other of bar.after) own |= meetingBits(model, heard, index, other);
  for (const other of bar.before) entering |= meetingBits(model, heard, other, index);
  const here = new Set([index, ...bar.after]);
  const near = new Set([...here, ...bar.before]);
  const fifths = bar.stretches.some((stretch) => beginsOnFifthBelow(tones, { bar, stretch }));
  const places = [
    ...downbeatPlaces(model, heard, here),
    ...evennessPlaces(model, heard, here),
    ...closingPlaces(model, heard).filter(([, place]) => place === index),
    ...(fifths ? fifthPlaces(model, heard).filter(([, place]) => near.has(place)) : []),
  ];
  for (const [rule] of places) own |= ruleBit(rule);
  return { own: rulesIn(own), entering: rulesIn(entering) };
}

function meetingBits(model: LineModel, heard: HeardLine, from: number, to: number): number {
  const [one, other] = [model.bars[from], model.bars[to]];
  const exit = exitOf(heard[from] ?? []);
  const entry = entryOf(heard[to] ?? []);
  return one && other && exit && entry ? meetingBreaches(model, one, exit, other, entry) : 0;
}
