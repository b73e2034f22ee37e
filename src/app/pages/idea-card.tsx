import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Metre } from '../../core/base';
import type { InstrumentSettings, LinePiece, LineSheet } from '../../core/lesson';
import type { Idea } from '../../core/line';
import { degreesLine, describeTechniques } from './describe';
import { useNear, useWidth, whenIdle } from './hooks';
import { sheetWithIdea, singleBar } from './idea-preview';
import { useScore } from './score-ready';
import { useAtWork } from './session';

interface IdeaCardProps {
  readonly idea: Idea;
  /** Its place in the list: pictures are drawn in this order. */
  readonly order: number;
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  readonly bar: number;
  readonly metre: Metre;
  readonly inLine: boolean;
  readonly onTake: () => void;
}

/** One idea: its degrees, what it teaches and why, how it looks, how it sounds in its place. */
export function IdeaCard(props: IdeaCardProps) {
  const { idea, bar, metre, inLine, onTake } = props;
  const id = useId();
  const degrees = degreesLine(idea.notes, idea.analysis, metre);
  return (
    <li className={`idea${inLine ? ' idea--taken' : ''}`}>
      <p className="idea__degrees" id={`${id}-degrees`}>
        {degrees}
      </p>
      <p className="idea__techniques" id={`${id}-techniques`}>
        {describeTechniques(idea.analysis.techniques)}
      </p>
      <p className="idea__reason">{idea.analysis.reason}</p>
      <Picture {...props} />
      <div className="idea__actions">
        <HearButton {...props} degrees={degrees} />
        <button
          type="button"
          className="word"
          id={`${id}-take`}
          aria-pressed={inLine}
          aria-labelledby={`${id}-techniques ${id}-degrees ${id}-take`}
          aria-description={`For bar ${bar + 1}`}
          onClick={onTake}
        >
          {inLine ? 'In the line' : 'Take it'}
        </button>
      </div>
    </li>
  );
}

function HearButton({ idea, piece, instrument, bar, degrees }: IdeaCardProps & { readonly degrees: string }) {
  const { playback } = useAtWork();
  const heard = useStore(playback, (state) => state.heard?.kind === 'idea' && state.heard.ideaId === idea.id);
  const hear = () => {
    const sheet = sheetWithIdea(piece, instrument, bar, idea);
    if (sheet !== null) void playback.hear(piece, sheet, bar, idea.id);
  };
  return (
    <button
      type="button"
      className="word"
      aria-label={`${heard ? 'Silence it' : 'Hear it'} in place: ${degrees}`}
      onClick={heard ? playback.stop : hear}
    >
      {heard ? 'Silence it' : 'Hear it'}
    </button>
  );
}

/** A small picture of the bar on staff and tab; its place is kept free until it is drawn. */
function Picture({ idea, order, piece, instrument, bar }: IdeaCardProps) {
  const holder = useRef<HTMLDivElement>(null);
  const near = useNear(holder);
  const width = useWidth(holder);
  const state = useScore();
  const [sheet, setSheet] = useState<LineSheet | null>(null);

  useEffect(() => {
    if (!near) return;
    return whenIdle(
      () => {
        const whole = sheetWithIdea(piece, instrument, bar, idea);
        setSheet(whole && singleBar(whole, bar));
      },
      200 + order * 40,
    );
  }, [near, order, piece, instrument, bar, idea]);

  useLayoutEffect(() => {
    if (state.kind !== 'ready' || sheet === null || width === 0) return;
    const layout = state.score.layoutScore(sheet, {
      width,
      staffSpace: 6,
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
