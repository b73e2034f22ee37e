import { type Metre, sameMetre, TICKS_PER_QUARTER } from '../../base';
import type { ChartBar, WrittenMetre } from '../../chart';
import type { LineSheet } from '../../lesson';
import { type Key, sameKey } from '../../theory';
import { keyAt, signatureOf } from '../signature';
import type { PartKind } from './notes';
import { type Element, element, tag } from './xml';

/** What changes with a bar: key and time, and at the beginning clef, strings and the ticks of a quarter. */
export function attributesOf(
  sheet: LineSheet,
  index: number,
  part: PartKind,
  metres: readonly WrittenMetre[],
): Element | null {
  const bar = sheet.bars[index]?.written;
  if (!bar) return null;
  const before = sheet.bars[index - 1]?.written;
  const key = keyAt(sheet, index);
  const keyBefore = index === 0 ? null : keyAt(sheet, index - 1);
  const newKey = keyBefore === null || !sameKey(keyBefore, key);
  const [now, then] = [metres[index], metres[index - 1]];
  const newMetre = !before || !sameMetre(saidMetre(before, then), saidMetre(bar, now));
  const shown = !now || !then || !sameMetre(now.metre, then.metre);
  if (!newKey && !newMetre) return null;
  return tag(
    'attributes',
    index === 0 ? tag('divisions', TICKS_PER_QUARTER) : null,
    newKey ? keyElement(key, keyBefore) : null,
    newMetre ? timeElement(saidMetre(bar, now), shown) : null,
    index === 0 ? clefOf(sheet, part) : null,
  );
}

/** A pickup has the metre of the bars after it, as the tutorial for MusicXML 4.0 writes it; another part of a bar its own. */
const saidMetre = (bar: ChartBar, written: WrittenMetre | undefined): Metre =>
  bar.pickup ? (written?.metre ?? bar.metre) : bar.metre;

/** The time that a part of a bar has is said, not shown. */
const timeElement = ({ count, unit }: Metre, shown: boolean): Element =>
  element('time', shown ? {} : { 'print-object': 'no' }, tag('beats', count), tag('beat-type', unit));

/** A key with the same signature as the one before it is said, not shown. */
const keyElement = (key: Key, before: Key | null): Element =>
  element(
    'key',
    before !== null && signatureOf(before) === signatureOf(key) ? { 'print-object': 'no' } : {},
    tag('fifths', signatureOf(key)),
    tag('mode', key.mode),
  );

/**
 * The staff is a plain bass clef whose part sounds an octave lower; the tab is written as it sounds, so that
 * string and fret add up (both as in the W3C's "Tablature" tutorial for MusicXML 4.0).
 */
function clefOf(sheet: LineSheet, part: PartKind): readonly Element[] {
  const { openStrings } = sheet.instrument;
  if (part === 'staff') {
    return [
      tag('clef', tag('sign', 'F'), tag('line', 4)),
      tag('transpose', tag('diatonic', 0), tag('chromatic', 0), tag('octave-change', -1)),
    ];
  }
  const lowestFirst = [...openStrings].reverse();
  return [
    tag('clef', tag('sign', 'TAB'), tag('line', Math.min(5, openStrings.length))),
    tag(
      'staff-details',
      tag('staff-lines', openStrings.length),
      lowestFirst.map((pitch, index) =>
        element(
          'staff-tuning',
          { line: index + 1 },
          tag('tuning-step', pitch.letter),
          pitch.alteration === 0 ? null : tag('tuning-alter', pitch.alteration),
          tag('tuning-octave', pitch.octave),
        ),
      ),
    ),
  ];
}
