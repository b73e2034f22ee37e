import { fret } from '../base';
import { isFeelId } from '../feel';
import {
  changeLine,
  type Lesson,
  markTechnique,
  newLesson,
  setAim,
  setFeel,
  setHand,
  setInstrument,
  setKey,
  setLevel,
  setNoteNames,
} from '../lesson';
import { TECHNIQUES } from '../line';
import type { Thing } from '../students';
import { parseKey } from '../theory';
import type { Proposal } from './next';

/** Asks a line for a new thing, as far as a lesson can ask for it; a degree is the teacher's to write. */
function withThing(lesson: Lesson, line: string, { kind, name }: Thing): Lesson {
  switch (kind) {
    case 'technique': {
      const technique = TECHNIQUES.find((each) => each === name);
      return technique === undefined ? lesson : markTechnique(lesson, line, technique, 'in every phrase');
    }
    case 'key': {
      const key = parseKey(name);
      return key.ok ? setKey(lesson, line, key.value) : lesson;
    }
    case 'position':
      return setAim(lesson, line, { kind: 'line' }, { position: fret(Number(name)) });
    case 'feel':
      return isFeelId(name) ? setFeel(lesson, line, name) : lesson;
    case 'degree':
      return lesson;
  }
}

/**
 * The lesson for next week as a proposal has it: bass, note names, hand, feel, level and techniques of the last lesson,
 * and the one new thing beside them. Its chart is empty: the tune is the teacher's.
 */
export function lessonFrom(last: Lesson, proposal: Proposal, id: string): Lesson {
  const start = setInstrument(newLesson(id, 'New lesson'), last.instrument);
  const named = last.noteNames === undefined ? start : setNoteNames(start, last.noteNames);
  const before = last.pieces.find((piece) => piece.kind === 'line');
  const line = named.pieces.find((piece) => piece.kind === 'line')?.id;
  if (before === undefined || line === undefined) return named;
  const played = setHand(setLevel(setFeel(named, line, before.feel), line, before.level), line, before.hand);
  const alike = changeLine(played, line, (piece) => ({ ...piece, techniques: before.techniques }));
  if (proposal.kind === 'level') return setLevel(alike, line, proposal.level);
  return proposal.kind === 'new' ? withThing(alike, line, proposal.thing) : alike;
}
