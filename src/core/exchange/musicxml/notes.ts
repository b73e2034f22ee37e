import type { SpelledPitch } from '../../base';
import type { SheetNote } from '../../lesson';
import type { Accidental, NotatedBar, NotatedEvent, NoteValue } from '../../notation';
import { type NoteLinks, noteheadOf, playOf, type SignedNote, signElements } from './note-signs';
import { type Element, element, tag } from './xml';

const TYPES: Readonly<Record<NoteValue, string>> = {
  1: 'whole',
  2: 'half',
  4: 'quarter',
  8: 'eighth',
  16: '16th',
  32: '32nd',
  64: '64th',
};

const ACCIDENTALS: Readonly<Record<Accidental['alteration'], string>> = {
  [-2]: 'flat-flat',
  [-1]: 'flat',
  0: 'natural',
  1: 'sharp',
  2: 'double-sharp',
};

/** What the two parts write differently. */
export type PartKind = 'staff' | 'tab';

/** How a written note hangs together with the one before it and the one after it. */
export interface TieEnds {
  readonly from: boolean;
  /** `let ring` where the note goes on in a bar that is not the next one (back at a repeat's beginning). */
  readonly to: 'none' | 'next' | 'let ring';
}

export interface WrittenNote {
  readonly event: NotatedEvent;
  readonly sheetNote: SheetNote | null;
  readonly tie: TieEnds;
  /** The event begins the note, so what belongs to its attack stands here. */
  readonly first: boolean;
  /** The event ends the note. */
  readonly last: boolean;
  readonly links: NoteLinks;
  readonly accidental: Accidental | null;
  /** Beam by beam: `begin`, `continue`, `end`, or a hook. */
  readonly beams: readonly string[];
  readonly tuplet: 'start' | 'stop' | null;
}

/** Written an octave above its sound, as the staff is; the tab counts frets from the sound. */
const pitchElement = (pitch: SpelledPitch, part: PartKind): Element =>
  tag(
    'pitch',
    tag('step', pitch.letter),
    pitch.alteration === 0 ? null : tag('alter', pitch.alteration),
    tag('octave', pitch.octave + (part === 'staff' ? 1 : 0)),
  );

function technicalOf(note: SheetNote, part: PartKind, first: boolean): readonly Element[] {
  const { fingered } = note;
  if (fingered === null) return [];
  if (part === 'tab') return [tag('string', fingered.string), tag('fret', fingered.fret)];
  return first ? [tag('fingering', fingered.finger)] : [];
}

/** The element only when something stands in it. */
const filled = (name: string, children: readonly Element[]): readonly Element[] =>
  children.length === 0 ? [] : [tag(name, children)];

const signedNote = ({ sheetNote, ...place }: WrittenNote): SignedNote | null =>
  sheetNote === null ? null : { ...place, note: sheetNote.note };

function notationsOf(written: WrittenNote, part: PartKind): readonly Element[] {
  const { sheetNote, tie, tuplet, first } = written;
  const sounding = sheetNote === null ? [] : [sheetNote];
  const signed = signedNote(written);
  return filled('notations', [
    ...(tie.from ? [element('tied', { type: 'stop' })] : []),
    ...(tie.to === 'next' ? [element('tied', { type: 'start' })] : []),
    ...(tie.to === 'let ring' ? [element('tied', { type: 'let-ring' })] : []),
    ...(tuplet === null ? [] : [element('tuplet', { type: tuplet, bracket: 'yes' })]),
    ...(signed ? signElements(signed, 'notations') : []),
    ...sounding.flatMap((note) =>
      filled('technical', [
        ...(signed ? signElements(signed, 'technical') : []),
        ...technicalOf(note, part, first),
      ]),
    ),
    ...(signed && part === 'staff' ? filled('articulations', signElements(signed, 'articulations')) : []),
  ]);
}

function accidentalElement(accidental: Accidental | null): Element | null {
  if (accidental === null) return null;
  const attributes: Readonly<Record<string, string>> = accidental.courtesy
    ? { cautionary: 'yes', parentheses: 'yes' }
    : {};
  return element('accidental', attributes, ACCIDENTALS[accidental.alteration]);
}

/** A note or rest of one part. The elements come in the order that the standard prescribes. */
export function noteElement(written: WrittenNote, part: PartKind): Element {
  const { event, sheetNote, tie } = written;
  const signed = signedNote(written);
  const staff = part === 'staff';
  return tag(
    'note',
    sheetNote === null
      ? element('rest', event.wholeBar ? { measure: 'yes' } : {})
      : pitchElement(sheetNote.note.pitch, part),
    tag('duration', event.duration),
    tie.from ? element('tie', { type: 'stop' }) : null,
    tie.to === 'next' ? element('tie', { type: 'start' }) : null,
    tag('voice', 1),
    event.wholeBar ? null : tag('type', TYPES[event.value]),
    event.dots === 1 ? tag('dot') : null,
    staff ? accidentalElement(written.accidental) : null,
    event.triplet === null ? null : tag('time-modification', tag('actual-notes', 3), tag('normal-notes', 2)),
    staff || sheetNote === null ? null : tag('stem', 'none'),
    signed && noteheadOf(signed.note),
    staff ? written.beams.map((beam, index) => element('beam', { number: index + 1 }, beam)) : null,
    notationsOf(written, part),
    signed && playOf(signed),
  );
}

const LEVELS: readonly NoteValue[] = [8, 16, 32, 64];

/** For every event of a bar, its beams from the eighths' beam inwards. */
export function beamsOf({ events, beams }: NotatedBar): readonly (readonly string[])[] {
  const result: string[][] = events.map(() => []);
  for (const group of beams) {
    group.forEach((index, position) => {
      for (const level of LEVELS) {
        const reaches = (other: number | undefined): boolean =>
          other !== undefined && (events[other]?.value ?? 1) >= level;
        if (!reaches(index)) break;
        result[index]?.push(beamAt(reaches(group[position - 1]), reaches(group[position + 1]), position));
      }
    });
  }
  return result;
}

function beamAt(before: boolean, after: boolean, position: number): string {
  if (before && after) return 'continue';
  if (before) return 'end';
  if (after) return 'begin';
  return position === 0 ? 'forward hook' : 'backward hook';
}
