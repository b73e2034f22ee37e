import { listed } from '../base';
import { type LineSheet, toldTempo } from '../lesson';
import { PARTS, type Part } from '../playing';
import { describeKeyIn } from '../theory';
import { keyAt } from './signature';

/** Characters of a lesson's and a piece's name, so that key and tempo are still there when a long name is cut. */
const MOST_OF_LESSON = 34;
const MOST_OF_PIECE = 18;

/** What sounds in a file, and how fast. */
export interface Sounding {
  /** Beats a minute as it is played, which may be slower than the line is written. */
  readonly tempo: number;
  /** Left out where the name is not to say it. */
  readonly parts?: readonly Part[];
}

/**
 * What the name of an exported file says: lesson, piece, key, tempo and which parts sound, in words that are left when
 * a file system allows only plain letters (`B♭` would become `B`). The piece is left out where it is called like the
 * lesson, and the parts where all of them, or no file of sound, is meant. Two tempi of a line give two names.
 */
export function exportName(sheet: LineSheet, lessonTitle: string, sounding?: Sounding): string {
  const key = describeKeyIn(sheet.noteNames ?? 'letters', keyAt(sheet, 0))
    .replace(/♭/g, ' flat')
    .replace(/♯/g, ' sharp');
  const piece = lessonTitle.includes(sheet.name) ? [] : [cut(sheet.name, MOST_OF_PIECE)];
  const tempo = toldTempo(sheet, sounding?.tempo ?? sheet.tempo);
  const parts = sounding?.parts === undefined ? [] : partsWords(sounding.parts);
  return [cut(lessonTitle, MOST_OF_LESSON), ...piece, key, `${tempo} bpm`, ...parts].join(', ');
}

/** `bass and drums`, `without bass`; nothing where every part of the band sounds. */
function partsWords(parts: readonly Part[]): readonly string[] {
  const band = BAND.filter((part) => parts.includes(part));
  const silent = BAND.filter((part) => !parts.includes(part));
  if (silent.length === 0) return [];
  if (silent.length === 1) return [`without ${silent[0] ?? ''}`];
  return [band.length === 0 ? 'click only' : listed(band)];
}

const BAND: readonly Part[] = PARTS.filter((part) => part !== 'click');

const cut = (name: string, most: number): string => [...name].slice(0, most).join('').trimEnd();
