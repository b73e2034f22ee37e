import type { Claim, Facts, Scene } from './claim';
import { type HeardLine, struck } from './hearing';
import type { BarModel, LineModel } from './model';
import { TECHNIQUE_ROWS } from './techniques/table';
import type { Tone } from './tones';

/** The first bar of the section that a bar stands in. */
export function statementOf({ request: { chart } }: LineModel, index: number): number {
  const section = chart.bars[index]?.section ?? 0;
  return chart.sections[section]?.start ?? 0;
}

function rhythmClaim({ model, heard, bar, tones }: Scene): Claim | null {
  const pattern = (notes: readonly Tone[]) =>
    struck(notes)
      .map((tone) => tone.start)
      .join(' ');
  const start = statementOf(model, bar.index);
  const statement = heard[start] ?? [];
  return start !== bar.index && statement.length > 0 && pattern(statement) === pattern(tones)
    ? { kind: 'rhythm', bar: start }
    : null;
}

/** What the ear can hold on to: the note that makes the first chord major or minor. */
function thirdClaim({ tones }: Scene): Claim | null {
  const note = tones.findIndex(
    (tone) => tone.member && (tone.interval === 3 || tone.interval === 4) && tone.stretch?.steps[2]?.member,
  );
  const tone = tones[note];
  if (!tone?.stretch || (tone.stretch.members[3] && tone.stretch.members[4])) return null;
  return { kind: 'third', note, quality: tone.interval === 4 ? 'major' : 'minor' };
}

/** The techniques, the most telling first. */
const BY_TELLING = TECHNIQUE_ROWS.toSorted((one, other) => one.telling - other.telling);

/** Claims beside the one about listening. */
const MOST_CLAIMS = 2;

/** What is worth saying about a bar, the most telling first; every claim is true of the notes. */
export function claimsFor(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): readonly Claim[] {
  const tones = heard[bar.index] ?? [];
  if (tones.length === 0) return [{ kind: 'rest', chord: bar.playable }];
  const scene: Scene = { model, heard, bar, tones, facts };
  const rhythm = rhythmClaim(scene);
  const claims = [...BY_TELLING.flatMap((row) => row.claim(scene) ?? []), ...(rhythm ? [rhythm] : [])];
  const said = orderedForEar(claims).slice(0, MOST_CLAIMS);
  if (said.length === 0) return [{ kind: 'open' }];
  const third =
    said.length < MOST_CLAIMS || said.some(({ kind }) => kind === 'spells') ? thirdClaim(scene) : null;
  return third ? [...said, third] : said;
}

/** What the bar plays before where it goes: a lead that would open the sentence comes after the next claim. */
function orderedForEar(claims: readonly Claim[]): readonly Claim[] {
  const [first, second, ...rest] = claims;
  return first && second && first.kind === 'lead' ? [second, first, ...rest] : claims;
}
