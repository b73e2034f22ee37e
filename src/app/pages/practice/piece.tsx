import { Fragment, useId, useMemo, useState } from 'react';
import { barName, barRange, capitalised } from '../../../core/base';
import {
  type BlankPiece,
  type BlankSheet,
  deriveSheet,
  describeBar,
  EXPLAINED_HEADING,
  explainedToStudent,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  type Piece,
  setPlaying,
} from '../../../core/lesson';
import { loopOver, passageFor, passageOf } from '../../../core/playing';
import type { BarBox, SystemLayout } from '../../../score';
import { Later, laterPart, useAtWork } from '../at-work';
import type { BarMarks } from '../listening';
import { type BarButton, ScoreFigure } from '../score';
import { chordsOf, describePiece, describeScore } from '../words';
import { type BarRun, useDraggedBars } from './loop-bars';
import { SCORE_ID } from './skip-links';

interface PracticePieceProps {
  readonly piece: Piece;
  readonly lesson: Lesson;
  readonly atHand: boolean;
  /** Only the line's build-up. */
  readonly stagesOnly: boolean;
  /** What was heard of its bars. */
  readonly marks: BarMarks;
}

/** One piece as the student reads it: its name, what it is, and its sheet in large. */
export function PracticePiece({ piece, lesson, atHand, stagesOnly, marks }: PracticePieceProps) {
  const { instrument, noteNames } = lesson;
  const sheet = useMemo(() => deriveSheet(piece, instrument, noteNames), [piece, instrument, noteNames]);
  if (sheet.kind === 'line')
    return piece.kind !== 'line' || sheet.bars.length === 0 ? null : (
      <PracticeLine {...{ piece, sheet, lesson, atHand, stagesOnly, marks }} />
    );
  return piece.kind === 'line' || sheet.bars === 0 ? null : <BlankBars piece={piece} sheet={sheet} />;
}

function BlankBars({ piece, sheet }: { readonly piece: BlankPiece; readonly sheet: BlankSheet }) {
  return (
    <section className="piece" aria-label={piece.name}>
      <div className="practice__heading">
        <h2 className="practice__name">{piece.name}</h2>
      </div>
      <p className="piece__facts">For your own line.</p>
      <ScoreFigure
        sheet={sheet}
        large
        name={`Blank bars, ${piece.name}`}
        description={`${sheet.bars} empty bars of staff and tab.`}
        rows={NO_ROWS}
        bars={null}
      />
    </section>
  );
}

const NO_ROWS = { degrees: false, fingers: false };

interface PracticeLineProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly lesson: Lesson;
  readonly atHand: boolean;
  readonly stagesOnly: boolean;
  readonly marks: BarMarks;
}

function PracticeLine({
  piece,
  sheet,
  lesson: { handout, instrument },
  atHand,
  stagesOnly,
  marks,
}: PracticeLineProps) {
  const { session } = useAtWork();
  const rows = useMemo(
    () => ({ degrees: handout.degrees, fingers: handout.fingers, numerals: handout.numerals ?? false }),
    [handout.degrees, handout.fingers, handout.numerals],
  );
  const touch = useTouchedBars(piece, sheet);
  const loop = useMemo(
    () => (atHand || touch.run !== null ? loopedBars(piece, sheet, touch.run) : []),
    [piece, sheet, touch.run, atHand],
  );
  const buttons = useMemo(
    () =>
      sheet.bars.map((bar, index): BarButton => {
        const name = barName(bar.written.number);
        const chords = chordsOf(bar.written, sheet.noteNames);
        return {
          name: atHand ? `${capitalised(name)}, ${chords}` : `${sheet.name}, ${name} (${chords})`,
          description: [describeBar(sheet, bar, { rests: true }), ...heardOf(marks, index)].join(' '),
          kept: false,
          marked: loop.includes(index),
        };
      }),
    [sheet, atHand, loop, marks],
  );
  const over = {
    isOver: (bar: number) => loop.includes(bar) || marks.has(bar),
    view: (box: BarBox, system: SystemLayout) => (
      <Fragment key={`over ${box.bar}`}>
        {loop.includes(box.bar) && <LoopMark box={box} system={system} loop={loop} />}
        {marks.has(box.bar) && (
          <span className="heard-mark" style={{ left: box.x, width: box.width }} aria-hidden="true">
            {marks.get(box.bar)}
          </span>
        )}
      </Fragment>
    ),
  };
  if (stagesOnly)
    return (
      <section className="piece" aria-label={piece.name}>
        <Later part={STAGES} given={{ piece, sheet, instrument, rows }} />
      </section>
    );
  return (
    <section className={`piece${atHand ? ' piece--at-hand' : ''}`} aria-label={piece.name}>
      <div className="practice__heading">
        <h2 className="practice__name">{piece.name}</h2>
        {!atHand && (
          <button
            type="button"
            className="button button--quiet"
            aria-label={`Practise ${piece.name}`}
            onClick={() => session.choosePiece(piece.id)}
          >
            Practise this
          </button>
        )}
      </div>
      <p className="piece__facts">{describePiece(sheet)}</p>
      {atHand && <TouchWords {...touch} piece={piece} sheet={sheet} />}
      <div className="practice__score" id={atHand ? SCORE_ID : undefined} tabIndex={-1} {...touch.listeners}>
        <ScoreFigure
          sheet={sheet}
          large
          name={atHand ? 'Score' : `${piece.name} on staff and tab`}
          description={describeScore(sheet)}
          rows={rows}
          bars={{ buttons, chosen: null, choose: touch.tap, over, drawer: () => null }}
        />
      </div>
      {piece.buildUp !== undefined && <Later part={STAGES} given={{ piece, sheet, instrument, rows }} />}
      <Explained piece={piece} sheet={sheet} instrument={instrument} />
      <LineInWords sheet={sheet} />
    </section>
  );
}

/** What was heard of a bar, as its description says it. */
const heardOf = (marks: BarMarks, bar: number): readonly string[] => {
  const mark = marks.get(bar);
  return mark === undefined ? [] : [`Heard: ${mark}.`];
};

const STAGES = laterPart('The build-up', async () => (await import('../stages')).StagesToPractise);

interface ExplainedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
}

/** What the line is for, and where to listen, for the student. */
function Explained({ piece, sheet, instrument }: ExplainedProps) {
  const id = useId();
  const sentences = useMemo(() => explainedToStudent(piece, sheet, instrument), [piece, sheet, instrument]);
  if (sentences.length === 0) return null;
  return (
    <section className="practice__explained" aria-labelledby={id}>
      <h3 id={id}>
        {EXPLAINED_HEADING} in {sheet.name}
      </h3>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/** The line bar by bar in words, for ears, and for eyes that do not read notes yet. */
function LineInWords({ sheet }: { readonly sheet: LineSheet }) {
  return (
    <details className="practice__words">
      <summary>{sheet.name} in words, bar by bar</summary>
      <ol>
        {sheet.bars.map((bar) => (
          <li key={bar.written.number}>
            <b>
              {capitalised(barName(bar.written.number))}, {chordsOf(bar.written, sheet.noteNames)}:
            </b>{' '}
            {describeBar(sheet, bar, { rests: true })}
          </li>
        ))}
      </ol>
    </details>
  );
}

/** Indices of the bars that go round, or are being dragged over; none where it is the whole piece. */
function loopedBars(piece: LinePiece, sheet: LineSheet, run: BarRun | null): readonly number[] {
  const indices = sheet.bars.map((_, index) => index);
  if (run !== null) {
    const [first, last] = [Math.min(run.from, run.to), Math.max(run.from, run.to)];
    return indices.filter((index) => index >= first && index <= last);
  }
  const passage = passageOf(piece, sheet);
  if (passage === null) return [];
  return indices.filter((index) => {
    const number = sheet.bars[index]?.written.number ?? -1;
    return number >= passage.first && number <= passage.last;
  });
}

interface LoopMarkProps {
  readonly box: BarBox;
  readonly system: SystemLayout;
  readonly loop: readonly number[];
}

/** The loop on the score: a frame around its bars, with its word at the first of them. */
function LoopMark({ box, system, loop }: LoopMarkProps) {
  const first = box.bar === loop[0];
  const last = box.bar === loop.at(-1);
  const numbered = system.index > 0 && box.bar === system.bars[0]?.bar;
  return (
    <span
      className={`loop-mark${first ? ' loop-mark--first' : ''}${last ? ' loop-mark--last' : ''}${numbered ? ' loop-mark--numbered' : ''}`}
      style={{ left: box.x, width: box.width, height: system.height }}
      aria-hidden="true"
    >
      {first && <b className="loop-mark__word">loop</b>}
    </span>
  );
}

/** Two taps make a loop: null while a tap starts, then which bar has been tapped. */
type Taps = null | { readonly first: number | null };

/** What a touch of the bars does: a tap starts there, a drag or two taps loop. */
function useTouchedBars(piece: LinePiece, sheet: LineSheet) {
  const { session, playback } = useAtWork();
  const [taps, setTaps] = useState<Taps>(null);
  const change = (playing: Parameters<typeof setPlaying>[2]) =>
    session.lessons.change((lesson) => setPlaying(lesson, piece.id, playing), {
      label: 'change how it is played',
    });
  const numberOf = (bar: number) => sheet.bars[bar]?.written.number ?? 1;
  const loop = ({ from, to }: BarRun) => {
    session.choosePiece(piece.id);
    change(loopOver(sheet, numberOf(from), numberOf(to)));
    setTaps(null);
  };
  const { run, listeners } = useDraggedBars(loop);
  const tap = (bar: number | null) => {
    if (bar === null) return;
    if (taps !== null) {
      if (taps.first === null) setTaps({ first: bar });
      else loop({ from: taps.first, to: bar });
      return;
    }
    session.choosePiece(piece.id);
    const passage = passageFor(piece, sheet, numberOf(bar));
    if (passage !== null) change(passage);
    void playback.play(bar);
  };
  const shown = taps?.first == null ? run : { from: taps.first, to: taps.first };
  return { run: run ?? shown, listeners, tap, taps, setTaps, lift: () => change({ passage: null }) };
}

type TouchWordsProps = Pick<ReturnType<typeof useTouchedBars>, 'taps' | 'setTaps' | 'lift'> & {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
};

/** Says what a touch of the bars does, and what is looped. */
function TouchWords({ piece, sheet, taps, setTaps, lift }: TouchWordsProps) {
  const passage = passageOf(piece, sheet);
  const where = passage === null ? '' : capitalised(barRange(passage.first, passage.last));
  const asks = taps === null ? null : `Tap the ${taps.first === null ? 'first' : 'last'} bar of the loop`;
  return (
    <div className="practice__touch">
      {/* One button in both, so that it keeps the focus. */}
      <p>
        {asks === null ? 'Tap a bar to start there. Drag over bars to loop them, or ' : `${asks}, or `}
        <button
          type="button"
          className="word"
          onClick={() => setTaps(taps === null ? { first: null } : null)}
        >
          {taps === null ? 'loop by two taps' : 'leave it as it is'}
        </button>
        .
      </p>
      <p className="visually-hidden" aria-live="polite">
        {asks !== null && `${asks}.`}
      </p>
      <p role="status" aria-label="Loop">
        {passage !== null && `${where} ${piece.playing.loop ? 'round and round.' : 'once.'}`}
      </p>
      {passage !== null && (
        <button type="button" className="word" onClick={lift}>
          Play all bars
        </button>
      )}
    </div>
  );
}
