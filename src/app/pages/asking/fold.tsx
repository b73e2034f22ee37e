import '../../styles/asking.css';
import { useMemo, useState } from 'react';
import { chosenQuestions, DIFFICULTIES, type Difficulty, questionSeed } from '../../../core/asking';
import {
  DRAWS_OF_QUESTIONS,
  type LinePiece,
  type LineSheet,
  MOST_QUESTIONS,
  type QuestionSettings,
  setHandout,
} from '../../../core/lesson';
import { NumberField, SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { AtSight } from './at-sight';
import { Tapped } from './tapped';

interface LineAskedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** Questions about a line, folded away under one line. */
export function LineAsked({ piece, sheet }: LineAskedProps) {
  const [open, setOpen] = useState(false);
  if (sheet.bars.every(({ notes }) => notes.length === 0)) return null;
  return (
    <details className="shapes" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="shapes__title">Questions about {piece.name}</span>{' '}
        <span className="shapes__chords">listen and tap · on paper with an answer sheet</span>
      </summary>
      {open && <Asked key={piece.id} piece={piece} sheet={sheet} />}
    </details>
  );
}

const DIFFICULTY_WORDS: Readonly<Record<Difficulty, string>> = {
  1: 'what is read off the sheet',
  2: 'what chord and rhythm tell, too',
  3: 'what is heard from bar to bar, too',
};

/** As on paper where nothing is chosen. */
const USUAL: QuestionSettings = { count: 6, difficulty: 2 };

function Asked({ piece, sheet }: LineAskedProps) {
  const { session } = useAtWork();
  const { handout } = useLesson();
  const { count, difficulty } = handout.questions ?? USUAL;
  const ask = (change: Partial<QuestionSettings>) =>
    session.lessons.change(
      (lesson) => setHandout(lesson, { questions: { ...USUAL, ...lesson.handout.questions, ...change } }),
      { label: 'choose the questions', join: 'questions' },
    );
  const seed = questionSeed(sheet, handout.questions ?? USUAL);
  // The very questions that are printed, so that what was worked at by ear comes home on paper.
  const onPaper = handout.parts === 'tab' ? 'tab' : 'staff';
  const draw = handout.questions?.seed ?? 0;
  const questions = useMemo(
    () => chosenQuestions(sheet, { count, difficulty, seed, onPaper }),
    [sheet, count, difficulty, seed, onPaper],
  );
  return (
    <div className="asking">
      <div className="asking__wishes">
        <NumberField
          label="How many questions"
          value={count}
          least={1}
          most={MOST_QUESTIONS}
          onChange={(next) => ask({ count: next })}
        />
        <SelectField
          label="How hard the questions are"
          value={String(difficulty)}
          options={DIFFICULTIES.map((each) => ({
            value: String(each),
            label: DIFFICULTY_WORDS[each],
          }))}
          onChange={(text) =>
            ask({ difficulty: DIFFICULTIES.find((each) => String(each) === text) ?? difficulty })
          }
        />
        <button
          type="button"
          className="button button--quiet"
          onClick={() => ask({ seed: (draw + 1) % DRAWS_OF_QUESTIONS })}
        >
          Other questions
        </button>
      </div>
      {questions.length < count && (
        <p className="hint">The line has no more to ask than {questions.length}.</p>
      )}
      <ol className="asking__list" aria-label={`Questions about ${piece.name}`}>
        {questions.map((question) => (
          <li key={question.text}>
            <Tapped piece={piece} sheet={sheet} question={question} />
          </li>
        ))}
      </ol>
      <p className="hint">
        On paper the same are written: tick Questions, and Answers to the questions, under Handout. The sheet
        with the questions shows nothing that answers one; the answers, computed from the notes, come on a
        sheet of their own.
        {onPaper === 'tab' &&
          ' Strings and frets are not asked while the handout is set with the tab alone, which shows them.'}
      </p>
      <AtSight piece={piece} />
    </div>
  );
}
