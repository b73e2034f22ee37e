import { beatsOf, type Metre } from '../base';
import { playOrder } from '../chart';
import { type LineSheet, type SheetBar, type SheetNote, tiesOverBarLines } from '../lesson';
import { syllableAt } from '../notation';

/** A bar as questions are made of it. */
export interface AskedBar {
  readonly index: number;
  readonly bar: SheetBar;
  /** The notes that are struck in it: not one that goes on from the bar before. */
  readonly struck: readonly SheetNote[];
  /** Indices of the bars that are heard right after it. */
  readonly after: readonly number[];
}

/** The bars of a line in their order, each with what is struck in it. */
export function readBars(sheet: LineSheet): readonly AskedBar[] {
  const order = playOrder(sheet.chart);
  const after = sheet.bars.map(() => new Set<number>());
  order.forEach((bar, place) => {
    const next = order[place + 1];
    if (next !== undefined) after[bar]?.add(next);
  });
  const ties = tiesOverBarLines(sheet);
  return sheet.bars.map((bar, index) => ({
    index,
    bar,
    struck: ties[index]?.struck === false ? bar.notes.slice(1) : bar.notes,
    after: [...(after[index] ?? [])],
  }));
}

export const metreOf = ({ bar }: AskedBar): Metre => bar.written.metre;

/** A bar as it is counted aloud, what is not struck in brackets; null where a note falls on no syllable. */
export function counted(asked: AskedBar): string | null {
  const metre = metreOf(asked);
  const said = new Map<number, string>();
  for (const { start, index } of beatsOf(metre)) said.set(start, `(${index + 1})`);
  for (const { note } of asked.struck) {
    const syllable = syllableAt(metre, note.start);
    if (syllable === null) return null;
    said.set(note.start, syllable);
  }
  return [...said]
    .sort(([one], [other]) => one - other)
    .map(([, text]) => text)
    .join(' ');
}

/** When a bar's notes are struck: equal for equal rhythms. */
export const rhythmOf = ({ struck }: AskedBar): string => struck.map(({ note }) => note.start).join(' ');

/** The degrees of what is struck in a bar, in order. */
export const degreesOf = ({ struck }: AskedBar): readonly string[] =>
  struck.map(({ degreeText }) => degreeText);
