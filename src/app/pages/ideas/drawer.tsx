import { memo, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { barName, counted } from '../../../core/base';
import { countedIn } from '../../../core/chart';
import { ideaOfferFor } from '../../../core/composing';
import {
  type InstrumentSettings,
  keepBar,
  type Lesson,
  type LinePiece,
  type LineSheet,
  takeIdea,
} from '../../../core/lesson';
import type { Idea } from '../../../core/line';
import { writeFromIdea } from '../../../core/writing';
import { CheckField } from '../../controls';
import { BarAims } from '../aims';
import { useAtWork, useEditor, useNoteNames, usePieceNow } from '../at-work';
import { BarChords } from '../chart';
import { gliding, NARROW, SMALL, useMedia } from '../common';
import { FingeringChoices } from '../fingering';
import { PencilStrip, perform, takeOut, useNeckOpen } from '../pencil';
import { chordsOf, degreesLine, describeTechniques } from '../words';
import { IdeaCard } from './card';
import { ideaNames } from './names';
import { sameNotes, sameQuestion } from './preview';

interface IdeaDrawerProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  /** Index of the written bar. */
  readonly bar: number;
  readonly instrument: InstrumentSettings;
  readonly onClose: () => void;
}

interface Asked {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  readonly noteNames: Lesson['noteNames'];
  readonly bar: number;
  readonly ideas: readonly Idea[];
  /** Why there are none, or only a few; null where there are many. */
  readonly remark: string | null;
}

const ask = (
  piece: LinePiece,
  instrument: InstrumentSettings,
  noteNames: Lesson['noteNames'],
  bar: number,
): Asked => ({
  piece,
  instrument,
  noteNames,
  bar,
  ...ideaOfferFor(piece, instrument, bar, noteNames),
});

/** While the chart is typed into, ideas are looked for when the typing has rested for this long, in milliseconds. */
const TYPING_REST = 400;

/**
 * The ideas stay as they are, in their order, while one after the other is tried in the line. They are looked for
 * after the drawer has opened, so that the click is answered at once; null until then.
 */
function useIdeas(piece: LinePiece, instrument: InstrumentSettings, bar: number): Asked | null {
  const noteNames = useNoteNames();
  const [asked, setAsked] = useState<Asked | null>(null);
  const answer =
    asked !== null &&
    asked.bar === bar &&
    asked.instrument === instrument &&
    asked.noteNames === noteNames &&
    sameQuestion(asked.piece, piece, bar)
      ? asked
      : null;
  const isTyped = asked !== null && asked.bar === bar && asked.piece.chartText !== piece.chartText;
  const rest = isTyped ? TYPING_REST : 0;
  useEffect(() => {
    if (answer !== null) return;
    const timer = window.setTimeout(() => setAsked(ask(piece, instrument, noteNames, bar)), rest);
    return () => window.clearTimeout(timer);
  }, [answer, piece, instrument, noteNames, bar, rest]);
  return answer;
}

/** Whether an element does not fit between the header and the ledge: then its beginning is what has to be seen. */
function isTall(element: HTMLElement | null): boolean {
  const heightOf = (selector: string) =>
    document.querySelector(selector)?.getBoundingClientRect().height ?? 0;
  const room = window.innerHeight - heightOf('.header') - heightOf('.ledge') - heightOf('.fretboard');
  return element !== null && element.getBoundingClientRect().height > room;
}

/** Opens in the sheet under the chosen bar: what the bar teaches now, and what else could stand there. */
export const IdeaDrawer = memo(function IdeaDrawer({
  piece,
  sheet,
  bar,
  instrument,
  onClose,
}: IdeaDrawerProps) {
  const { session } = useAtWork();
  const id = useId();
  const root = useRef<HTMLDivElement>(null);
  const writing = useEditor((state) => state.pencil !== null && state.pencil.pieceId === piece.id);
  const now = usePieceNow(piece, !writing);
  const asked = useIdeas(piece, instrument, bar);
  const narrow = useMedia(NARROW);
  const small = useMedia(SMALL);
  const neckOpen = useNeckOpen();

  // However far one had looked on: another bar begins at the drawer's head, and so do the keys of the pencil, which could
  // not be drawn back over the open neck.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each lays the drawer out anew
  useLayoutEffect(() => {
    if (root.current !== null) root.current.scrollTop = 0;
  }, [bar, writing, neckOpen]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another bar may open the drawer elsewhere, and so does the pencil
  useEffect(() => {
    const drawer = root.current;
    if (drawer === null) return;
    const system = drawer.parentElement?.querySelector('.system');
    if (window.matchMedia(writing ? SMALL : NARROW).matches || isTall(drawer.parentElement))
      system?.scrollIntoView({ block: 'start', behavior: gliding() });
    else drawer.scrollIntoView({ block: 'nearest', behavior: gliding() });
  }, [bar, writing]);

  const written = sheet.bars[bar];
  const stored = now.bars[bar];
  if (written === undefined || stored === undefined) return null;
  const { metre } = written.written;
  const placed = countedIn(sheet.chart, bar, metre);
  const names = ideaNames(asked?.ideas ?? [], metre, sheet.noteNames, placed);
  const title = `Ideas for ${barName(written.written.number)}`;
  // On a narrow screen the ideas come first, under the thumb.
  const chords = (
    <BarChords
      piece={now}
      bar={bar}
      number={written.written.number}
      noteNames={sheet.noteNames ?? 'letters'}
    />
  );
  const aims = <BarAims piece={now} sheet={sheet} bar={bar} number={written.written.number} />;
  const fingering = <FingeringChoices key={bar} piece={now} instrument={instrument} bar={bar} />;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group with a heading, not a form's fieldset
    <div className="drawer" role="group" ref={root} aria-labelledby={`${id}-title`}>
      <div className="drawer__inner">
        {/* Under the thumb the keys come first, and all else below them. */}
        {writing && small && <PencilStrip sheet={sheet} number={written.written.number} />}
        <div className="drawer__head">
          <h3 className="drawer__title" id={`${id}-title`}>
            {title} · {chordsOf(written.written, sheet.noteNames)}
            {asked !== null && asked.ideas.length > 0 && (
              <span className="drawer__count">{asked.ideas.length} ideas</span>
            )}
          </h3>
          {!writing && (
            <button
              type="button"
              className="button"
              onClick={() => takeOut(session, piece.id, bar, written.written.metre)}
            >
              Write by hand
            </button>
          )}
          <CheckField
            label="Keep this bar"
            checked={stored.kept}
            onChange={(kept) =>
              session.lessons.change((lesson) => keepBar(lesson, piece.id, bar, kept), {
                label: `${kept ? 'keep' : 'free'} ${barName(written.written.number)}`,
              })
            }
          />
          <button type="button" className="button button--quiet" onClick={onClose} data-close-drawer>
            Close
          </button>
        </div>
        {writing && !small && <PencilStrip sheet={sheet} number={written.written.number} />}
        {!narrow && chords}
        {written.notes.length > 0 && (
          <p className="drawer__now">
            In the line now:{' '}
            <strong className="drawer__degrees">
              {degreesLine(
                written.notes.map(({ note }) => note),
                written.analysis,
                written.written.metre,
              )}
            </strong>{' '}
            <span className="drawer__techniques">{describeTechniques(written.analysis.techniques)}.</span>{' '}
            {written.analysis.reason}
          </p>
        )}
        {!narrow && (
          <div className="drawer__folds">
            {aims}
            {fingering}
          </div>
        )}
        <p role="status" aria-label="Ideas" className="visually-hidden">
          {asked === null
            ? ''
            : `${counted(asked.ideas.length, 'idea')} for ${barName(written.written.number)}`}
        </p>
        {asked === null && <div className="ideas ideas--awaited" />}
        {asked !== null && asked.remark !== null && <p>{asked.remark}</p>}
        {asked !== null && asked.ideas.length > 0 && (
          <ul className="ideas" aria-label={title}>
            {asked.ideas.map((idea, index) => (
              <IdeaCard
                key={idea.id}
                idea={idea}
                order={index}
                piece={asked.piece}
                instrument={instrument}
                bar={bar}
                metre={written.written.metre}
                number={written.written.number}
                name={names[index] ?? ''}
                inLine={sameNotes(idea.notes, stored.notes)}
                onTakeNote={writing ? () => perform(session, writeFromIdea(idea.notes, bar)) : null}
                onTake={() =>
                  session.lessons.change((lesson) => takeIdea(lesson, piece.id, bar, idea), {
                    label: `take an idea for ${barName(written.written.number)}`,
                  })
                }
              />
            ))}
          </ul>
        )}
        {narrow && (
          <>
            {chords}
            {aims}
            {fingering}
          </>
        )}
      </div>
    </div>
  );
});
