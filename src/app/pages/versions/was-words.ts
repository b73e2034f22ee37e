import { counted, listed, metreName } from '../../../core/base';
import { feelById } from '../../../core/feel';
import {
  deriveSheet,
  type HandoutSettings,
  type Lesson,
  type LineBar,
  type LinePiece,
  linePiece,
  type Piece,
  tempoWords,
} from '../../../core/lesson';
import { formatPitchIn } from '../../../core/theory';
import { dropOwn, lessonOfVersion, type Own, type SharedField } from '../../../core/versions';
import { inShort } from '../playing';

/** Characters of the tune's text that are told; the rest is an ellipsis. */
const TOLD = 60;

/** Notes of a bar that are told; the rest is an ellipsis. */
const NOTES_TOLD = 8;

const quoted = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line === '') return 'empty';
  return `“${line.length > TOLD ? `${line.slice(0, TOLD).trimEnd()}…` : line}”`;
};

/** How the tune is played, without the full stop that the sentence in short has. */
function playedAs(line: LinePiece, { instrument, noteNames }: Lesson): string | null {
  const sheet = deriveSheet(line, instrument, noteNames);
  if (sheet.kind !== 'line') return null;
  const words = inShort(line, sheet).replace(/\.$/, '');
  return `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}

const FIELD_WAS: Partial<Record<SharedField, (line: LinePiece, tune: Lesson) => string | null>> = {
  name: ({ name }) => quoted(name),
  chartText: ({ chartText }) => quoted(chartText),
  metre: ({ metre }) => metreName(metre),
  tempo: (line) => tempoWords(line, line.tempo),
  feel: ({ feel }) => feelById(feel).name,
  techniques: ({ techniques }) => (techniques.length === 0 ? 'nothing ticked' : listed(techniques)),
  playing: playedAs,
};

/** What a handout's setting was, where a word tells it. */
const settingWas = (value: HandoutSettings[keyof HandoutSettings]): string | null => {
  if (typeof value === 'boolean') return value ? 'ticked' : 'not ticked';
  return typeof value === 'string' && !value.startsWith('data:') ? quoted(value) : null;
};

const barIn = (lesson: Lesson, line: string, id: string): LineBar | null => {
  const piece = linePiece(lesson, line);
  return [...(piece?.bars ?? []), ...(piece?.parked ?? [])].find((bar) => bar.id === id) ?? null;
};

/** The notes of a bar, low `F2, A2`: as the version would have them, which may be in another key than the tune. */
function notesWere(document: Lesson, version: string, own: Extract<Own, { kind: 'bar' }>): string | null {
  const here = lessonOfVersion(document, version);
  const shared = lessonOfVersion(dropOwn(document, version, own), version);
  const [mine, theirs] = [barIn(here, own.line, own.bar), barIn(shared, own.line, own.bar)];
  if (mine === null || theirs === null) return null;
  const names = ({ notes }: LineBar) =>
    notes.map(({ pitch }) => formatPitchIn(here.noteNames ?? 'letters', pitch));
  const [has, had] = [names(mine), names(theirs)];
  if (had.length === 0) return 'no note';
  if (has.join() === had.join()) {
    const isSameRhythm = theirs.notes.every(
      ({ start, duration }, at) => mine.notes[at]?.start === start && mine.notes[at]?.duration === duration,
    );
    return isSameRhythm ? 'the same notes' : 'the same notes in another rhythm';
  }
  return had.length > NOTES_TOLD ? `${had.slice(0, NOTES_TOLD).join(', ')}…` : had.join(', ');
}

/** A piece as the tune has it: its name and how long it is. */
function pieceWas(piece: Piece | undefined): string {
  if (piece === undefined) return 'not there';
  const bars = counted(piece.kind === 'line' ? piece.bars.length : piece.bars, 'bar');
  return `${quoted(piece.name)}, ${piece.kind === 'line' ? bars : `${bars} of empty staves`}`;
}

const isMoved = (document: Lesson, version: string, line: string): boolean =>
  document.versions
    ?.find(({ id }) => id === version)
    ?.lines.some(({ id, moved }) => id === line && moved !== undefined) === true;

/**
 * What the tune has in the place of something that a version has of its own: `In the tune: 126 bpm.`; '' where it takes
 * more than a few words.
 */
export function wasWords(document: Lesson, version: string, own: Own): string {
  const tune = lessonOfVersion(document, null);
  const was = ((): string | null => {
    switch (own.kind) {
      case 'text':
        return own.field === 'noteNames' ? (tune.noteNames ?? 'letters') : quoted(tune[own.field]);
      case 'field':
      case 'chart': {
        const line = linePiece(tune, own.line);
        const words = FIELD_WAS[own.kind === 'chart' ? 'chartText' : own.field];
        return line === null || words === undefined ? null : words(line, tune);
      }
      case 'handout':
        return settingWas(tune.handout[own.field]);
      case 'bar':
        return notesWere(document, version, own);
      case 'piece':
        return pieceWas(tune.pieces.find(({ id }) => id === own.piece));
    }
  })();
  if (was === null) return '';
  const inKey = own.kind === 'bar' && isMoved(document, version, own.line) ? ', in this key' : '';
  return ` In the tune${inKey}: ${was}.`;
}
