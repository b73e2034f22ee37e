import { analyseBar } from './analysis';
import type { Claim } from './claim';
import { claimsFor } from './claims';
import { type HeardLine, isSilentOnOne, struck } from './hearing';
import type { LineModel } from './model';
import { TECHNIQUE_ROWS } from './techniques/table';
import type { Tone } from './tones';
import type { BarAnalysis, Technique } from './types';

type Lead = Extract<Claim, { kind: 'lead' | 'walk' }>;

/** What can be said about a whole line, as data; bars are indices of written bars, in order. */
export type LineClaim =
  /** Bars whose notes start at the same places; `figure` where the degrees are the same, too. */
  | { readonly kind: 'motif'; readonly bars: readonly number[]; readonly figure: string | null }
  /** Bars with a silent beat one after a bar of the motif. */
  | { readonly kind: 'answers'; readonly bars: readonly number[] }
  /** Bars that end a phrase or a section, in a rhythm that only such bars have. */
  | { readonly kind: 'turns'; readonly bars: readonly number[] }
  | { readonly kind: 'taught'; readonly technique: Technique; readonly bars: readonly number[] }
  /** How a bar leads into the next chord: the last one of the round, or the plainest example. */
  | {
      readonly kind: 'leads';
      readonly bar: number;
      readonly to: number;
      readonly by: Lead;
      readonly home: boolean;
    }
  | { readonly kind: 'closes'; readonly bar: number; readonly note: Tone }
  /** Bars in which nothing sounds at all. */
  | { readonly kind: 'rests'; readonly bars: readonly number[] }
  /** Where nothing sounds on beat one. */
  | { readonly kind: 'listen for silence'; readonly bars: readonly number[] }
  /** Bars that begin with the root of their chord, struck on beat one. */
  | { readonly kind: 'listen for roots'; readonly bars: readonly number[] };

/** A line with what its analysis says of each bar. */
export interface AnalysedLine {
  readonly model: LineModel;
  readonly heard: HeardLine;
  readonly analyses: readonly BarAnalysis[];
}

const patternOf = (tones: readonly Tone[]): string =>
  struck(tones)
    .map((tone) => tone.start)
    .join(' ');

/** The degrees of a bar in order; '' where a note has none, as over a bar without a chord. */
const figureOf = (analysis: BarAnalysis | undefined): string => {
  const degrees = (analysis?.notes ?? []).map((note) => note.degreeText);
  return degrees.includes('') ? '' : degrees.join('–');
};

/** The bars that share a rhythm, in the order in which the rhythms come. */
function barsByRhythm({ model, heard }: AnalysedLine): readonly (readonly number[])[] {
  const byRhythm = new Map<string, number[]>();
  for (const bar of model.bars) {
    const tones = heard[bar.index] ?? [];
    if (struck(tones).length === 0) continue;
    const key = `${bar.ticks} ${patternOf(tones)}`;
    const known = byRhythm.get(key);
    if (known) known.push(bar.index);
    else byRhythm.set(key, [bar.index]);
  }
  return [...byRhythm.values()];
}

/** Whether a phrase or a section ends with the bar. */
function endsPhrase({ request, bars }: LineModel, index: number): boolean {
  const section = request.chart.sections[request.chart.bars[index]?.section ?? 0];
  const opening = section?.start ?? 0;
  // A phrase is counted from bar 1, not from its pickup, which leads into it and ends nothing.
  const place = index - opening - (bars[opening]?.pickup === true ? 1 : 0);
  if (place < 0) return false;
  return (place + 1) % request.feel.phraseLength === 0 || index + 1 === opening + (section?.length ?? 0);
}

function motifClaims(line: AnalysedLine): readonly LineClaim[] {
  const { model, heard, analyses } = line;
  const rhythms = barsByRhythm(line);
  // What most bars share, the earliest of equals.
  const bars = rhythms.reduce((most, each) => (each.length > most.length ? each : most), []);
  if (bars.length < 2) return [];
  const figures = new Set(bars.map((bar) => figureOf(analyses[bar])));
  const figure = figures.size === 1 ? [...figures][0] || null : null;
  const motif = new Set(bars);
  const written = model.bars.filter((bar) => (heard[bar.index]?.length ?? 0) > 0);
  const answers = written.filter(
    ({ index }) => motif.has(index - 1) && !motif.has(index) && isSilentOnOne(heard[index] ?? []),
  );
  const answering = new Set(answers.map(({ index }) => index));
  // A rhythm that comes within a phrase, too, says nothing of its end.
  const turning = new Set(
    rhythms.filter((each) => each !== bars && each.every((index) => endsPhrase(model, index))).flat(),
  );
  const turns = written.filter(({ index }) => turning.has(index) && !answering.has(index));
  return [
    { kind: 'motif', bars, figure },
    ...(answers.length > 0 ? [{ kind: 'answers', bars: answers.map(({ index }) => index) } as const] : []),
    ...(turns.length > 0 ? [{ kind: 'turns', bars: turns.map(({ index }) => index) } as const] : []),
  ];
}

const taughtClaims = ({ analyses }: AnalysedLine): readonly LineClaim[] =>
  TECHNIQUE_ROWS.flatMap(({ technique }): readonly LineClaim[] => {
    const bars = analyses.flatMap((analysis, index) =>
      analysis.techniques.includes(technique) ? [index] : [],
    );
    return bars.length > 0 ? [{ kind: 'taught', technique, bars }] : [];
  });

function leadOf({ model, heard, analyses }: AnalysedLine, index: number): Lead | null {
  const bar = model.bars[index];
  const analysis = analyses[index];
  if (!bar || !analysis) return null;
  const lead = claimsFor(model, heard, bar, analysis).find(({ kind }) => kind === 'lead' || kind === 'walk');
  return lead?.kind === 'lead' || lead?.kind === 'walk' ? lead : null;
}

function leadClaims(line: AnalysedLine): readonly LineClaim[] {
  const { model, heard } = line;
  const last = model.order.at(-1) ?? -1;
  const home = leadOf(line, last);
  const first = model.order[0] ?? 0;
  if (home) return [{ kind: 'leads', bar: last, to: first, by: home, home: true }];
  const note = heard[last]?.at(-1);
  if (note && note.interval === 0) return [{ kind: 'closes', bar: last, note }];
  for (const bar of model.bars) {
    const [to] = bar.after;
    const by = to === undefined ? null : leadOf(line, bar.index);
    if (by && to !== undefined) return [{ kind: 'leads', bar: bar.index, to, by, home: false }];
  }
  return [];
}

/** Bars without a note in a line that has some; of a pickup, the end of a bar, it is not told. */
function restClaims({ model, heard }: AnalysedLine): readonly LineClaim[] {
  const bars = model.bars.filter(({ pickup, index }) => !pickup && (heard[index]?.length ?? 0) === 0);
  return bars.length > 0 ? [{ kind: 'rests', bars: bars.map(({ index }) => index) }] : [];
}

function listenClaims({ model, heard }: AnalysedLine): readonly LineClaim[] {
  // A pickup, the end of a bar, has no beat one.
  const written = model.bars.filter(
    (bar) => !bar.pickup && (heard[bar.index]?.length ?? 0) > 0 && bar.stretches[0]?.chord,
  );
  const silent = written.filter((bar) => isSilentOnOne(heard[bar.index] ?? []));
  if (silent.length > 0) return [{ kind: 'listen for silence', bars: silent.map(({ index }) => index) }];
  const rooted = written.filter((bar) => {
    const first = heard[bar.index]?.[0];
    return first !== undefined && first.start === 0 && !first.held && first.interval === 0;
  });
  return rooted.length > 0 ? [{ kind: 'listen for roots', bars: rooted.map(({ index }) => index) }] : [];
}

/** What a whole line teaches where, how it is made, where it leads and what to listen for. */
export const lineClaimsFor = (line: AnalysedLine): readonly LineClaim[] => [
  ...motifClaims(line),
  ...taughtClaims(line),
  ...restClaims(line),
  ...leadClaims(line),
  ...listenClaims(line),
];

export const analysed = (model: LineModel, heard: HeardLine): AnalysedLine => ({
  model,
  heard,
  analyses: model.bars.map((bar) => analyseBar(model, heard, bar.index)),
});
