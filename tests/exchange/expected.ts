/** What a reader of an export must find, worked out from the sheet alone. */
import { barTicks, hasMark, type LineNote, midiOf, samePitch } from '../../src/core/base';
import { playOrder } from '../../src/core/chart';
import type { LineSheet } from '../../src/core/lesson';

export interface HeardNote {
  readonly start: number;
  readonly duration: number;
  readonly midi: number;
  readonly staccato: boolean;
  /** The tie it has in writing leads to the next bar, but this time round another bar follows. */
  readonly tiePassedBy: boolean;
}

/**
 * The line as it is written and played straight, repeats unfolded. A note tied on into the next bar as written is
 * one note; a file has no sign for a tie that leads back to the beginning of a repeat or into a later ending.
 */
export function heardLine(sheet: LineSheet): readonly HeardNote[] {
  const heard: HeardNote[] = [];
  let barStart = 0;
  let before: { readonly bar: number; readonly last: LineNote | undefined } | null = null;
  for (const bar of playOrder(sheet.chart)) {
    const sheetBar = sheet.bars[bar];
    if (!sheetBar) continue;
    const length = barTicks(sheetBar.written.metre);
    const waiting = heard.at(-1);
    if (waiting && before && before.last?.tiedOn === true && bar !== before.bar + 1) {
      heard[heard.length - 1] = { ...waiting, tiePassedBy: true };
    }
    for (const { note } of sheetBar.notes) {
      const last = before?.last;
      const goesOn =
        note.start === 0 &&
        before?.bar === bar - 1 &&
        last?.tiedOn === true &&
        samePitch(last.pitch, note.pitch);
      const previous = heard.at(-1);
      if (goesOn && previous) {
        heard[heard.length - 1] = { ...previous, duration: previous.duration + note.duration };
      } else {
        heard.push({
          start: barStart + note.start,
          duration: note.duration,
          midi: midiOf(note.pitch),
          staccato: hasMark(note, 'staccato'),
          tiePassedBy: false,
        });
      }
    }
    const last = sheetBar.notes.at(-1)?.note;
    const full = last !== undefined && last.start + last.duration === length;
    before = { bar, last: full ? last : undefined };
    barStart += length;
  }
  return heard;
}
