import { capitalised, unreachable } from '../base';
import { barsText } from './bars-text';
import { hearLine } from './hearing';
import { type AnalysedLine, analysed, type LineClaim, lineClaimsFor } from './line-claims';
import { modelOf } from './read-request';
import type { LineNotes, LineRequest, Technique } from './types';

/** What each technique is, for someone who meets it for the first time. */
const TECHNIQUES_FOR_BEGINNERS: Readonly<Record<Technique, (bars: string) => string>> = {
  'chord tones': (bars) =>
    `Chord tones in ${bars}: the notes of the chord one after the other (an arpeggio). They tell which chord it is without anyone else playing it.`,
  'scale steps': (bars) =>
    `Scale steps in ${bars}: the notes between those of the chord. They lead from one to the next, so play them through without stopping.`,
  'beat one silent': (bars) =>
    `No note on beat one in ${bars}: drums and chops carry the beat through the gap. Count the one, and come in after it.`,
  'long silences': (bars) =>
    `A long silence in ${bars}: drums and chops carry the beat through the gap. Keep counting, and let nothing ring.`,
  octave: (bars) =>
    `An octave in ${bars}: the same note, higher or lower. Two strings up and two frets up is the same note again.`,
  'approach note': (bars) =>
    `An approach note in ${bars}: a note just beside the next one, which it leads to. It is short, and the note it leads to is the one that counts.`,
  anticipation: (bars) =>
    `An anticipation in ${bars}: the next chord’s note comes just before its bar. It is early on purpose, so do not wait for the one.`,
};

function sentenceFor(line: AnalysedLine, claim: LineClaim, brief: boolean): string | null {
  switch (claim.kind) {
    case 'taught':
      return TECHNIQUES_FOR_BEGINNERS[claim.technique](barsText(line, claim.bars));
    case 'motif': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${bars.startsWith('every') ? 'has' : 'have'} the same rhythm: learn it once, clap it, then play it.`;
    }
    case 'answers':
      return `${capitalised(barsText(line, claim.bars))} ${claim.bars.length > 1 ? 'answer' : 'answers'} it, like someone who replies: the rest before is the pause for breath.`;
    case 'turns':
      return `${capitalised(barsText(line, claim.bars))} ${claim.bars.length > 1 ? 'are' : 'is'} different on purpose: a phrase ends there.`;
    case 'leads':
      return claim.home
        ? `The end of ${barsText(line, [claim.bar])} leads back to the beginning, so the line can go round and round.`
        : null;
    case 'closes':
      return `${capitalised(barsText(line, [claim.bar]))} ends on the root, the note that the chord is named after: it sounds finished.`;
    case 'listen for silence':
      return `Listen to beat one of ${barsText(line, claim.bars)}: the bass is silent there, and you hear the drums alone.`;
    case 'listen for roots':
      if (brief) return `Listen for the root on beat one of ${barsText(line, claim.bars)}.`;
      return `Listen to beat one of ${barsText(line, claim.bars)}: the bass plays the root, the note that the chord is named after.`;
    default:
      return unreachable(claim);
  }
}

const LISTENED: ReadonlySet<LineClaim['kind']> = new Set(['listen for silence', 'listen for roots']);

/**
 * What a line teaches, where to listen and why there is silence, for a student who begins: the same claims as those of
 * the teacher's explanation, so as true of the notes. Empty for an unwritten line.
 * @param brief - what it teaches and where to listen, and no more: paper has little room
 */
export function explainToStudent(
  request: LineRequest,
  line: LineNotes,
  { brief = false }: { readonly brief?: boolean } = {},
): readonly string[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  if (heard.every((tones) => tones.length === 0)) return [];
  const told = analysed(model, heard);
  const claims = lineClaimsFor(told);
  const taught = claims.filter(({ kind }) => kind === 'taught');
  const others = claims.filter(({ kind }) => kind !== 'taught' && (!brief || LISTENED.has(kind)));
  return [...taught, ...others].flatMap((claim) => sentenceFor(told, claim, brief) ?? []);
}
