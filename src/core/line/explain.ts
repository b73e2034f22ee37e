import { capitalised, numberWord, unreachable } from '../base';
import { agreeing, barsText } from './bars-text';
import { hearLine } from './hearing';
import { type AnalysedLine, analysed, type LineClaim, lineClaimsFor } from './line-claims';
import { modelOf } from './read-request';
import type { LineNotes, LineRequest } from './types';
import { wordsFor } from './wording';

/** A chart's bar as `bar 3` or `the pickup`. */
const barText = (line: AnalysedLine, bar: number): string => barsText(line, [bar]);

function leadSentence(line: AnalysedLine, claim: Extract<LineClaim, { kind: 'leads' }>): string {
  const { model, heard, analyses } = line;
  const bar = model.bars[claim.bar];
  const facts = analyses[claim.bar];
  if (!bar || !facts) return '';
  const words = wordsFor({ model, bar, tones: heard[claim.bar] ?? [], facts }, claim.by);
  const where = claim.home
    ? `leads back to ${barText(line, claim.to)}`
    : `leads on to ${barText(line, claim.to)}`;
  return `${capitalised(barText(line, claim.bar))} ${where}: ${words}.`;
}

function motifSentence(bars: string, figure: string | null): string {
  const verb = agreeing(bars, 'has the same', 'share one');
  return `${capitalised(bars)} ${verb} rhythm${figure === null ? '' : ` and ${agreeing(bars, 'the same', 'one')} figure, ${figure}`}.`;
}

function sentenceFor(line: AnalysedLine, claim: LineClaim): string {
  switch (claim.kind) {
    case 'motif':
      return motifSentence(barsText(line, claim.bars), claim.figure);
    case 'answers': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${agreeing(bars, 'answers', 'answer')} it after a silent beat one.`;
    }
    case 'turns': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${agreeing(bars, 'turns', 'turn')} away from it to end the phrase.`;
    }
    case 'taught':
      return `${claim.technique} in ${barsText(line, claim.bars)}`;
    case 'leads':
      return leadSentence(line, claim);
    case 'rests':
      return `Nothing is played in ${barsText(line, claim.bars)}.`;
    case 'closes':
      return `${capitalised(barText(line, claim.bar))} closes on its root.`;
    case 'listen for silence':
      return `Listen for beat one of ${barsText(line, claim.bars)}: nothing is struck there.`;
    case 'listen for roots':
      return `Listen for the root on beat one of ${barsText(line, claim.bars)}.`;
    default:
      return unreachable(claim);
  }
}

/** What the line teaches, in one sentence. */
function taughtSentence(line: AnalysedLine, claims: readonly LineClaim[]): readonly string[] {
  const taught = claims.filter(({ kind }) => kind === 'taught').map((claim) => sentenceFor(line, claim));
  if (taught.length === 0) return [];
  return [
    `The line teaches ${numberWord(taught.length)} ${taught.length > 1 ? 'things' : 'thing'}: ${taught.join('; ')}.`,
  ];
}

/**
 * What a whole line teaches where, which figure it carries, where that answers and turns, where the line leads and
 * what to listen for: a few short sentences, each true of the notes. Empty for an unwritten line.
 */
export function explainLine(request: LineRequest, line: LineNotes): readonly string[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  if (heard.every((tones) => tones.length === 0)) return [];
  const told = analysed(model, heard);
  const claims = lineClaimsFor(told);
  const others = claims.filter(({ kind }) => kind !== 'taught').map((claim) => sentenceFor(told, claim));
  return [...taughtSentence(told, claims), ...others];
}
