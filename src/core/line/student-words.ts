import { capitalised, midiOf, pitchClassOf, unreachable } from '../base';
import { agreeing, barsText } from './bars-text';
import { chopsSoundIn, gapsOf } from './gaps';
import { hearLine } from './hearing';
import { type AnalysedLine, analysed, type LineClaim, lineClaimsFor } from './line-claims';
import { modelOf } from './read-request';
import type { Tone } from './tones';
import type { BarAnalysis, LineNotes, LineRequest, Technique } from './types';

/** Which of the rhythm section carry the beat where the bass is silent. */
export interface Carriers {
  readonly drums: boolean;
  readonly chops: boolean;
}

const EVERYBODY: Carriers = { drums: true, chops: true };

/** A claim that is put into words, and what the words depend on. */
interface Told {
  readonly line: AnalysedLine;
  readonly carriers: Carriers;
  readonly brief: boolean;
}

/** Why there are gaps: somebody else is heard in each of them. Every pattern of the drums has a stroke in every beat. */
function gapText(
  { line, carriers: { drums, chops } }: Told,
  bars: readonly number[],
  of: Parameters<typeof gapsOf>[2],
): string {
  const heardChops = chops && gapsOf(line, bars, of).every((gap) => chopsSoundIn(line, gap));
  if (drums && heardChops) return 'drums and chops carry the beat through the gap';
  if (drums) return 'the drums carry the beat through the gap';
  return heardChops
    ? 'the chops carry the beat through the gap'
    : 'you carry the beat through the gap yourself';
}

/** Whether the bar tells its chord without anyone else: root, third and one more of a chord's notes. */
const isArpeggio = (tones: readonly Tone[]): boolean =>
  tones.some(({ stretch }) => {
    const members = new Set(
      tones.flatMap((tone) => (tone.stretch === stretch && tone.member ? [tone.interval] : [])),
    );
    return members.size > 2 && members.has(0) && (members.has(3) || members.has(4));
  });

function chordTonesText({ line }: Told, bars: readonly number[]): string {
  const spelled = bars.filter((bar) => isArpeggio(line.heard[bar] ?? []));
  const said = `Chord tones in ${barsText(line, bars)}: notes that belong to the chord`;
  if (spelled.length === 0) return `${said}. Each is at home there, so let it sound for its whole length.`;
  const where = spelled.length === bars.length ? 'There' : `In ${barsText(line, spelled)}`;
  return `${said}. ${where} they spell the chord (an arpeggio): you hear which chord it is without anyone else playing it.`;
}

/** Half steps from a string to the next one of a bass in fourths. */
const FOURTH = 5;

function octaveText({ line }: Told, bars: readonly number[]): string {
  const { openStrings } = line.model.request.instrument;
  const inFourths = openStrings.every(
    (open, index) =>
      index === 0 || Math.abs(midiOf(open) - midiOf(openStrings[index - 1] ?? open)) === FOURTH,
  );
  const shape = inFourths ? ' Two strings up and two frets up is the same note again.' : '';
  return `An octave in ${barsText(line, bars)}: the same note, higher or lower.${shape}`;
}

/** What each technique is, for someone who meets it for the first time. */
const TECHNIQUES_FOR_BEGINNERS: Readonly<Record<Technique, (told: Told, bars: readonly number[]) => string>> =
  {
    'chord tones': chordTonesText,
    'scale steps': ({ line }, bars) =>
      `Scale steps in ${barsText(line, bars)}: notes of the scale between those of the chord. Play on through them to the next note.`,
    'beat one silent': (told, bars) =>
      `No note on beat one in ${barsText(told.line, bars)}: ${gapText(told, bars, 'beat one silent')}. Count the one, and come in after it.`,
    'long silences': (told, bars) =>
      `A long silence in ${barsText(told.line, bars)}: ${gapText(told, bars, 'long silences')}. Keep counting, and let nothing ring.`,
    octave: octaveText,
    'approach note': ({ line }, bars) =>
      `An approach note in ${barsText(line, bars)}: a note that does not belong to its chord and wants to move on. The note after it is the one that counts.`,
    anticipation: ({ line }, bars) =>
      `An anticipation in ${barsText(line, bars)}: the next bar’s bass note comes before its bar begins. It is early on purpose, so do not wait for the one.`,
  };

/** Whether a note is the key's own: what ends on it sounds finished. */
function isTonic({ model }: AnalysedLine, bar: number, { name }: Tone): boolean {
  const key = model.request.chart.bars[bar]?.key ?? model.request.key;
  return pitchClassOf(name) === pitchClassOf(key.tonic);
}

function sentenceFor(told: Told, claim: LineClaim): string | null {
  const { line, brief } = told;
  switch (claim.kind) {
    case 'taught':
      return TECHNIQUES_FOR_BEGINNERS[claim.technique](told, claim.bars);
    case 'motif': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${agreeing(bars, 'has', 'have')} the same rhythm: learn it once, clap it, then play it.`;
    }
    case 'answers': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${agreeing(bars, 'answers', 'answer')} it, like someone who replies: the rest before is the pause for breath.`;
    }
    case 'turns': {
      const bars = barsText(line, claim.bars);
      return `${capitalised(bars)} ${agreeing(bars, 'has', 'have')} another rhythm: a phrase ends there.`;
    }
    case 'leads':
      return claim.home
        ? `The end of ${barsText(line, [claim.bar])} leads back to the beginning, so the line can go round and round.`
        : null;
    case 'rests':
      return `No note at all in ${barsText(line, claim.bars)}: ${gapText(told, claim.bars, 'silent bars')}. Count on, and be there for the next note.`;
    case 'closes': {
      const finished = isTonic(line, claim.bar, claim.note) ? ': it sounds finished' : '';
      return `${capitalised(barsText(line, [claim.bar]))} ends on the root, the note that the chord is named after${finished}.`;
    }
    case 'listen for silence':
      return `Listen to beat one of ${barsText(line, claim.bars)}: the bass is silent there, and the beat goes on without it.`;
    case 'listen for roots':
      if (brief) return `Listen for the root on beat one of ${barsText(line, claim.bars)}.`;
      return `Listen to beat one of ${barsText(line, claim.bars)}: the bass plays the root, the note that the chord is named after.`;
    default:
      return unreachable(claim);
  }
}

/** A sentence for a student, what it is about, and the bars that it speaks of, by their indices. */
export interface ToldSentence {
  /** A technique, bars without a note, where to listen, or how the line is made. */
  readonly about: Technique | 'silent bars' | 'listen' | 'form';
  readonly bars: readonly number[];
  readonly sentence: string;
}

const LISTENED: ReadonlySet<LineClaim['kind']> = new Set(['listen for silence', 'listen for roots']);

function aboutOf(claim: LineClaim): ToldSentence['about'] {
  if (claim.kind === 'taught') return claim.technique;
  if (claim.kind === 'rests') return 'silent bars';
  return LISTENED.has(claim.kind) ? 'listen' : 'form';
}

/**
 * What a line teaches, where to listen and why there is silence, for a student who begins: the same claims as those of
 * the teacher's explanation, so as true of the notes. Empty for an unwritten line.
 * @param brief - what it teaches and where to listen, and no more: paper has little room
 * @param carriers - who is heard while the bass is silent; drums and chops when left out
 * @param analyses - what the analysis of this line says of each bar, where it is known
 */
export function explainToStudent(
  request: LineRequest,
  line: LineNotes,
  {
    brief = false,
    carriers = EVERYBODY,
    analyses,
  }: {
    readonly brief?: boolean;
    readonly carriers?: Carriers;
    readonly analyses?: readonly BarAnalysis[];
  } = {},
): readonly ToldSentence[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  if (heard.every((tones) => tones.length === 0)) return [];
  const analysis = analyses === undefined ? analysed(model, heard) : { model, heard, analyses };
  const told = { line: analysis, carriers, brief };
  const claims = lineClaimsFor(analysis);
  const taught = claims.filter(({ kind }) => kind === 'taught');
  const others = claims.filter(({ kind }) => kind !== 'taught' && (!brief || LISTENED.has(kind)));
  return [...taught, ...others].flatMap((claim) => {
    const sentence = sentenceFor(told, claim);
    if (sentence === null) return [];
    const bars = 'bars' in claim ? claim.bars : [claim.bar];
    return { about: aboutOf(claim), bars, sentence };
  });
}
