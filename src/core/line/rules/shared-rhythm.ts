import { beatTicks } from '../../base';
import type { BarModel } from '../model';
import type { Tone } from '../tones';
import { NO_CAUTION, type Rule, TEACHERS_LIST, type Whole } from './types';

/** The onsets of a bar without its last beat: what a rhythm keeps when only its tail changes. */
function headOf(bar: BarModel, tones: readonly Tone[]): string {
  const tail = bar.ticks - beatTicks(bar.metre);
  const starts = tones.flatMap((tone) => (tone.start < tail ? [tone.start] : []));
  return `${bar.ticks}: ${starts.join(' ')}`;
}

/** Bars that a statement may be long: one, a pair, a four. */
const STATEMENTS = [1, 2, 4];

/** Whether half of the stretches of so many bars begin in the same rhythm; a longer one has to be heard twice. */
function isShared(heads: readonly string[], length: number): boolean {
  const stretches = Array.from({ length: Math.ceil(heads.length / length) }, (_, index) =>
    heads.slice(index * length, (index + 1) * length).join(' / '),
  );
  const times = new Map<string, number>();
  for (const each of stretches) times.set(each, (times.get(each) ?? 0) + 1);
  const most = Math.max(0, ...times.values());
  return most * 2 >= stretches.length && (length === 1 || most > 1);
}

/**
 * Sections in which no rhythm is shared by half of the bars, of the pairs or of the fours. A pickup, a part of a bar
 * only, is none of them: pairs are counted from the first whole bar.
 */
function unsharedPlaces({ model, heard }: Whole): readonly number[] {
  return model.request.chart.sections.flatMap((section) => {
    const heads = model.bars
      .slice(section.start, section.start + section.length)
      .filter((bar) => !bar.pickup && (heard[bar.index]?.length ?? 0) > 0)
      .map((bar) => headOf(bar, heard[bar.index] ?? []));
    return STATEMENTS.some((length) => isShared(heads, length)) ? [] : [section.start];
  });
}

const textOf = (tones: readonly Tone[]): string =>
  tones.map((tone) => `${tone.start},${tone.duration},${tone.midi}`).join(' ');

/** A figure may go on unchanged for so many bars. */
const MOST_UNCHANGED = 8;

/** Figures of one, two or four bars that go on unchanged for too long. */
function unchangedPlaces({ model, heard }: Whole): readonly number[] {
  const texts = model.bars.map((bar) => textOf(heard[bar.index] ?? []));
  return STATEMENTS.flatMap((period) => {
    let same = 0;
    return texts.flatMap((text, index) => {
      same = text !== '' && index >= period && text === texts[index - period] ? same + 1 : 0;
      return same + period === MOST_UNCHANGED + 1 ? [index] : [];
    });
  });
}

/** Halves shorter than this are still the statement. */
const SHORTEST_HALF = 4;

/** Where the second half of a section is its first half over again, note for note. */
function pastedPlaces({ model, heard }: Whole): readonly number[] {
  return model.request.chart.sections.flatMap(({ start, length }) => {
    const half = length / 2;
    if (!Number.isInteger(half) || half < SHORTEST_HALF) return [];
    const texts = Array.from({ length }, (_, place) => textOf(heard[start + place] ?? []));
    const pasted = texts.slice(half).every((text, place) => text === texts[place]);
    return pasted && texts.some((text) => text !== '') ? [start + half] : [];
  });
}

export const SHARED_RHYTHM: Rule = {
  number: 13,
  rule: 'At least half of the bars, or of the pairs or fours where the statement is so long, share the rhythm of the statement; no figure goes on unchanged for more than eight bars, and a second half is never the first half over again.',
  source: TEACHERS_LIST,
  heard: 'no rhythm is shared by half of the bars, or a figure goes on unchanged for too long',
  mend: 'keep one rhythm, and let the second half vary, climb or thin out',
  caution: NO_CAUTION,
  alone: null,
  inParts: false,
  meeting: null,
  tied: null,
  whole: {
    places: (line) => [...unsharedPlaces(line), ...unchangedPlaces(line), ...pastedPlaces(line)],
    concerns: () => false,
  },
};
