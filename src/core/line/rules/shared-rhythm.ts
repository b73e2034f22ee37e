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

/** Sections in which no rhythm is shared by half of the bars. */
function unsharedPlaces({ model, heard }: Whole): readonly number[] {
  return model.request.chart.sections.flatMap((section) => {
    const heads = model.bars
      .slice(section.start, section.start + section.length)
      .filter((bar) => (heard[bar.index]?.length ?? 0) > 0)
      .map((bar) => headOf(bar, heard[bar.index] ?? []));
    const most = Math.max(0, ...heads.map((head) => heads.filter((other) => other === head).length));
    return most * 2 < heads.length ? [section.start] : [];
  });
}

const textOf = (tones: readonly Tone[]): string =>
  tones.map((tone) => `${tone.start},${tone.duration},${tone.midi}`).join(' ');

/** A figure may go on unchanged for so many bars. */
const MOST_UNCHANGED = 8;

/** Figures of one, two or four bars that go on unchanged for too long. */
function unchangedPlaces({ model, heard }: Whole): readonly number[] {
  const texts = model.bars.map((bar) => textOf(heard[bar.index] ?? []));
  return [1, 2, 4].flatMap((period) => {
    let same = 0;
    return texts.flatMap((text, index) => {
      same = text !== '' && index >= period && text === texts[index - period] ? same + 1 : 0;
      return same + period === MOST_UNCHANGED + 1 ? [index] : [];
    });
  });
}

export const SHARED_RHYTHM: Rule = {
  number: 13,
  rule: 'At least half of the bars share one rhythm, and no figure goes on unchanged for more than eight bars.',
  source: TEACHERS_LIST,
  heard: 'no rhythm is shared by half of the bars, or a figure goes on unchanged for more than eight',
  mend: 'keep one rhythm and vary the turn',
  caution: NO_CAUTION,
  alone: null,
  meeting: null,
  tied: null,
  whole: {
    places: (line) => [...unsharedPlaces(line), ...unchangedPlaces(line)],
    concerns: () => false,
  },
};
