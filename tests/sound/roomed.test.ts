/** Sounds that are kept with their room's answer, against dry stems that go through their rooms plainly. */
import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { type FeelId, feelById, homeMetre } from '../../src/core/feel';
import { buildPerformance, type Performance } from '../../src/core/performance';
import { loudestOf } from '../../src/sound/synthesis/levels';
import { CORNERS, placeOf, roomTail } from '../../src/sound/synthesis/room';
import { createRoomedSounds, type Strung } from '../../src/sound/synthesis/roomed';
import { placePerformance, renderWindow } from '../../src/sound/synthesis/score';
import { STEMS, type Stem } from '../../src/sound/synthesis/stems';
import { createKit, type Kit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { furthest, plainly } from './plain-room';
import { shortTune } from './tunes';

/** What is tested here does not depend on it. */
const RATE = 11_025;

/** −114 dB. */
const TOLERANCE = 2e-6;

/** Voices as they are struck, one after the other, without a room. */
function dryOf(strung: readonly Strung[]): Float32Array {
  const dry = new Float32Array(Math.max(...strung.map(({ after, length }) => after + length)));
  for (const { samples, length, release, after } of strung) {
    for (let at = 0; at < length; at += 1) {
      const faded = Math.max(0, at + 1 - (length - release));
      const level = release === 0 ? 1 : 0.5 + 0.5 * Math.cos((Math.PI * faded) / release);
      dry[after + at] = (dry[after + at] ?? 0) + level * (samples[at] ?? 0);
    }
  }
  return dry;
}

/** A kit whose sounds stay dry. */
const dryKit = (kit: Kit): Kit => ({
  ...kit,
  roomed: {
    of: (_, strung) => {
      const own = dryOf(strung);
      return () => ({ own, across: new Float32Array() });
    },
  },
});

/** What is heard of a window with the stems mixed dry and each room reckoned for the whole of them. */
function plainWindow(performance: Performance, kit: Kit, rounds: number, to: number) {
  const placed = placePerformance(performance, dryKit(kit));
  const dry = renderWindow(placed, rounds, -placed.countIn, -placed.countIn, to);
  const heard = Object.fromEntries(STEMS.map((stem) => [stem, Float64Array.from(dry[stem])]));
  for (const { stems, room } of CORNERS) {
    const all = dry.bass.map((_, at) =>
      stems.reduce((sum, stem) => sum + (stem ? (dry[stem][at] ?? 0) : 0), 0),
    );
    for (const [side, samples] of plainly(all, room, RATE).entries()) {
      const stem = stems[side];
      if (stem) heard[stem] = samples.map((wet, at) => wet + (dry[stem][at] ?? 0));
    }
  }
  return (stem: Stem): Float64Array => heard[stem] ?? new Float64Array();
}

const oneBar = (feel: FeelId, tempo: number): Performance =>
  buildPerformance(
    sheetOf({ chart: '| Fmaj7 |', feel, metre: homeMetre(feelById(feel)), bars: ['1 F1 q, 2 A1 q'] }),
    { tempo: bpm(tempo), countIn: 1, passage: null },
  );

describe('a performance of sounds that bring their rooms along is what its dry stems are in these rooms', () => {
  const kit = createKit(RATE);

  test.each<readonly [string, Performance, number]>([
    ['ska, once', oneBar('early-ska', 130), 1],
    ['a bar shorter than its cymbals ring, three times', shortTune(200), 3],
    ['funk with long chords of the organ, twice', oneBar('funk', 200), 2],
    ['a walking line with its ride, twice', oneBar('walking-swing', 220), 2],
  ])('%s', (_, performance, rounds) => {
    const placed = placePerformance(performance, kit);
    const to = placed.round * rounds + placed.longest;
    const stems = renderWindow(placed, rounds, -placed.countIn, -placed.countIn, to);
    const plain = plainWindow(performance, kit, rounds, to);
    for (const stem of STEMS) expect(furthest(stems[stem], plain(stem)), stem).toBeLessThan(TOLERANCE);
  });
});

describe.each(CORNERS.flatMap(({ stems, room }) => stems.map((stem) => [stem ?? 'drums', room] as const)))(
  'a sound of the stem %s',
  (stem, room) => {
    const place = placeOf(stem);
    if (place === null) throw new Error(`${stem} has no room`);
    const samples = Float32Array.from({ length: 4000 }, (_, at) => Math.sin(at / 20) * Math.exp(-at / 900));
    const strung = (release: number, after = 0): Strung => ({ samples, length: 3000, release, after });

    test('rings as in its room and ends where nothing is left', () => {
      const chord = [strung(300), strung(100, 55), strung(0, 110)];
      const { own, across } = createRoomedSounds(RATE).of(place, chord)();
      const dry = new Float32Array(3110 + roomTail(RATE));
      dry.set(dryOf(chord));
      const sides = plainly(dry, room, RATE);
      const whole = (part: Float32Array): Float32Array => {
        const samples = new Float32Array(dry.length);
        samples.set(part);
        return samples;
      };
      const mine = sides[place.side].map((wet, at) => wet + (dry[at] ?? 0));
      // As the loudest note of the part is mixed.
      const gain = loudestOf(place.part);
      expect(gain * furthest(whole(own), mine)).toBeLessThan(TOLERANCE / 2);
      expect(own.length).toBeGreaterThan(3110);
      expect(own.length).toBeLessThan(dry.length);
      expect(across.length > 0).toBe(place.across !== null);
      if (place.across !== null)
        expect(gain * furthest(whole(across), sides[1 - place.side] ?? mine)).toBeLessThan(TOLERANCE / 2);
    });

    test('is made once, and another one for another length, fade or place', () => {
      const sounds = createRoomedSounds(RATE);
      const first = sounds.of(place, [strung(300)])();
      const isFirst = (...voices: readonly Strung[]): boolean => sounds.of(place, voices)() === first;
      expect(isFirst(strung(300))).toBe(true);
      expect(isFirst(strung(200))).toBe(false);
      expect(isFirst({ ...strung(300), length: 2999 })).toBe(false);
      expect(isFirst(strung(300), strung(300, 7))).toBe(false);
      expect(isFirst({ ...strung(300), samples: samples.slice() })).toBe(false);
    });
  },
);

test('what was asked for longest ago is forgotten first, and made again as it was', () => {
  const place = placeOf('organ');
  if (place === null) throw new Error('The organ has no room');
  const samples = Float32Array.from({ length: 2000 }, (_, at) => Math.sin(at / 9));
  const bytes = createRoomedSounds(RATE).of(place, [{ samples, length: 2000, release: 50, after: 0 }])().own
    .byteLength;
  const sounds = createRoomedSounds(RATE, 2.5 * bytes);
  const of = (length: number) => sounds.of(place, [{ samples, length, release: 50, after: 0 }]);
  const first = of(2000)();
  const second = of(1999)();
  expect(of(2000)() === first).toBe(true);
  of(1998)();
  expect(of(2000)() === first).toBe(true);
  const again = of(1999)();
  expect(again === second).toBe(false);
  expect(furthest(again.own, Float64Array.from(second.own))).toBe(0);
});
