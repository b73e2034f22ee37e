import type { LineModel } from './model';

/**
 * The phrases of a chart as written: so many bars as the feel has, counted from the beginning of each section. A
 * single bar that is left over belongs to the phrase before it.
 */
export function phrasesOf(model: LineModel): readonly (readonly number[])[] {
  const length = model.request.feel.phraseLength;
  return model.request.chart.sections.flatMap((section) => {
    const phrases: number[][] = [];
    for (let place = 0; place < section.length; place += 1) {
      const last = phrases.at(-1);
      const alone = place === section.length - 1 && place % length === 0;
      if (last && (place % length > 0 || alone)) last.push(section.start + place);
      else phrases.push([section.start + place]);
    }
    return phrases;
  });
}
