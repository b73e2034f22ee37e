import { createFourier, emptySpectrum, type Spectrum } from './fourier';

/** Samples that are looked at at once, and twice as many for the transform: 21 ms at 12 kHz. */
const BLOCK = 256;
const SIZE = 2 * BLOCK;
/** A real sound's spectrum has so many bins of its own. */
const BINS = BLOCK + 1;

/** Figures of the filter; ours, found on the bench. */
const OURS = {
  /** Blocks behind which the loudspeaker is looked for: a third of a second of delay and room together. */
  parts: 20,
  /** Blocks by which what is played may come later than it is heard. */
  ahead: 2,
  /** How much of a room stays as it is from block to block. */
  stays: 0.9999,
  /** How uncertain the room is at first: as loud in the microphone as it is played, spread over the parts. */
  unknown: 0.1,
  /** How much of the student's loudness of a block ago is that of now. */
  student: 0.6,
  /** Blocks in which every part of the room is cut to its length once. */
  turns: 4,
  /** Power below this is silence. */
  nothing: 1e-9,
  /** How much of what was taken off a block ago is told with that of now. */
  told: 0.995,
  /** The same where it is told how much is left of each band. */
  recent: 0.8,
} as const;

/** Thinned samples that what is left comes later than it was heard. */
export const LATER = OURS.ahead * BLOCK;

/** Takes the sound of a loudspeaker out of what a microphone hears. */
export interface EchoFilter {
  /**
   * @param heard - a sample of the microphone
   * @param sounded - the sample that was played meanwhile
   */
  push(heard: number, sounded: number): void;
  /** How far what is left of the loudspeaker is below what is heard, in decibels; 0 where nothing of it is known. */
  below(): number;
  /** Which share of the power of the loudspeaker is left between two frequencies, given in shares of the rate; from 0 to 1. */
  left(from: number, to: number): number;
}

/**
 * A filter that learns the way from the loudspeaker to the microphone while the student plays: the frequency-domain
 * Kalman filter (G. Enzner and P. Vary, Signal Processing 86, 2006) with a partitioned room (F. Kuech, E. Mabande and G.
 * Enzner, ICASSP 2014). In each bin it learns as fast as the student's own loudness there lets it.
 * @param onSample - is given the sound without the loudspeaker, a block later, sample by sample
 */
export function createEchoFilter(onSample: (sample: number, echo: number) => void): EchoFilter {
  const fourier = createFourier(SIZE);
  const { parts, ahead, stays, unknown } = OURS;
  /** What was played, block by block, the latest at `newest`. */
  const played = Array.from({ length: parts }, () => emptySpectrum(SIZE));
  const room = Array.from({ length: parts }, () => emptySpectrum(SIZE));
  const doubt = Array.from({ length: parts }, () => new Float64Array(BINS).fill(unknown / parts));
  const student = new Float64Array(BINS).fill(OURS.nothing);
  const waiting = Array.from({ length: ahead }, () => new Float64Array(BLOCK));
  let hearing = new Float64Array(BLOCK);
  const sounding = new Float64Array(BLOCK);
  const before = new Float64Array(BLOCK);
  const work = emptySpectrum(SIZE);
  const error = emptySpectrum(SIZE);
  let [filled, newest, turn] = [0, 0, 0];
  const doubted = new Float64Array(BINS);
  const echoPowers = new Float64Array(BINS);
  const leftPowers = new Float64Array(BINS);
  let [heardPower, leftPower] = [0, 0];

  const playedAt = (part: number): Spectrum => played[(newest + part) % parts] ?? work;
  const roomAt = (part: number): Spectrum => room[part] ?? work;
  const doubtAt = (part: number): Float64Array => doubt[part] ?? student;

  const takePlayed = (): void => {
    newest = (newest + parts - 1) % parts;
    const latest = played[newest] ?? work;
    latest.re.set(before);
    latest.re.set(sounding, BLOCK);
    latest.im.fill(0);
    before.set(sounding);
    fourier.forwards(latest);
  };

  /** What the loudspeaker's sound is in the microphone, as far as the room is known: the upper half of `work`. */
  const estimate = (): void => {
    work.re.fill(0);
    work.im.fill(0);
    for (let part = 0; part < parts; part += 1) {
      const [x, h] = [playedAt(part), roomAt(part)];
      for (let bin = 0; bin < BINS; bin += 1) {
        const [xr, xi, hr, hi] = [x.re[bin] ?? 0, x.im[bin] ?? 0, h.re[bin] ?? 0, h.im[bin] ?? 0];
        work.re[bin] = (work.re[bin] ?? 0) + xr * hr - xi * hi;
        work.im[bin] = (work.im[bin] ?? 0) + xr * hi + xi * hr;
      }
    }
    for (let bin = 0; bin < BINS; bin += 1) {
      const power = (work.re[bin] ?? 0) ** 2 + (work.im[bin] ?? 0) ** 2;
      echoPowers[bin] = OURS.recent * (echoPowers[bin] ?? 0) + power;
    }
    mirror(work);
    fourier.back(work);
  };

  const takeOff = (heard: Float64Array): void => {
    error.re.fill(0);
    error.im.fill(0);
    for (let index = 0; index < BLOCK; index += 1) {
      const echo = work.re[index + BLOCK] ?? 0;
      const left = (heard[index] ?? 0) - echo;
      error.re[index + BLOCK] = left;
      onSample(left, echo);
    }
    fourier.forwards(error);
  };

  /** How loud the student is in each bin, and how loud what the filter may be wrong about. */
  const weigh = (): void => {
    doubted.fill(0);
    for (let part = 0; part < parts; part += 1) {
      const [x, p] = [playedAt(part), doubtAt(part)];
      for (let bin = 0; bin < BINS; bin += 1)
        doubted[bin] = (doubted[bin] ?? 0) + powerAt(x, bin) * (p[bin] ?? 0);
    }
    leftPower *= OURS.told;
    heardPower *= OURS.told;
    for (let bin = 0; bin < BINS; bin += 1) {
      student[bin] = OURS.student * (student[bin] ?? 0) + (1 - OURS.student) * powerAt(error, bin);
      leftPowers[bin] = OURS.recent * (leftPowers[bin] ?? 0) + (doubted[bin] ?? 0);
      leftPower += doubted[bin] ?? 0;
      heardPower += powerAt(error, bin);
    }
  };

  const learn = (): void => {
    turn = (turn + 1) % OURS.turns;
    for (let part = 0; part < parts; part += 1) {
      const [x, h, p] = [playedAt(part), roomAt(part), doubtAt(part)];
      for (let bin = 0; bin < BINS; bin += 1) {
        const [xr, xi, er, ei] = [x.re[bin] ?? 0, x.im[bin] ?? 0, error.re[bin] ?? 0, error.im[bin] ?? 0];
        const all = (doubted[bin] ?? 0) + 2 * (student[bin] ?? 0) + OURS.nothing;
        const gain = (p[bin] ?? 0) / all;
        const known = 1 - 0.5 * gain * powerAt(x, bin);
        p[bin] = stays * stays * known * (p[bin] ?? 0) + (1 - stays * stays) * powerAt(h, bin);
        h.re[bin] = stays * ((h.re[bin] ?? 0) + gain * (xr * er + xi * ei));
        h.im[bin] = stays * ((h.im[bin] ?? 0) + gain * (xr * ei - xi * er));
      }
      // A part of the room is as long as a block, no longer; in turns, because it takes two transforms.
      if (part % OURS.turns === turn) cut(h);
    }
  };

  const cut = (part: Spectrum): void => {
    mirror(part);
    fourier.back(part);
    part.re.fill(0, BLOCK);
    part.im.fill(0);
    fourier.forwards(part);
  };

  return {
    push: (heard, sounded) => {
      hearing[filled] = heard;
      sounding[filled] = sounded;
      filled += 1;
      if (filled < BLOCK) return;
      filled = 0;
      waiting.push(hearing);
      hearing = waiting.shift() ?? hearing;
      takePlayed();
      estimate();
      takeOff(hearing);
      weigh();
      learn();
    },
    left: (from, to) => {
      let [all, left] = [OURS.nothing, 0];
      for (let bin = Math.floor(from * SIZE); bin <= Math.min(BINS - 1, Math.ceil(to * SIZE)); bin += 1) {
        all += (echoPowers[bin] ?? 0) + (leftPowers[bin] ?? 0);
        left += leftPowers[bin] ?? 0;
      }
      return left / all;
    },
    below: () =>
      heardPower === 0 ? 0 : Math.max(0, 10 * Math.log10(heardPower / (leftPower + OURS.nothing))),
  };
}

/** Fills the upper half of a real sound's spectrum. */
function mirror({ re, im }: Spectrum): void {
  for (let bin = 1; bin < BLOCK; bin += 1) {
    re[SIZE - bin] = re[bin] ?? 0;
    im[SIZE - bin] = -(im[bin] ?? 0);
  }
}

const powerAt = ({ re, im }: Spectrum, bin: number): number => (re[bin] ?? 0) ** 2 + (im[bin] ?? 0) ** 2;
