import type { Claim, Scene } from '../claim';
import { changesBetween } from '../model';
import { isHome, isStep, type Tone } from '../tones';

/** The first note of whatever follows, where every bar that can follow begins with the same new root. */
function targetOf({ model, heard, bar }: Scene): Tone | null {
  const firsts = bar.after.map((index) => {
    const next = model.bars[index];
    const first = heard[index]?.[0];
    return next && first && changesBetween(bar, next) && isHome(first) ? first : null;
  });
  const target = firsts[0] ?? null;
  return firsts.every((first) => first?.midi === target?.midi) ? target : null;
}

/** The last notes as a walk by step into the next root, two notes at least and one of them outside the chord. */
export function walkClaim(scene: Scene): Claim | null {
  const { tones } = scene;
  const target = targetOf(scene);
  const last = tones.at(-1);
  if (!target || !last || !isStep(last.midi, target.midi)) return null;
  const direction = Math.sign(target.midi - last.midi);
  let from = tones.length - 1;
  while (from > 0) {
    const [before, here] = [tones[from - 1], tones[from]];
    if (!before || !here || !isStep(before.midi, here.midi)) break;
    if (Math.sign(here.midi - before.midi) !== direction) break;
    from -= 1;
  }
  const walk = tones.slice(from);
  return walk.length < 2 || walk.every((tone) => tone.member) ? null : { kind: 'walk', from, target };
}

/** How the last note leads into the next root. */
export function leadClaim(scene: Scene): Claim | null {
  const { tones } = scene;
  const target = targetOf(scene);
  const last = tones.at(-1);
  if (!target || !last) return null;
  const distance = target.midi - last.midi;
  return Math.abs(distance) === 1 || Math.abs(distance) === 2 || distance === 5 || distance === -7
    ? { kind: 'lead', note: tones.length - 1, target }
    : null;
}
