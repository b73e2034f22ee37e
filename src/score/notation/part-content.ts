import { type Metre, type Sign, staffStepOf } from '../../core/base';
import type { DrumSound } from '../../core/feel';
import { type Accidental, type NotatedEvent, notateBar } from '../../core/notation';
import type {
  KeyboardSheet,
  PartSheet,
  WrittenHead,
  WrittenPart,
  WrittenStroke,
} from '../../core/performance';
import { swingsEighths } from '../../core/playing';
import type { Steps } from '../steps';
import { chartFacts, keysOf } from './facts';
import { lineAccidentals } from './signatures';
import type { BarFacts, Content, ContentBar, ContentEvent, Head, StaffKind } from './types';

/**
 * Heights of the drums above the staff's middle line and whether their heads are crosses, as drummers' publications have
 * agreed: kick in the first space, snare in the third, hi-hat over the staff, its foot under it, ride on the top line,
 * crash on the ledger line over it, the stroke on the rim as a cross in the snare's space (N. Weinberg, "Guidelines for
 * Drumset Notation", Percussive Arts Society, Percussive Notes, June 1994; from memory).
 */
export const DRUM_PLACES: Readonly<Record<DrumSound, { readonly height: number; readonly cross: boolean }>> =
  {
    'foot hat': { height: -5, cross: true },
    kick: { height: -3, cross: false },
    snare: { height: 1, cross: false },
    rim: { height: 1, cross: true },
    ride: { height: 4, cross: true },
    'closed hat': { height: 5, cross: true },
    'open hat': { height: 5, cross: true },
    crash: { height: 6, cross: true },
  };

const STAVES: Readonly<Record<WrittenPart, StaffKind>> = {
  chops: 'treble',
  'organ right': 'treble',
  'organ left': 'bass',
  drums: 'drums',
};

/** The middle line as the part is written, which is as it sounds: B4 under the treble clef, D3 under the bass clef. */
const MIDDLE_STEP = {
  treble: staffStepOf({ letter: 'B', alteration: 0, octave: 4 }),
  bass: staffStepOf({ letter: 'D', alteration: 0, octave: 3 }),
} as const;

/** What a part of the rhythm section says, as signs. */
export function* partContent(sheet: PartSheet): Steps<Content> {
  const { line } = sheet;
  const staff = STAVES[sheet.part];
  const facts = chartFacts(line, staff, false);
  const accidentals = partAccidentals(sheet);
  const bars: ContentBar[] = [];
  for (const [index, fact] of facts.entries()) {
    yield;
    const strokes = sheet.bars[index] ?? [];
    const before = sheet.bars[index - 1]?.at(-1);
    const tiedIn = before?.tiedOn === true && strokes[0]?.start === 0;
    const { metre } = line.bars[index]?.written ?? line;
    bars.push(partBar(fact, strokes, accidentals[index] ?? [], tiedIn, metre));
  }
  return {
    bars,
    numbers: line.bars.map(({ written }) => written.number),
    strings: line.instrument.openStrings.length,
    feel: swingsEighths(line) ? 'Swing eighths' : null,
  };
}

/** What both hands of a keyboard say, the left hand's on a staff under the right hand's. */
export function* keyboardContent({ right, left }: KeyboardSheet): Steps<Content> {
  const upper = yield* partContent(right);
  const under = yield* partContent(left);
  const bars = upper.bars.map((bar, index): ContentBar => {
    const below = under.bars[index];
    if (below === undefined) return bar;
    // Chords and words stand over the upper staff alone.
    const lower = { ...below, chords: [] };
    return { ...bar, lower, key: `keyboard ${bar.key} over ${below.key}` };
  });
  return { ...upper, bars };
}

/** One entry a head of each stroke; null on the drums. */
type HeadAccidentals = readonly (readonly (Accidental | null)[])[];

function partBar(
  facts: BarFacts,
  strokes: readonly WrittenStroke[],
  accidentals: HeadAccidentals,
  tiedIn: boolean,
  metre: Metre,
): ContentBar {
  const { events, beams, triplets } = notateBar(strokes, metre);
  const made = events.map((event) => {
    const stroke = event.note === null ? undefined : strokes[event.note];
    return partEvent(event, stroke, accidentals[event.note ?? -1] ?? [], facts.staff, tiedIn);
  });
  const key = `part ${JSON.stringify([facts, strokes, accidentals, tiedIn])}`;
  return { ...facts, events: made, beams, triplets, counts: [], key };
}

function partEvent(
  event: NotatedEvent,
  stroke: WrittenStroke | undefined,
  accidentals: readonly (Accidental | null)[],
  staff: StaffKind,
  tiedIntoBar: boolean,
): ContentEvent {
  const begins = stroke !== undefined && event.start <= stroke.start;
  const tiedIn = begins && event.note === 0 && tiedIntoBar;
  const heads = (stroke?.heads ?? []).map(
    (head, index): Head => ({
      ...placeOf(head, staff),
      accidental: begins ? (accidentals[index] ?? null) : null,
    }),
  );
  const bare = {
    ...event,
    height: 0,
    accidental: null,
    signs: [] as readonly Sign[],
    exit: null,
    fret: null,
    degree: '',
    finger: '',
    position: '',
    tiedIn: tiedIn ? ('left' as const) : null,
    tiedOut: stroke?.tiedOn === true && !event.tied,
  };
  return stroke === undefined
    ? bare
    : { ...bare, heads: heads.sort((one, other) => one.height - other.height) };
}

function placeOf(head: WrittenHead, staff: StaffKind): Omit<Head, 'accidental'> {
  if (head.kind === 'drum') {
    const { sound, ghost } = head;
    return { ...DRUM_PLACES[sound], ghost, open: sound === 'open hat' };
  }
  const middle = MIDDLE_STEP[staff === 'bass' ? 'bass' : 'treble'];
  return { height: staffStepOf(head.pitch) - middle, cross: false, ghost: false, open: false };
}

/** A chord's accidentals from low to high; those of a chord that is tied over the bar line are not written again. */
function partAccidentals({ line, bars }: PartSheet): readonly HeadAccidentals[] {
  const pitches = bars.map((strokes, bar) =>
    strokes.flatMap(({ heads }, stroke) =>
      heads.flatMap((head) => {
        if (head.kind !== 'pitch') return [];
        const before = bars[bar - 1]?.at(-1);
        return [{ pitch: head.pitch, continued: stroke === 0 && before?.tiedOn === true }];
      }),
    ),
  );
  const signs = lineAccidentals(pitches, keysOf(line));
  return bars.map((strokes, bar) => {
    let at = 0;
    return strokes.map(({ heads }) => {
      const own = (signs[bar] ?? []).slice(at, at + heads.length);
      at += heads.length;
      return own;
    });
  });
}
