import { type LineNote, marksOf, SIGNS, type Sign } from '../../base';
import { exitsOf, type LineSheet } from '../../lesson';
import { type Element, element, tag } from './xml';

/** One end of what joins two notes; both ends have one number. */
interface LinkEnd {
  readonly sign: Sign;
  readonly number: number;
}

/** What leads from and to a written note. */
export interface NoteLinks {
  readonly start: LinkEnd | null;
  readonly stop: LinkEnd | null;
  /** A way out without a note to lead to: elements of a pair cannot say it. */
  readonly alone: string | null;
}

const NOTHING: NoteLinks = { start: null, stop: null, alone: null };

/** The links of a line, bar by bar and note by note; neighbours have different numbers. */
export function linksOf({ bars }: LineSheet): readonly (readonly NoteLinks[])[] {
  const exits = exitsOf(bars);
  const links = bars.map(({ notes }) => notes.map((): NoteLinks => NOTHING));
  let count = 0;
  const change = (bar: number, note: number, more: Partial<NoteLinks>): void => {
    const row = links[bar];
    if (row) row[note] = { ...NOTHING, ...row[note], ...more };
  };
  bars.forEach(({ notes }, bar) => {
    notes.forEach(({ note }, index) => {
      const mark = note.marks?.exit;
      const exit = exits[bar]?.[index] ?? null;
      if (mark === undefined) return;
      if (exit && SIGNS[exit.sign].xml.in !== 'pair') return;
      if (!exit?.to) {
        change(bar, index, { alone: mark });
        return;
      }
      const end = { sign: exit.sign, number: (count % 2) + 1 };
      count += 1;
      change(bar, index, { start: end });
      change(exit.to.bar, exit.to.note, { stop: end });
    });
  });
  return links;
}

/** A written note with what is known of its place. */
export interface SignedNote {
  readonly note: LineNote;
  readonly links: NoteLinks;
  /** The event begins its note, and ends it. */
  readonly first: boolean;
  readonly last: boolean;
}

/** The signs that stand at an event, but for what joins notes. */
function signsAt({ note, links, first, last }: SignedNote): readonly Sign[] {
  return marksOf(note).flatMap((mark): readonly Sign[] => {
    if (mark === 'hammer') return [];
    if (mark === note.marks?.exit)
      return last && links.alone === null && SIGNS[mark].xml.in !== 'pair' ? [mark] : [];
    return (mark === 'fermata' || mark === 'let ring' ? last : first) ? [mark] : [];
  });
}

const pairOf = ({ sign, number }: LinkEnd, type: 'start' | 'stop', within: 'notations' | 'technical') => {
  const { xml } = SIGNS[sign];
  if (xml.in !== 'pair') return [];
  const slurred = xml.within === 'technical' && within === 'notations';
  if (slurred) return [element('slur', { number, type })];
  if (xml.within !== within) return [];
  return [element(xml.element, { number, type }, type === 'start' ? (xml.text ?? null) : null)];
};

const pairs = ({ links, first, last }: SignedNote, within: 'notations' | 'technical'): readonly Element[] => [
  ...(first && links.stop ? pairOf(links.stop, 'stop', within) : []),
  ...(last && links.start ? pairOf(links.start, 'start', within) : []),
];

/** The elements of a note's signs in one of the elements that hold them. */
export function signElements(
  signed: SignedNote,
  within: 'articulations' | 'technical' | 'notations',
): readonly Element[] {
  const own = signsAt(signed).flatMap((sign) => {
    const { xml } = SIGNS[sign];
    if (xml.in === 'tied') {
      // The tie alone can also be one that goes on elsewhere.
      if (within === 'technical') return [tag('other-technical', sign)];
      return within === 'notations' ? [element('tied', { type: xml.type })] : [];
    }
    return xml.in === within ? [tag(xml.element, xml.text ?? null)] : [];
  });
  const { alone } = signed.links;
  const lost = within === 'technical' && signed.last && alone !== null ? [tag('other-technical', alone)] : [];
  return within === 'articulations' ? own : [...own, ...pairs(signed, within), ...lost];
}

/** The head of a note by its signs; null for the usual one. */
export function noteheadOf(note: LineNote): Element | null {
  const texts = marksOf(note).flatMap((mark) => {
    const xml = mark === 'hammer' ? null : SIGNS[mark].xml;
    return xml?.in === 'notehead' ? [xml.text] : [];
  });
  return texts[0] === undefined ? null : tag('notehead', texts[0]);
}

/** What is said to a player program of a note's sound; null where nothing is. */
export function playOf(signed: SignedNote): Element | null {
  const mutes = signsAt(signed).flatMap((sign) => {
    const { xml } = SIGNS[sign];
    return xml.in === 'play' ? [tag('mute', xml.mute)] : [];
  });
  return mutes.length === 0 ? null : tag('play', mutes);
}
