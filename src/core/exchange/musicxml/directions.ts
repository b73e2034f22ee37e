import { beatTicks, isCompound, type Metre, TICKS_PER_QUARTER } from '../../base';
import { beginsBar, type ChartBar, type Navigation, navigationWords } from '../../chart';
import { swingRatio } from '../../feel';
import type { LineSheet } from '../../lesson';
import { swingsEighths } from '../../playing';
import { type Element, element, tag } from './xml';

/** Quarter notes a minute, which is what a `sound` counts. */
const quartersAMinute = (sheet: LineSheet): number =>
  (sheet.tempo * beatTicks(sheet.metre)) / TICKS_PER_QUARTER;

const tempoSound = (sheet: LineSheet, ...inside: Element[]): Element =>
  element('sound', { tempo: Math.round(quartersAMinute(sheet) * 1000) / 1000 }, inside);

/** The tempo, said where nothing of it is drawn. */
export const soundOf = (sheet: LineSheet, index: number): Element | null =>
  index === 0 ? tempoSound(sheet) : null;

/** The note that a tempo counts: a half in 2/2, a dotted quarter in compound time, else a quarter, in 7/8 too. */
function metronome(metre: Metre, tempo: number): Element {
  const unit = isCompound(metre)
    ? [tag('beat-unit', 'quarter'), tag('beat-unit-dot')]
    : [tag('beat-unit', metre.unit === 2 ? 'half' : 'quarter')];
  return tag('metronome', unit, tag('per-minute', tempo));
}

/** The ratio of a pair of eighths in small whole numbers, as the standard wants it: 1.5 is 3 to 2. */
function swingElement(ratio: number): Element {
  const parts = Array.from({ length: 12 }, (_, index) => index + 1);
  const error = (second: number): number => Math.abs(ratio - Math.round(ratio * second) / second);
  const second = parts.reduce((best, one) => (error(one) < error(best) - 1e-9 ? one : best), 1);
  return tag(
    'swing',
    tag('first', Math.round(ratio * second)),
    tag('second', second),
    tag('swing-type', 'eighth'),
  );
}

/** Signs of the way through the chart where a bar begins or ends, drawn, and said for players (`sound`). */
export const navigationOf = ({ navigation = [] }: ChartBar, begins: boolean): readonly Element[] =>
  navigation
    .filter((sign) => beginsBar(sign) === begins)
    .map((sign) =>
      element(
        'direction',
        { placement: 'above' },
        sign === 'segno' || sign === 'coda'
          ? tag('direction-type', tag(sign))
          : tag('direction-type', tag('words', navigationWords(sign))),
        // `To Coda` has the coda's sign behind it, as on the printed line.
        sign === 'to coda' ? tag('direction-type', tag('coda')) : null,
        element('sound', NAVIGATION_SOUNDS[sign]),
      ),
    );

const JUMP_TO_BEGINNING = { dacapo: 'yes' };
const JUMP_TO_SEGNO = { dalsegno: 'segno' };

/** MusicXML 4.0, element `sound`. */
const NAVIGATION_SOUNDS: Readonly<Record<Navigation, Readonly<Record<string, string>>>> = {
  segno: { segno: 'segno' },
  coda: { coda: 'coda' },
  'to coda': { tocoda: 'coda' },
  fine: { fine: 'yes' },
  'D.C.': JUMP_TO_BEGINNING,
  'D.C. al fine': JUMP_TO_BEGINNING,
  'D.C. al coda': JUMP_TO_BEGINNING,
  'D.S.': JUMP_TO_SEGNO,
  'D.S. al fine': JUMP_TO_SEGNO,
  'D.S. al coda': JUMP_TO_SEGNO,
};

/** What stands over a bar: tempo, swing, the section's name, a word, signs of the way through the chart. */
export function directionsOf(sheet: LineSheet, index: number): readonly Element[] {
  const bar = sheet.bars[index]?.written;
  const section = sheet.chart.sections[bar?.section ?? -1];
  const above = (...children: (Element | null)[]): Element =>
    element('direction', { placement: 'above' }, children);
  const directions: Element[] = [];
  if (index === 0) {
    directions.push(above(tag('direction-type', metronome(sheet.metre, sheet.tempo)), tempoSound(sheet)));
    if (swingsEighths(sheet)) {
      const swing = swingElement(swingRatio(sheet.feel, sheet.tempo));
      directions.push(above(tag('direction-type', tag('words', 'Swing eighths')), tag('sound', swing)));
    }
  }
  if (section?.start === index && section.name !== null) {
    directions.push(above(tag('direction-type', tag('rehearsal', section.name))));
  }
  const words = sheet.bars[index]?.words;
  if (words !== undefined) directions.push(above(tag('direction-type', tag('words', words))));
  return bar === undefined ? directions : [...directions, ...navigationOf(bar, true)];
}
