/** Seconds of a frame. */
const FRAME = 0.01;
/** Frames that an onset is heard over, to each side. */
const SMEAR = 3;
/** Beats a minute that are looked for. */
const SLOWEST = 60;
const FASTEST = 190;
/** The beat that people tap by preference, in seconds, and how wide the preference is, in octaves. */
const USUAL = 0.5;
const WIDTH = 0.9;
/** What a beat that comes early or late costs beside an onset that it meets. */
const STEADINESS = 60;

/** How much is begun in each frame. */
function onsetsOf(seconds: readonly number[]): Float64Array {
  const last = Math.max(...seconds);
  const frames = new Float64Array(Math.ceil(last / FRAME) + SMEAR + 1);
  for (const each of seconds) {
    const middle = Math.round(each / FRAME);
    for (let by = -SMEAR; by <= SMEAR; by += 1) {
      const frame = middle + by;
      if (frame >= 0) frames[frame] = (frames[frame] ?? 0) + Math.exp((-by * by) / 4);
    }
  }
  return frames;
}

/** The usual distance of beats, in frames: where the onsets agree most with themselves, by what people tap. */
function periodOf(onsets: Float64Array): number {
  const [least, most] = [60 / FASTEST / FRAME, 60 / SLOWEST / FRAME];
  let best = { period: USUAL / FRAME, strength: 0 };
  for (let period = Math.floor(least); period <= most; period += 1) {
    let agreement = 0;
    for (let frame = period; frame < onsets.length; frame += 1) {
      agreement += (onsets[frame] ?? 0) * (onsets[frame - period] ?? 0);
    }
    const octaves = Math.log2((period * FRAME) / USUAL) / WIDTH;
    const strength = agreement * Math.exp(-0.5 * octaves * octaves);
    if (strength > best.strength) best = { period, strength };
  }
  return best.period;
}

/**
 * Finds the beats of what someone played without a click, by dynamic programming over the onsets: beats meet onsets
 * and follow each other evenly (Ellis, D. P. W., "Beat Tracking by Dynamic Programming", Journal of New Music Research
 * 36(1), 2007; the constants are set by ear on invented examples).
 * @param seconds - at which notes begin; at least one
 * @returns seconds of the beats, in order, from the first onset to the last
 */
export function beatsOf(seconds: readonly number[]): readonly number[] {
  const onsets = onsetsOf(seconds);
  const period = periodOf(onsets);
  const score = new Float64Array(onsets.length);
  const before = new Int32Array(onsets.length).fill(-1);
  const [near, far] = [Math.round(period / 2), Math.round(period * 2)];
  const costs = Array.from({ length: far + 1 }, (_, frames) =>
    frames < near ? 0 : -STEADINESS * Math.log(frames / period) ** 2,
  );
  for (let frame = 0; frame < onsets.length; frame += 1) {
    let best = 0;
    for (let frames = near; frames <= far && frames <= frame; frames += 1) {
      const value = (score[frame - frames] ?? 0) + (costs[frames] ?? 0);
      if (value > best) {
        best = value;
        before[frame] = frame - frames;
      }
    }
    score[frame] = (onsets[frame] ?? 0) + best;
  }
  let at = 0;
  const from = Math.max(0, onsets.length - Math.round(period * 1.5));
  for (let frame = from; frame < onsets.length; frame += 1)
    if ((score[frame] ?? 0) >= (score[at] ?? 0)) at = frame;
  const beats: number[] = [];
  while (at >= 0) {
    beats.push(at * FRAME);
    at = before[at] ?? -1;
  }
  return beats.reverse();
}
