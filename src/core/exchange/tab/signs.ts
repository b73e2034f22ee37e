import { type DynamicSign, marksOf, SIGNS, type Sign } from '../../base';
import { type Exit, exitsOf, type LineSheet, type SheetNote } from '../../lesson';

/** A note's signs on and over its string. */
export interface NoteText {
  readonly before: string;
  /** In place of the fret; '' for none. */
  readonly instead: string;
  readonly after: string;
  readonly over: string;
}

const signsAt = ({ note }: SheetNote, exit: Exit | null): readonly Sign[] => [
  ...marksOf(note).flatMap((mark): readonly Sign[] =>
    mark === note.marks?.exit || mark === 'hammer' ? [] : [mark],
  ),
  ...(exit ? [exit.sign] : []),
];

/**
 * How a note's signs are typed.
 * @param falls - whether the note that it leads to is lower
 */
export function noteText(sheetNote: SheetNote, exit: Exit | null, falls: boolean): NoteText {
  const texts = signsAt(sheetNote, exit).map((sign) => SIGNS[sign].text);
  const at = (place: (typeof texts)[number]['place']): readonly string[] =>
    texts.flatMap((text) => {
      if (text.place !== place) return [];
      return [falls && text.place === 'after' ? (text.down ?? text.text) : text.text];
    });
  return {
    before: at('before').join(''),
    instead: at('instead')[0] ?? '',
    after: at('after').join(''),
    over: at('over').join(' '),
  };
}

/** A sign of dynamics as it is typed under the counting. */
export function dynamicText({ level, hairpin }: Omit<DynamicSign, 'at'>): string {
  const wedge = hairpin === undefined ? '' : hairpin === 'crescendo' ? '<' : '>';
  return `${level ?? ''}${wedge}` || '!';
}

/** What the signs of a line mean, as far as they occur; a dead note is told with the counting. */
export function legendOf(sheet: LineSheet): readonly string[] {
  const exits = exitsOf(sheet.bars);
  const used = new Set(
    sheet.bars.flatMap(({ notes }, bar) =>
      notes.flatMap((note, index) => signsAt(note, exits[bar]?.[index] ?? null)),
    ),
  );
  const said = (over: boolean): string =>
    [...used]
      .filter((sign) => sign !== 'ghost' && (SIGNS[sign].text.place === 'over') === over)
      .map((sign) => {
        const { text, word } = SIGNS[sign];
        const down = text.place === 'after' && text.down !== undefined ? ` and ${text.down}` : '';
        return `${text.text}${down} ${word}`;
      })
      .join(', ');
  const [on, over] = [said(false), said(true)];
  const dynamics = sheet.bars.some((bar) => bar.dynamics !== undefined);
  return [
    ...(on === '' ? [] : [`On the strings: ${on}.`]),
    ...(over === '' ? [] : [`Over the strings: ${over}.`]),
    ...(dynamics ? ['Under the counting: dynamics; < grows, > falls, ! ends it.'] : []),
  ];
}
