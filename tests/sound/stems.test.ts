import { describe, expect, test } from 'vitest';
import { bpm, frequencyOf } from '../../src/core/base';
import { type Performance, type PitchedEvent, secondsAt } from '../../src/core/performance';
import { PARTS } from '../../src/core/playing';
import { renderMix } from '../../src/sound/synthesis/mix';
import { placePerformance, renderWindow } from '../../src/sound/synthesis/score';
import { renderHead, renderRest, type Segment, type SegmentRequest } from '../../src/sound/synthesis/segment';
import { STEMS, type Stem } from '../../src/sound/synthesis/stems';
import { createKit, type Kit } from '../../src/sound/synthesis/voices';
import { cents, decibels, onsetsAfterSilence, peak, pitchOf, rms } from './measure';
import { shortTune, skaTune } from './tunes';

const RATE = 44_100;
const kit = createKit(RATE);
const EVERYTHING = { bass: true, drums: true, chops: true, organ: true, click: true };
const NOTHING = { bass: false, drums: false, chops: false, organ: false, click: false };

/** The stem of one part as it is heard once through, the count-in first. */
const once = (performance: Performance, stem: Stem): Float32Array => {
  const placed = placePerformance(performance, kit);
  const end = placed.round + placed.longest;
  return renderWindow(placed, 1, -placed.countIn, -placed.countIn, end)[stem];
};

/** A segment whose round is held whole. */
const renderSegment = (request: SegmentRequest, sounds: Kit): Segment => ({
  ...renderHead(request, sounds, 0),
  ...renderRest(request, sounds),
});

const bassOf = (performance: Performance): PitchedEvent[] =>
  performance.events.filter((event): event is PitchedEvent => event.part === 'bass');

/** What a listener hears of a segment: its lead, its round again and again, its rings. */
function played(segment: Segment, stem: Stem, length: number): Float32Array {
  const heard = new Float32Array(length);
  const end = segment.total ?? length;
  for (let index = 0; index < length; index += 1) {
    if (index < Math.min(end, segment.leadLength)) {
      heard[index] = segment.lead[stem][index] ?? 0;
    } else if (index < end) {
      const place = (segment.roundOffset + index - segment.leadLength) % segment.roundLength;
      heard[index] = segment.round[stem][place] ?? 0;
    } else {
      heard[index] = segment.after?.[stem][index - end] ?? 0;
    }
  }
  return heard;
}

function largestDifference(one: Float32Array, other: Float32Array): number {
  expect(one.length).toBe(other.length);
  let most = 0;
  for (let index = 0; index < one.length; index += 1) {
    most = Math.max(most, Math.abs((one[index] ?? 0) - (other[index] ?? 0)));
  }
  return most;
}

describe('a rendered line', () => {
  const performance = skaTune();
  const bass = once(performance, 'bass');
  const line = bassOf(performance);
  const sampleOf = (tick: number) => secondsAt(performance, tick) * RATE;

  test('has every onset of the performance, within 5 ms, and no other', () => {
    // A wave that crosses zero while it fades away is quiet for a moment, but nothing rises after it.
    const onsets = onsetsAfterSilence(bass, 40, 0.002).filter(
      (onset) => peak(bass.subarray(onset, onset + 0.002 * RATE)) > 0.1,
    );
    expect(onsets).toHaveLength(line.length);
    for (const [index, event] of line.entries()) {
      expect(Math.abs((onsets[index] ?? 0) - sampleOf(event.start))).toBeLessThan(0.005 * RATE);
    }
  });

  test('has every pitch of the performance within 10 cents', () => {
    for (const event of line) {
      const start = Math.round(sampleOf(event.start));
      const end = Math.round(sampleOf(event.start + event.duration));
      const samples = bass.subarray(start + Math.round((end - start) * 0.2), end - 0.03 * RATE);
      const wanted = frequencyOf(event.midi);
      const measured = pitchOf(samples, RATE, wanted * 0.8, wanted * 1.25);
      expect(Math.abs(cents(measured, wanted)), `MIDI ${event.midi} at ${event.start}`).toBeLessThan(10);
    }
  });

  test('is silent where nothing is written: 60 dB below the note from its end on', () => {
    const short = line.find((event) => event.duration === 480 && event.midi === 28);
    const start = Math.round(sampleOf(short?.start ?? 0));
    const end = Math.round(sampleOf((short?.start ?? 0) + 480));
    const next = Math.round(sampleOf((short?.start ?? 0) + 960));
    const note = rms(bass.subarray(start, end));
    expect(note).toBeGreaterThan(0.01);
    expect(decibels(peak(bass.subarray(end + 1, next)) / note)).toBeLessThan(-60);
  });

  test('ends without a click: no step at a note’s end is larger than its wave’s own', () => {
    for (const event of line) {
      const end = Math.round(sampleOf(event.start + event.duration));
      expect(peak(bass.subarray(end - 20, end + 1))).toBeLessThan(0.004);
    }
  });
});

describe('segments', () => {
  /** Half the usual rate: what is tested here does not depend on it. */
  const rate = RATE / 2;
  const kit = createKit(rate);

  const cases: readonly (readonly [name: string, performance: Performance, begin: number])[] = [
    ['a tune with its count-in', skaTune(), 0],
    ['a tune entered at its third bar', skaTune({ countIn: 0 }), 2 * 3840],
    ['a bar shorter than its rings', shortTune(), 0],
    ['the same, entered in its middle', shortTune(200), 1920],
  ];

  test.each(cases)('%s: played for ever, they are the performance to the sample', (_, performance, begin) => {
    const segment = renderSegment({ performance, rounds: 'endless', begin, leaving: null }, kit);
    const placed = placePerformance(performance, kit);
    const length = segment.leadLength + 3 * segment.roundLength + 1000;
    const straight = renderWindow(placed, 'endless', segment.begin, segment.begin, segment.begin + length);
    for (const stem of STEMS) {
      expect(largestDifference(played(segment, stem, length), straight[stem]), stem).toBeLessThan(1e-6);
    }
  });

  test.each(cases)(
    '%s: played three times, they are the performance with its last rings',
    (_, performance, begin) => {
      const segment = renderSegment({ performance, rounds: 3, begin, leaving: null }, kit);
      const placed = placePerformance(performance, kit);
      const length = (segment.total ?? 0) + placed.longest;
      const straight = renderWindow(placed, 3, segment.begin, segment.begin, segment.begin + length);
      for (const stem of STEMS) {
        expect(largestDifference(played(segment, stem, length), straight[stem]), stem).toBeLessThan(1e-6);
      }
    },
  );

  test.each(cases)(
    '%s: begun with its head alone, they are the same performance',
    (_, performance, begin) => {
      for (const rounds of ['endless', 3] as const) {
        const request = { performance, rounds, begin, leaving: null };
        const segment = { ...renderHead(request, kit), ...renderRest(request, kit) };
        const placed = placePerformance(performance, kit);
        const length = segment.total === null ? segment.leadLength + 3 * segment.roundLength : segment.total;
        const straight = renderWindow(placed, rounds, segment.begin, segment.begin, segment.begin + length);
        for (const stem of STEMS) {
          expect(largestDifference(played(segment, stem, length), straight[stem]), stem).toBeLessThan(1e-6);
        }
      }
    },
  );

  test('a head is a small part of a slow tune, and long enough to compute the rest meanwhile', () => {
    const performance = skaTune({ tempo: bpm(30), passage: { first: 1, last: 2 } });
    const { begin, leadLength, roundLength } = renderHead(
      { performance, rounds: 'endless', begin: 0, leaving: null },
      kit,
      1 / 2,
    );
    expect(leadLength + begin).toBeGreaterThanOrEqual(roundLength / 2);
    const usual = renderHead({ performance, rounds: 'endless', begin: 0, leaving: null }, kit);
    expect(usual.leadLength + usual.begin).toBeGreaterThanOrEqual(roundLength / 8);
    expect(usual.leadLength + usual.begin).toBeLessThan(roundLength / 2);
  });

  test('all stems of a piece are equally long', () => {
    const segment = renderSegment({ performance: skaTune(), rounds: 2, begin: 0, leaving: null }, kit);
    for (const piece of [segment.lead, segment.round, segment.after]) {
      expect(new Set(STEMS.map((stem) => piece?.[stem].length)).size).toBe(1);
    }
  });

  test('what rang when a performance was left rings on in the next, and nothing of it is struck again', () => {
    const old = skaTune({ countIn: 0, tempo: bpm(200) });
    const next = skaTune({ countIn: 0 });
    const placed = placePerformance(old, kit);
    for (const [tick, round] of [
      [3840, 0],
      [3840, 2],
      [1920, 1],
    ] as const) {
      const left = Math.round(secondsAt(old, tick) * rate) + round * placed.round;
      const request = { performance: next, rounds: 'endless', begin: 0 } as const;
      const alone = renderSegment({ ...request, leaving: null }, kit);
      const segment = renderSegment(
        { ...request, leaving: { performance: old, tick, round, entered: 0, before: null } },
        kit,
      );
      // The old performance with nothing struck from the moment it was left.
      const upTo = {
        ...placed,
        within: [],
        before: Array.from({ length: round + 1 }, (_, each) =>
          placed.within.map((voice) => ({ ...voice, at: voice.at + each * placed.round })),
        )
          .flat()
          .filter((voice) => voice.at < left),
      };
      const ring = renderWindow(upTo, 1, 0, left, left + segment.leadLength);
      for (const part of PARTS) {
        const expected = ring[part].map((sample, index) => sample + (alone.lead[part][index] ?? 0));
        expect(largestDifference(segment.lead[part], expected), part).toBeLessThan(1e-6);
      }
      expect(peak(ring.drums)).toBeGreaterThan(0.001);
    }
  });
});

describe('the drums', () => {
  test('an open hat is cut off by the next hat', () => {
    const performance = skaTune({ countIn: 0 });
    const hats = performance.events.filter((event) => event.part === 'drums' && event.sound.endsWith('hat'));
    const open = hats.findIndex((event) => event.part === 'drums' && event.sound === 'open hat');
    const placed = placePerformance(performance, kit);
    const start = Math.round(secondsAt(performance, hats[open]?.start ?? 0) * RATE);
    const next = Math.round(secondsAt(performance, hats[open + 1]?.start ?? 0) * RATE);
    const voice = placed.within.find((candidate) => candidate.stem === 'hats' && candidate.at === start);
    expect(voice).toBeDefined();
    expect(start + (voice?.length ?? 0)).toBeLessThanOrEqual(next);
  });
});

describe('the mix', () => {
  const performance = skaTune();
  const whole = renderMix(performance, EVERYTHING, kit);

  test('does not clip and leaves headroom', () => {
    for (const channel of [whole.left, whole.right]) {
      expect(decibels(peak(channel))).toBeLessThan(-1);
      expect(decibels(peak(channel))).toBeGreaterThan(-12);
    }
  });

  test('keeps the parts in balance: the bass leads, chops and organ stand behind, the click is clear', () => {
    const level = (part: (typeof PARTS)[number]) =>
      decibels(rms(renderMix(performance, { ...NOTHING, [part]: true }, kit).left));
    const loudest = level('bass');
    expect(level('drums')).toBeLessThan(loudest);
    expect(level('drums')).toBeGreaterThan(loudest - 10);
    expect(level('chops')).toBeLessThan(loudest - 4);
    expect(level('organ')).toBeLessThan(loudest - 4);
    const clickPeak = peak(renderMix(performance, { ...NOTHING, click: true }, kit).left);
    expect(clickPeak).toBeGreaterThan(0.25);
  });

  test('is the sum of its parts, each in its place between left and right', () => {
    const parts = PARTS.map((part) => renderMix(performance, { ...NOTHING, [part]: true }, kit));
    const countIn = renderMix(performance, NOTHING, kit);
    const sum = whole.left.map((_, index) =>
      parts.reduce(
        (total, part) => total + (part.left[index] ?? 0) - (countIn.left[index] ?? 0),
        countIn.left[index] ?? 0,
      ),
    );
    expect(largestDifference(sum, whole.left)).toBeLessThan(1e-5);
    const [chops, organ] = [parts[2], parts[3]];
    const music = placePerformance(performance, kit).countIn;
    expect(rms(chops?.left.subarray(music) ?? new Float32Array())).toBeGreaterThan(
      rms(chops?.right.subarray(music) ?? new Float32Array()),
    );
    expect(rms(organ?.left.subarray(music) ?? new Float32Array())).toBeLessThan(
      rms(organ?.right.subarray(music) ?? new Float32Array()),
    );
  });

  test('the count-in is heard with the click switched off', () => {
    const countIn = renderMix(performance, NOTHING, kit).left;
    const onsets = onsetsAfterSilence(countIn, 0.1 * RATE, 0.01).map((sample) => sample / RATE);
    expect(onsets).toHaveLength(4);
    for (const [beat, second] of onsets.entries()) {
      expect(Math.abs(second - (beat * 60) / 126)).toBeLessThan(0.002);
    }
  });

  test('a faster tempo is the same music sooner', () => {
    const fast = renderMix(skaTune({ tempo: bpm(200) }), NOTHING, kit);
    expect(fast.left.length).toBeLessThan(whole.left.length);
  });
});
