import type { Bpm, Metre } from '../../base';
import { type Feel, type FeelId, feelById, feelMetre, feelTempo, homeMetre } from '../../feel';
import { LEVELS } from '../../line';
import type { Lesson, LinePiece } from '../types';
import { usualTechniques } from '../usual-techniques';
import { setMetre } from './chart';
import { changeLine, linePiece } from './piece';
import { tempoWithin } from './settings';

/** The feel's usual tempo in the beats of a metre, as far as a piece can have it: halved, a slow one is too slow. */
const usualTempo = (feel: Feel, metre: Metre): Bpm => tempoWithin(feelTempo(feel, metre).usual);

/** Whether a line teaches what belongs to its feel, at its level or the one it had: nobody has ticked anything else. */
const isUnchosen = ({ feel, techniques }: LinePiece): boolean =>
  LEVELS.some((level) => {
    const usual = usualTechniques(feelById(feel), level);
    return usual.length === techniques.length && usual.every((each) => techniques.includes(each));
  });

/**
 * Another feel. Where it is not played in the metre of the piece, as a waltz is not in 4/4, the piece takes the feel's
 * own metre, as by {@link setMetre}. A tempo that somebody chose stays if the new feel is played at it; else the new
 * feel's usual tempo is taken, as it is where the old feel's own had been left as it was. Ticks that nobody chose become
 * those that belong to the new feel.
 */
export function setFeel(lesson: Lesson, pieceId: string, id: FeelId): Lesson {
  const feel = feelById(id);
  const piece = linePiece(lesson, pieceId);
  const played = piece === null || feelMetre(feel, piece.metre) !== null;
  const fitting = played ? lesson : setMetre(lesson, pieceId, homeMetre(feel));
  const untouched = piece !== null && piece.tempo === usualTempo(feelById(piece.feel), piece.metre);
  return changeLine(fitting, pieceId, (line) => {
    const { least, most } = feelTempo(feel, line.metre);
    const fits = !untouched && line.tempo >= least && line.tempo <= most;
    return {
      ...line,
      feel: id,
      tempo: fits ? line.tempo : usualTempo(feel, line.metre),
      techniques: isUnchosen(line) ? usualTechniques(feel, line.level) : line.techniques,
    };
  });
}
