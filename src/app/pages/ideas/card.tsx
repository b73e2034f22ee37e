import { memo, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { barName, type Metre } from '../../../core/base';
import type { InstrumentSettings, LinePiece, LineSheet } from '../../../core/lesson';
import type { Idea } from '../../../core/line';
import { useAtWork, useNoteNames } from '../at-work';
import { useNear, useWidth, whenIdle } from '../common';
import { useScore } from '../score';
import { degreesLine, describeTechniques } from '../words';
import { sheetWithIdea, singleBar } from './preview';

interface IdeaCardProps {
  readonly idea: Idea;
  /** Its place in the list: pictures are drawn in this order. */
  readonly order: number;
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  readonly bar: number;
  /** The bar's number as written. */
  readonly number: number;
  readonly metre: Metre;
  /** What it teaches and plays in words, unlike those of the other ideas. */
  readonly name: string;
  readonly inLine: boolean;
  readonly onTake: () => void;
  /** Writes the idea's next note where the pencil stands; null while no bar is open for writing. */
  readonly onTakeNote: (() => void) | null;
}

/** Whether a card shows and does the same: what it does depends on the idea and its bar alone. */
const sameCard = (before: IdeaCardProps, after: IdeaCardProps): boolean =>
  before.idea === after.idea &&
  before.order === after.order &&
  before.piece === after.piece &&
  before.instrument === after.instrument &&
  before.bar === after.bar &&
  before.number === after.number &&
  before.metre === after.metre &&
  before.name === after.name &&
  before.inLine === after.inLine &&
  (before.onTakeNote === null) === (after.onTakeNote === null);

/** One idea: its degrees, what it teaches and why, how it looks, how it sounds in its place. */
export const IdeaCard = memo(function IdeaCard(props: IdeaCardProps) {
  const { idea, number, metre, name, inLine, onTake, onTakeNote } = props;
  const told = inLine ? 'In the line' : 'Take it';
  return (
    <li className={`idea${inLine ? ' idea--taken' : ''}`}>
      <p className="idea__degrees">{degreesLine(idea.notes, idea.analysis, metre)}</p>
      <p className="idea__techniques">{describeTechniques(idea.analysis.techniques)}</p>
      <p className="idea__reason">{idea.analysis.reason}</p>
      <Picture {...props} />
      <div className="idea__actions">
        <HearButton {...props} />
        {onTakeNote !== null && (
          <button
            type="button"
            className="button button--quiet"
            aria-label={`Take its next note: ${name}`}
            onPointerDown={(event) => event.preventDefault()}
            onClick={onTakeNote}
          >
            Next note
          </button>
        )}
        <button
          type="button"
          className="word"
          aria-pressed={inLine}
          aria-label={`${name}. ${told}`}
          aria-description={`For ${barName(number)}`}
          onClick={onTake}
        >
          {told}
        </button>
      </div>
    </li>
  );
}, sameCard);

function HearButton({ idea, piece, instrument, bar, name }: IdeaCardProps) {
  const { playback } = useAtWork();
  const noteNames = useNoteNames();
  const heard = useStore(playback, (state) => state.heard?.kind === 'idea' && state.heard.ideaId === idea.id);
  const hear = () => {
    const sheet = sheetWithIdea(piece, instrument, noteNames, bar, idea);
    if (sheet !== null) void playback.hear(piece, sheet, bar, idea.id);
  };
  return (
    <button
      type="button"
      className="word"
      aria-label={`${heard ? 'Silence it' : 'Hear it'} in place: ${name}`}
      onClick={heard ? playback.stop : hear}
    >
      {heard ? 'Silence it' : 'Hear it'}
    </button>
  );
}

/** A small picture of the bar on staff and tab; its place is kept free until it is drawn. */
function Picture({ idea, order, piece, instrument, bar }: IdeaCardProps) {
  const noteNames = useNoteNames();
  const holder = useRef<HTMLDivElement>(null);
  const near = useNear(holder);
  const width = useWidth(holder);
  const state = useScore();
  const [sheet, setSheet] = useState<LineSheet | null>(null);

  useEffect(() => {
    if (!near) return;
    return whenIdle(
      () => {
        const whole = sheetWithIdea(piece, instrument, noteNames, bar, idea);
        setSheet(whole && singleBar(whole, bar));
      },
      200 + order * 40,
    );
  }, [near, order, piece, instrument, noteNames, bar, idea]);

  useLayoutEffect(() => {
    if (state.kind !== 'ready' || sheet === null || width === 0) return;
    const layout = state.score.layoutScore(sheet, {
      width,
      staffSpace: 6,
      textSizes: { tab: 11.5 },
      degrees: false,
      fingers: false,
      counting: false,
      barsPerSystem: 1,
      measureNumbers: false,
    });
    holder.current?.replaceChildren(state.score.drawSystem(layout, 0));
  }, [state, sheet, width]);

  return <div className="idea__picture" ref={holder} />;
}
