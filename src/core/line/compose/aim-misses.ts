import { barRange, capitalised, listed } from '../../base';
import { techniquesInBar } from '../analysis';
import { aimsIn, pitchesAtPosition } from '../asked';
import { type HeardLine, hearLine, silenceOf, struck } from '../hearing';
import { isAmongDegrees } from '../kept-degrees';
import { type BarModel, barNumber, type LineModel } from '../model';
import { phrasesOf } from '../phrases';
import { modelOf } from '../read-request';
import { TECHNIQUE_ROWS, TECHNIQUE_TABLE } from '../techniques/table';
import type { Aim, AimMiss, AimTerm, LineNotes, LineRequest, Technique } from '../types';

/** What is missed in one bar: the end of a sentence about it, and what it has instead. */
interface Missed {
  readonly term: AimTerm;
  readonly techniques?: readonly Technique[];
  readonly what: string;
  readonly nearest: string;
}

/** A composed line with the techniques that its bars show. */
interface Shown {
  readonly model: LineModel;
  readonly heard: HeardLine;
  readonly techniques: readonly (readonly Technique[])[];
}

const shownText = (techniques: readonly string[]): string =>
  techniques.length === 0 ? 'It rests.' : `It shows ${listed(techniques)} instead.`;

function missedTechniques({ techniques }: Shown, bar: BarModel, aim: Aim): Missed[] {
  const shown = techniques[bar.index] ?? [];
  const lacking = aim.where.kind === 'bar' ? (aim.wanted ?? []).filter((one) => !shown.includes(one)) : [];
  const anyway = (aim.forbidden ?? []).filter((one) => shown.includes(one));
  return [
    ...(lacking.length > 0
      ? [
          {
            term: 'wanted' as const,
            techniques: lacking,
            what: `cannot show ${listed(lacking)} with this chord, level and range`,
            nearest: shownText(shown),
          },
        ]
      : []),
    ...(anyway.length > 0
      ? [
          {
            term: 'forbidden' as const,
            techniques: anyway,
            what: `cannot do without ${listed(anyway)}`,
            nearest: 'It keeps the other aims.',
          },
        ]
      : []),
  ];
}

const notesText = (count: number): string => `It has ${count === 1 ? 'one note' : `${count} notes`}.`;

function missedRhythm({ heard }: Shown, bar: BarModel, aim: Aim): Missed[] {
  const tones = heard[bar.index] ?? [];
  const beats = bar.ticks / bar.beat;
  const count = struck(tones).length;
  const share = silenceOf(tones, bar.ticks).whole / bar.ticks;
  const missed: Missed[] = [];
  if (aim.density === 'sparse' && count >= beats)
    missed.push({
      term: 'density',
      what: 'has no rhythm with fewer notes at this level',
      nearest: notesText(count),
    });
  if (aim.density === 'busy' && count <= beats)
    missed.push({
      term: 'density',
      what: 'has no rhythm with more notes at this level and tempo',
      nearest: notesText(count),
    });
  if (share < (aim.silence ?? 0))
    missed.push({
      term: 'silence',
      what: 'has no rhythm with so much silence',
      nearest: `${Math.round(share * 100)} % of it is silent.`,
    });
  return missed;
}

function missedReach({ model, heard }: Shown, bar: BarModel, aim: Aim): Missed[] {
  const tones = heard[bar.index] ?? [];
  const outside = tones.some(({ midi }) => midi < (aim.lowest ?? 0) || midi > (aim.highest ?? 127));
  const hand = aim.position === undefined ? null : pitchesAtPosition(model.request, aim.position);
  const unreached = hand !== null && tones.some(({ midi }) => hand[midi] !== true);
  const nearest = 'It stays in the range of the level instead.';
  return [
    ...(outside
      ? [
          {
            term: 'range' as const,
            what: 'has neither root nor fifth in the range asked for, so it leaves it',
            nearest,
          },
        ]
      : []),
    ...(unreached
      ? [
          {
            term: 'position' as const,
            what: 'has neither root nor fifth in the hand position asked for, so it leaves it',
            nearest,
          },
        ]
      : []),
  ];
}

function missedDegrees({ heard }: Shown, bar: BarModel): Missed[] {
  const { demands } = bar;
  if (demands.degrees === null) return [];
  const others = (heard[bar.index] ?? []).filter(
    ({ stretch, interval }) => stretch !== null && !isAmongDegrees(demands, stretch, interval),
  );
  return others.length === 0
    ? []
    : [
        {
          term: 'degrees',
          what: 'has no figure of these degrees alone with this chord, level and feel',
          nearest: `${others.length === 1 ? 'One note of it is' : `${others.length} notes of it are`} of another degree.`,
        },
      ];
}

function barMisses(shown: Shown, bar: BarModel): AimMiss[] {
  const { model } = shown;
  const aims = model.request.aims ?? [];
  return aimsIn(model.request, bar.index).flatMap((aim) =>
    [
      ...missedTechniques(shown, bar, aim),
      ...missedRhythm(shown, bar, aim),
      ...missedReach(shown, bar, aim),
      ...(aim.degrees === undefined ? [] : missedDegrees(shown, bar)),
    ].map(
      ({ term, techniques = [], what, nearest }): AimMiss => ({
        aim: aims.indexOf(aim),
        term,
        techniques,
        bars: [bar.index],
        message: `${capitalised(barsName(model, [bar.index]))} ${what}.`,
        nearest,
      }),
    ),
  );
}

/** A technique that some bar of each phrase has to show. */
export interface Wish {
  /** Index in the request's aims; −1 for a technique that is switched on and should be heard somewhere. */
  readonly aim: number;
  readonly technique: Technique;
  readonly bars: readonly number[];
}

/** What the aims for the line and for sections ask of each phrase, and what is switched on of the whole line. */
export function wishesOf(model: LineModel): readonly Wish[] {
  const { request, bars } = model;
  const playable = bars.filter((bar) => bar.playable).map(({ index }) => index);
  const forPhrases = (request.aims ?? []).flatMap((aim, index) => {
    if (aim.where.kind === 'bar') return [];
    const inside = new Set(playable.filter((bar) => aimsIn(request, bar).includes(aim)));
    const phrases = phrasesOf(model)
      .map((phrase) => phrase.filter((bar) => inside.has(bar)))
      .filter((phrase) => phrase.length > 0);
    return (aim.wanted ?? []).flatMap((technique) =>
      phrases.map((phrase): Wish => ({ aim: index, technique, bars: phrase })),
    );
  });
  const forLine = TECHNIQUE_ROWS.flatMap((row): readonly Wish[] =>
    request.techniques.has(row.technique) ? [{ aim: -1, technique: row.technique, bars: playable }] : [],
  );
  return playable.length > 0 ? [...forPhrases, ...forLine] : forPhrases;
}

/** Whether the level has the technique at all. */
export const isWithinLevel = ({ technique }: Wish, level: number): boolean =>
  level >= TECHNIQUE_TABLE[technique].from;

/** The wishes that no bar of theirs fulfils. */
export const unfulfilled = (
  wishes: readonly Wish[],
  techniques: readonly (readonly Technique[])[],
): readonly Wish[] =>
  wishes.filter(({ technique, bars }) => !bars.some((bar) => techniques[bar]?.includes(technique)));

export const techniquesOf = (model: LineModel, heard: HeardLine): readonly (readonly Technique[])[] =>
  model.bars.map((bar) => techniquesInBar(model, heard, bar.index));

/** The bars of a phrase, which follow each other: `bar 3`, `bars 1 to 4`, `the pickup`. */
function barsName(model: LineModel, bars: readonly number[]): string {
  const numbers = bars.map((bar) => barNumber(model, bar));
  return barRange(Math.min(...numbers), Math.max(...numbers));
}

const phraseMiss = (model: LineModel, shown: Shown, { aim, technique, bars }: Wish): AimMiss => ({
  aim,
  term: 'wanted',
  techniques: [technique],
  bars,
  message: `No bar of ${barsName(model, bars)} can show ${technique} with these chords, level and range.`,
  nearest: `${bars.length === 1 ? 'It shows' : 'They show'} ${listed([...new Set(bars.flatMap((bar) => shown.techniques[bar] ?? []))])} instead.`,
});

/** Techniques that are switched on and that no bar of the line can show; not those that aims keep out of every bar. */
export function unheardRemarks(model: LineModel, line: LineNotes): readonly string[] {
  const wishes = wishesOf(model).filter(({ aim }) => aim < 0);
  if (wishes.length === 0) return [];
  const techniques = techniquesOf(model, hearLine(model, line));
  return unfulfilled(wishes, techniques).flatMap(({ technique }) => {
    const least = TECHNIQUE_TABLE[technique].from;
    const isKeptOut = model.bars.every(({ demands }) => !demands.techniques.has(technique));
    if (isKeptOut && model.request.level >= least) return [];
    return model.request.level < least
      ? `No bar shows ${technique}: that comes with level ${least}.`
      : `No bar shows ${technique}: these chords, the rhythms of the feel, the range and the rules leave no room for that.`;
  });
}

/** Which bars of a line do not keep which aim, and the nearest that they have; kept bars are held to the aims, too. */
export function aimMisses(model: LineModel, line: LineNotes): readonly AimMiss[] {
  if ((model.request.aims ?? []).length === 0) return [];
  const heard = hearLine(model, line);
  const shown: Shown = { model, heard, techniques: techniquesOf(model, heard) };
  const wishes = wishesOf(model).filter(({ aim }) => aim >= 0);
  return [
    ...model.bars.filter((bar) => bar.playable).flatMap((bar) => barMisses(shown, bar)),
    ...unfulfilled(wishes, shown.techniques).map((wish) => phraseMiss(model, shown, wish)),
  ];
}

/** The aims that a line does not keep, whoever wrote it. */
export const aimsMissed = (request: LineRequest, line: LineNotes): readonly AimMiss[] =>
  (request.aims ?? []).length === 0 ? [] : aimMisses(modelOf(request), line);
