import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, beatTicks, type LineNote, midiOf, unreachable } from '../../src/core/base';
import { type ComposeRequest, composeLine, ideasForBar, type LineNotes } from '../../src/core/line';
import { analyseBar } from '../../src/core/line/analysis';
import type { Claim } from '../../src/core/line/claim';
import { claimsFor } from '../../src/core/line/claims';
import { type HeardLine, hearLine } from '../../src/core/line/hearing';
import { analysed, type LineClaim, lineClaimsFor } from '../../src/core/line/line-claims';
import type { LineModel } from '../../src/core/line/model';
import { modelOf } from '../../src/core/line/read-request';
import { charts, wishes } from './charts';
import { request } from './notation';

/**
 * Every claim of a reason is held against the notes as they are stored and the chart as it is parsed; nothing of
 * what made the claim is asked again.
 */
interface Case {
  readonly asked: ComposeRequest;
  readonly line: LineNotes;
  readonly bar: number;
}

const notesOf = ({ line, bar }: Case): readonly LineNote[] => line[bar] ?? [];
const midis = (notes: readonly LineNote[]): readonly number[] => notes.map((note) => midiOf(note.pitch));

function chordAt({ asked, bar }: Case, start: number) {
  const spans = asked.chart.bars[bar]?.spans ?? [];
  const span = spans.findLast((one) => one.start <= start);
  return span?.harmony.kind === 'chord' ? span.harmony.chord : null;
}

const classOf = (name: {
  letter: LineNote['pitch']['letter'];
  alteration: LineNote['pitch']['alteration'];
}) => midiOf({ ...name, octave: 2 }) % 12;

function isMember(at: Case, note: LineNote | undefined): boolean {
  const chord = note ? chordAt(at, note.start) : null;
  if (!note || !chord) return false;
  return [...chord.tones.map(({ name }) => name), chord.bass].some(
    (name) => classOf(name) === midiOf(note.pitch) % 12,
  );
}

/** The first notes of the bars that can be heard next, by the order of play. */
function followers({ asked, line, bar }: Case, model: LineModel): readonly (LineNote | undefined)[] {
  const next = model.order.flatMap((index, place) =>
    index === bar ? [model.order[(place + 1) % model.order.length] ?? bar] : [],
  );
  expect(asked.chart.bars.length).toBe(line.length);
  return [...new Set(next)].map((index) => line[index]?.[0]);
}

const starts = (notes: readonly { readonly start: number }[]): string =>
  notes.map((note) => note.start).join(' ');
const step = (from: number, to: number): boolean => from !== to && Math.abs(from - to) <= 2;

type Of<Kind extends Claim['kind']> = Extract<Claim, { kind: Kind }>;

function silentOneHolds(at: Case, claim: Of<'silent one'>): boolean {
  const answered =
    claim.answers === null || (claim.answers === at.bar - 1 && at.line[claim.answers]?.[0]?.start === 0);
  return notesOf(at)[0]?.start === claim.enters && claim.enters > 0 && answered;
}

function silenceHolds(at: Case, claim: Of<'silence'>): boolean {
  const metre = at.asked.chart.bars[at.bar]?.metre;
  if (!metre) return false;
  const notes = notesOf(at);
  const gaps = [...notes.map((note) => note.start), barTicks(metre)].map((start, index) => {
    const before = notes[index - 1];
    return start - (before ? before.start + before.duration : 0);
  });
  return Math.floor(Math.max(...gaps) / beatTicks(metre)) === claim.beats;
}

const isRoot = (at: Case, note: LineNote | undefined): boolean => {
  const chord = note ? chordAt(at, note.start) : null;
  return note !== undefined && chord !== null && classOf(chord.root) === midiOf(note.pitch) % 12;
};

function anticipationHolds(at: Case, claim: Of<'anticipation'>, model: LineModel): boolean {
  const note = notesOf(at)[claim.note];
  const next = at.asked.chart.bars[model.bars[at.bar]?.after[0] ?? 0]?.spans[0]?.harmony;
  if (claim.note !== notesOf(at).length - 1 || next?.kind !== 'chord' || !note) return false;
  return classOf(next.chord.bass) === midiOf(note.pitch) % 12;
}

const landsOn = (at: Case, model: LineModel, midi: number): boolean =>
  followers(at, model).every((note) => note !== undefined && midiOf(note.pitch) === midi);

function walkHolds(at: Case, claim: Of<'walk'>, model: LineModel): boolean {
  const run = [...midis(notesOf(at)).slice(claim.from), claim.target.midi];
  const steps = run.slice(1).map((midi, index) => midi - (run[index] ?? 0));
  const direction = Math.sign(steps[0] ?? 0);
  return (
    landsOn(at, model, claim.target.midi) &&
    steps.every((size) => Math.abs(size) <= 2 && Math.sign(size) === direction && direction !== 0)
  );
}

function stepHolds(at: Case, claim: Of<'passing' | 'neighbour' | 'step'>): boolean {
  const [before, here, after] = [-1, 0, 1].map((place) => midis(notesOf(at))[claim.note + place]);
  if (isMember(at, notesOf(at)[claim.note]) || here === undefined) return false;
  if (claim.kind === 'step') return true;
  if (before === undefined || !step(before, here)) return false;
  if (claim.kind === 'neighbour') return true;
  return after !== undefined && step(here, after) && Math.sign(here - before) === Math.sign(after - here);
}

function leadHolds(at: Case, claim: Of<'lead'>, model: LineModel): boolean {
  const distance = claim.target.midi - (midis(notesOf(at))[claim.note] ?? 0);
  const last = claim.note === notesOf(at).length - 1;
  return last && landsOn(at, model, claim.target.midi) && [1, -1, 2, -2, 5, -7].includes(distance);
}

function spellsHold(at: Case, claim: Of<'spells' | 'change' | 'roots'>): boolean {
  const chosen = claim.notes.flatMap((index) => notesOf(at)[index] ?? []);
  const chords = new Set(chosen.map((note) => chordAt(at, note.start)?.symbol));
  const sizes = midis(chosen).map((midi, index, all) => midi - (all[index - 1] ?? midi));
  if (!chosen.every((note) => isMember(at, note))) return false;
  if (claim.kind === 'change') return chords.size > 1;
  if (claim.kind === 'roots') return chords.size > 1 && chosen.every((note) => isRoot(at, note));
  const kept =
    claim.direction === 'both' || sizes.every((size) => (claim.direction === 'up' ? size >= 0 : size <= 0));
  return chords.size === 1 && kept;
}

function carriesHolds(at: Case): boolean {
  const members = notesOf(at).filter((note) => isMember(at, note));
  return new Set(members.map((note) => midiOf(note.pitch) % 12)).size === 1;
}

function rhythmHolds(at: Case, claim: Of<'rhythm'>, heard: HeardLine): boolean {
  const struck = (bar: number) => (heard[bar] ?? []).filter((tone) => !tone.held).map((tone) => tone.start);
  return claim.bar !== at.bar && struck(claim.bar).join() === struck(at.bar).join();
}

function thirdHolds(at: Case, claim: Of<'third'>): boolean {
  const note = notesOf(at)[claim.note];
  const chord = note ? chordAt(at, note.start) : null;
  if (!note || !chord || !isMember(at, note)) return false;
  const interval = (midiOf(note.pitch) - classOf(chord.root) + 120) % 12;
  return interval === (claim.quality === 'major' ? 4 : 3);
}

function octaveHolds(at: Case, claim: Of<'octave'>): boolean {
  const pitches = midis(notesOf(at));
  return Math.abs((pitches[claim.note] ?? 0) - (pitches[claim.note - 1] ?? 0)) === 12;
}

function holds(at: Case, claim: Claim, model: LineModel, heard: HeardLine): boolean {
  switch (claim.kind) {
    case 'rest':
      return notesOf(at).length === 0;
    case 'silent one':
      return silentOneHolds(at, claim);
    case 'silence':
      return silenceHolds(at, claim);
    case 'anticipation':
      return anticipationHolds(at, claim, model);
    case 'octave':
      return octaveHolds(at, claim);
    case 'walk':
      return walkHolds(at, claim, model);
    case 'passing':
    case 'neighbour':
    case 'step':
      return stepHolds(at, claim);
    case 'lead':
      return leadHolds(at, claim, model);
    case 'spells':
    case 'change':
    case 'roots':
      return spellsHold(at, claim);
    case 'carries':
      return carriesHolds(at);
    case 'rhythm':
      return rhythmHolds(at, claim, heard);
    case 'third':
      return thirdHolds(at, claim);
    case 'open':
      return notesOf(at).length > 0;
    default:
      return unreachable(claim);
  }
}

function lineHolds(asked: ComposeRequest, line: LineNotes, heard: HeardLine, claim: LineClaim): boolean {
  const of = (bar: number) => line[bar] ?? [];
  const struckIn = (bar: number) => starts((heard[bar] ?? []).filter((tone) => !tone.held));
  switch (claim.kind) {
    case 'motif':
      return claim.bars.length > 1 && new Set(claim.bars.map((bar) => struckIn(bar))).size === 1;
    case 'answers':
    case 'listen for silence':
      return claim.bars.every((bar) => of(bar).length > 0 && of(bar)[0]?.start !== 0);
    case 'turns':
      return claim.bars.every((bar) => {
        const section = asked.chart.sections[asked.chart.bars[bar]?.section ?? 0];
        const place = bar - (section?.start ?? 0) + 1;
        return place % asked.feel.phraseLength === 0 || place === section?.length;
      });
    case 'taught':
      return claim.technique !== 'octave'
        ? claim.bars.length > 0
        : claim.bars.every((bar) =>
            midis(of(bar)).some((midi, index, all) => Math.abs(midi - (all[index - 1] ?? midi)) === 12),
          );
    case 'leads': {
      const next = of(claim.to)[0];
      return next !== undefined && midiOf(next.pitch) === claim.by.target.midi;
    }
    case 'rests':
      return claim.bars.length > 0 && claim.bars.every((bar) => of(bar).length === 0);
    case 'closes':
      return isRoot({ asked, line, bar: claim.bar }, of(claim.bar).at(-1));
    case 'listen for roots':
      return claim.bars.every((bar) => of(bar)[0]?.start === 0 && isRoot({ asked, line, bar }, of(bar)[0]));
    default:
      return unreachable(claim);
  }
}

function check(asked: ComposeRequest, line: LineNotes): void {
  const model = modelOf(asked);
  const heard = hearLine(model, line);
  for (const bar of model.bars) {
    const analysis = analyseBar(model, heard, bar.index);
    for (const claim of claimsFor(model, heard, bar, analysis)) {
      expect(
        holds({ asked, line, bar: bar.index }, claim, model, heard),
        `${bar.index} ${claim.kind} ${starts(line[bar.index] ?? [])}`,
      ).toBe(true);
    }
  }
  for (const claim of lineClaimsFor(analysed(model, heard))) {
    expect(lineHolds(asked, line, heard, claim), claim.kind).toBe(true);
  }
}

describe('no reason contradicts its notes', () => {
  test('in composed lines, with ideas taken, and in lines that were edited by hand', () => {
    fc.assert(
      fc.property(charts, wishes, fc.nat(11), fc.nat(20), (chart, wish, place, pick) => {
        const asked = request(chart, wish);
        const { bars } = composeLine(asked);
        check(asked, bars);
        const index = place % bars.length;
        const ideas = ideasForBar(asked, bars, index);
        const idea = ideas[pick % Math.max(1, ideas.length)];
        const taken = bars.map((notes, bar) => (bar === index ? (idea?.notes ?? []) : notes));
        check(asked, taken);
        const edited = taken.map((notes, bar) =>
          bar % 2 === pick % 2
            ? notes.slice(pick % 2)
            : notes.map((note, at) =>
                at === 1 ? { ...note, pitch: { ...note.pitch, octave: note.pitch.octave + 1 } } : note,
              ),
        );
        check(asked, edited);
      }),
      { numRuns: 15, seed: 20260106 },
    );
  });
});
