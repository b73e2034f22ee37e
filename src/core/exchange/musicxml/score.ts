import type { LineSheet } from '../../lesson';
import { FEEL_FIELD } from '../own-words';
import { measuresOf } from './measures';
import { type Element, element, printXml, tag } from './xml';

const DOCTYPE =
  '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">\n';

/** General MIDI programme 34, Electric Bass (finger), counted from 1 as MusicXML does (MMA, General MIDI 1). */
const BASS_PROGRAM = 34;

interface Part {
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  /** In per cent; the tab is silent, or every note would sound twice. */
  readonly volume: number;
}

const STAFF: Part = { id: 'P1', name: 'Bass', abbreviation: 'B.', volume: 80 };
const TAB: Part = { id: 'P2', name: 'Bass tab', abbreviation: 'Tab', volume: 0 };

const scorePart = ({ id, name, abbreviation, volume }: Part): Element =>
  element(
    'score-part',
    { id },
    tag('part-name', name),
    tag('part-abbreviation', abbreviation),
    element('score-instrument', { id: `${id}-I1` }, tag('instrument-name', 'Electric Bass')),
    element(
      'midi-instrument',
      { id: `${id}-I1` },
      tag('midi-channel', 1),
      tag('midi-program', BASS_PROGRAM),
      tag('volume', volume),
    ),
  );

/**
 * A line as a MusicXML 4.0 document: a staff part and a tab part below it, bracketed. The notes, their spelling,
 * ties and places are those of the sheet; the staff part carries chords, tempo, swing, sections and fingers, the
 * tab part strings and frets.
 * @param lessonTitle The title of the work; the piece's own name is that of the movement.
 */
export function writeMusicXml(sheet: LineSheet, lessonTitle: string): string {
  const root = element(
    'score-partwise',
    { version: '4.0' },
    tag('work', tag('work-title', lessonTitle)),
    tag('movement-title', sheet.name),
    tag(
      'identification',
      tag(
        'encoding',
        tag('software', 'Ground Bass'),
        element('supports', { element: 'accidental', type: 'yes' }),
        element('supports', { element: 'beam', type: 'yes' }),
      ),
      element('miscellaneous', {}, element('miscellaneous-field', { name: FEEL_FIELD }, sheet.feel.id)),
    ),
    tag(
      'part-list',
      element(
        'part-group',
        { number: 1, type: 'start' },
        tag('group-symbol', 'bracket'),
        tag('group-barline', 'yes'),
      ),
      scorePart(STAFF),
      scorePart(TAB),
      element('part-group', { number: 1, type: 'stop' }),
    ),
    element('part', { id: STAFF.id }, measuresOf(sheet, 'staff')),
    element('part', { id: TAB.id }, measuresOf(sheet, 'tab')),
  );
  return printXml(root, DOCTYPE);
}
