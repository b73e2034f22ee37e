import { romanNumeral } from '../../core/fretboard';
import { formatNameIn } from '../../core/theory';
import type { FretboardRequest, NeckNote } from './types';

/** The picture in sentences, string by string from the lowest, as a teacher would read it out. */
export function describeFretboard(request: FretboardRequest): string {
  const { title, instrument, noteNames, notes, position, nextPosition, sounding } = request;
  const parts = [title + (position === null ? '.' : `, hand position ${romanNumeral(position)}.`)];
  instrument.openStrings
    .map((open, index) => ({ open, string: index + 1 }))
    .reverse()
    .forEach(({ open, string }) => {
      const here = notes.filter((note) => note.string === string).sort((one, other) => one.fret - other.fret);
      if (here.length > 0)
        parts.push(`${formatNameIn(noteNames, open)} string: ${here.map(describeNote).join('; ')}.`);
    });
  if (notes.length === 0) parts.push('No notes.');
  const now = notes.find(({ string, fret }) => string === sounding?.string && fret === sounding.fret);
  if (now) parts.push(`Sounding now: ${now.name}.`);
  if (nextPosition != null && nextPosition !== position) {
    parts.push(`Then the hand moves to position ${romanNumeral(nextPosition)}.`);
  }
  return parts.join(' ');
}

function describeNote({ fret, name, degree, finger }: NeckNote): string {
  const place = fret === 0 ? 'open' : `fret ${fret}`;
  const meaning = degree === '' ? name : `${name}, ${degree === 'R' ? 'root' : degree}`;
  return `${place} ${meaning}${finger ? `, finger ${finger}` : ''}`;
}
