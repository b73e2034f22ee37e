import { capitalised } from '../base';
import { feelTempo } from '../feel';
import { describeKeyIn, keySignature } from '../theory';
import { barFindings, type MusicFinding } from './bar-findings';
import { type HeardLine, hearLine } from './hearing';
import { barHeading, type LineModel, namingOf } from './model';
import { modelOf } from './read-request';
import { findBreaches, wordsInBar } from './rules/check';
import type { LineNotes, LineRequest } from './types';

/** Accidentals in the signature at most, by level (common practice, no source). */
export const MOST_ACCIDENTALS: readonly number[] = [1, 2, 3, 3, 4, 5];

function wholeFindings(model: LineModel): MusicFinding[] {
  const { feel, tempo, key, level } = model.request;
  const findings: MusicFinding[] = [];
  const { least, most: fastest } = feelTempo(feel, model.request.chart.metre);
  if (tempo < least || tempo > fastest) {
    const count = feel.tempo.count === 'one way' ? '' : ` in the ${feel.tempo.count} count`;
    findings.push({
      kind: 'tempo',
      bar: null,
      note: null,
      mended: null,
      message: `${tempo} bpm lies outside ${feel.name.toLowerCase()}, which is played at ${least} to ${fastest}${count}.`,
      repair: `Set the tempo between ${least} and ${fastest}, or keep it as a practice tempo.`,
    });
  }
  const accidentals = Math.abs(keySignature(key));
  const most = MOST_ACCIDENTALS[level] ?? 5;
  if (accidentals > most) {
    findings.push({
      kind: 'key',
      bar: null,
      note: null,
      mended: null,
      message: `${describeKeyIn(namingOf(model), key)} has ${accidentals} accidentals; level ${level} reads ${most} at most.`,
      repair: 'Transpose to a nearer key or raise the level.',
    });
  }
  return findings;
}

/** A bar without a sound is silent by intent or not yet written: neither is scolded. */
function ruleFindings(model: LineModel, heard: HeardLine): MusicFinding[] {
  const sounding = findBreaches(model, heard).filter(({ bar }) => (heard[bar]?.length ?? 0) > 0);
  return sounding.map((breach) => {
    const { heard: what, mend } = wordsInBar({ model, heard }, breach.rule, breach.bar);
    return {
      kind: 'rule',
      rule: breach.rule,
      bar: breach.bar,
      note: null,
      mended: null,
      message: `${barHeading(model, breach.bar)}: ${what}.`,
      repair: `${capitalised(mend)}.`,
    };
  });
}

/**
 * The musical side of the lesson check: what contradicts the chords, the spelling, the level, the feel's tempo
 * and the rules, each with its place and a repair. Silent on an unwritten line, but for its tempo and key.
 */
export function musicFindings(request: LineRequest, line: LineNotes): readonly MusicFinding[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  const written = heard.some((tones) => tones.length > 0);
  const inBars = model.bars.flatMap((bar) => {
    const checked = { model, bar, tones: heard[bar.index] ?? [], notes: line[bar.index] ?? [] };
    const after = bar.after.flatMap((index) => heard[index]?.slice(0, 1) ?? []);
    return barFindings(checked, after);
  });
  return [...wholeFindings(model), ...inBars, ...(written ? ruleFindings(model, heard) : [])];
}
