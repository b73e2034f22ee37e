import { barTicks, midiOf } from '../base';
import {
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  lineRequest,
  type StoredTake,
} from '../lesson';
import { analyseLine, type LineNotes } from '../line';
import { isInLine } from './takes';

/** A take in the list of takes. */
export interface RankedTake {
  readonly take: StoredTake;
  /** What sets it apart, in the trade's words. */
  readonly words: string;
  /** Whether it is the line as it stands. */
  readonly inLine: boolean;
}

/** What can be told of a line by counting. */
interface Facts {
  readonly silence: number;
  readonly notes: number;
  readonly rhythms: number;
  readonly restsOnOne: number;
  readonly leaps: number;
  readonly steps: number;
}

/** Half steps of a leap that is wider than a fifth. */
const WIDE = 8;

function factsOf(piece: LinePiece, sheet: LineSheet, settings: InstrumentSettings, line: LineNotes): Facts {
  const { bars } = sheet.chart;
  const length = bars.reduce((sum, bar) => sum + barTicks(bar.metre), 0);
  const notes = line.flat();
  const sounding = notes.reduce((sum, note) => sum + note.duration, 0);
  const request = lineRequest(piece, sheet.chart, sheet.key, settings);
  const analyses = analyseLine(request, line);
  const pitches = notes.map(({ pitch }) => midiOf(pitch));
  return {
    silence: length === 0 ? 0 : 1 - sounding / length,
    notes: notes.length / Math.max(1, bars.length),
    rhythms: new Set(line.map((bar) => bar.map(({ start }) => start).join(' '))).size,
    restsOnOne: line.filter((bar) => bar.length > 0 && bar[0]?.start !== 0).length,
    leaps: pitches.filter((midi, index) => Math.abs(midi - (pitches[index - 1] ?? midi)) >= WIDE).length,
    steps: analyses.filter(({ techniques }) => techniques.includes('scale steps')).length,
  };
}

interface Trait {
  readonly of: (facts: Facts) => number;
  readonly most: ((facts: Facts) => string) | null;
  readonly least: ((facts: Facts) => string) | null;
}

const bars = (count: number): string => (count === 1 ? 'one bar' : `${count} bars`);

/** What may set a take apart, in the order in which a teacher would say it. */
const TRAITS: readonly Trait[] = [
  {
    of: ({ silence }) => Math.round(silence * 100),
    most: ({ silence }) => `the most space (${Math.round(silence * 100)} % silent)`,
    least: ({ silence }) => `the fullest (${Math.round(silence * 100)} % silent)`,
  },
  {
    of: ({ rhythms }) => rhythms,
    most: ({ rhythms }) => `the most varied rhythm (${rhythms} patterns)`,
    least: ({ rhythms }) =>
      rhythms === 1 ? 'one rhythm throughout' : `the steadiest rhythm (${rhythms} patterns)`,
  },
  {
    of: ({ steps }) => steps,
    most: ({ steps }) => `the most scale steps (in ${bars(steps)})`,
    least: ({ steps }) => (steps === 0 ? 'chord tones only' : `the fewest scale steps (in ${bars(steps)})`),
  },
  {
    of: ({ leaps }) => leaps,
    most: null,
    least: ({ leaps }) => (leaps === 0 ? 'no leap beyond a fifth' : 'the fewest wide leaps'),
  },
  {
    of: ({ restsOnOne }) => restsOnOne,
    most: ({ restsOnOne }) => `beat one silent in ${bars(restsOnOne)}`,
    least: ({ restsOnOne }) => (restsOnOne === 0 ? 'every bar begins on one' : 'beat one silent least often'),
  },
  {
    of: ({ notes }) => Math.round(notes * 10),
    most: ({ notes }) => `the most notes (${notes.toFixed(1)} a bar)`,
    least: ({ notes }) => `the fewest notes (${notes.toFixed(1)} a bar)`,
  },
];

/** Traits that are told of one take: more would not be read. */
const MOST_TRAITS = 2;

/** Traits in which one line stands alone at an end among all of them. */
function traitsOf(own: Facts, all: readonly Facts[]): readonly string[] {
  const others = all.filter((facts) => facts !== own);
  if (others.length === 0) return [];
  return TRAITS.flatMap(({ of, most, least }): readonly string[] => {
    const value = of(own);
    if (most !== null && others.every((facts) => of(facts) < value)) return [most(own)];
    return least !== null && others.every((facts) => of(facts) > value) ? [least(own)] : [];
  }).slice(0, MOST_TRAITS);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What can be counted of a take that stands out in nothing. */
const countsOf = ({ notes, silence, rhythms }: Facts): string =>
  `${notes.toFixed(1)} notes a bar, ${Math.round(silence * 100)} % silent, ${rhythms === 1 ? 'one rhythm' : `${rhythms} rhythms`}`;

function wordsFor(take: StoredTake, place: number, count: number, own: Facts, all: readonly Facts[]): string {
  const rank =
    take.cost === null
      ? 'changed by hand'
      : place === 0 && count > 1
        ? 'the composer’s best: comfortable, steady and leading on'
        : null;
  const told = [...(rank === null ? [] : [rank]), ...traitsOf(own, all)].join('; ');
  return `${capital(told === '' ? countsOf(own) : told)}.`;
}

const costOf = ({ cost }: StoredTake): number => cost ?? Number.POSITIVE_INFINITY;

/**
 * The takes of a piece, the best under the composer's score first and lines that were changed by hand last, each
 * with what sets it apart from the others.
 */
export function rankTakes(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly RankedTake[] {
  const takes = [...piece.takes].sort((one, other) => costOf(one) - costOf(other) || one.seed - other.seed);
  const facts = takes.map((take) => {
    const line = sheet.chart.bars.map((_, index) => take.bars[index]?.notes ?? []);
    return factsOf(piece, sheet, settings, line);
  });
  const composed = takes.filter(({ cost }) => cost !== null).length;
  return takes.flatMap((take, place) => {
    const own = facts[place];
    return own === undefined
      ? []
      : [{ take, words: wordsFor(take, place, composed, own, facts), inLine: isInLine(piece, take) }];
  });
}
