import { useEffect, useLayoutEffect, useRef } from 'react';
import type { Light, LineSheet } from '../../../core/lesson';
import { straightened } from '../../../core/playing';
import type { BarBox, ScoreLayout, SystemLayout } from '../../../score';
import type { PlayPosition } from '../../../sound';
import { useAtWork } from '../at-work';
import { countedBeat, usePlayheadStyle, useScore } from '../score';
import { spaceOf } from './reading';
import { silencesOf, silenceWord } from './silence';
import type { Turn } from './turn';

interface DrawnSystemProps {
  readonly layout: ScoreLayout;
  readonly system: SystemLayout;
  readonly sheet: LineSheet;
}

interface LargeSystemProps extends DrawnSystemProps {
  readonly light: Light | null;
  /** Whose turn it is while it is played by turns. */
  readonly turn: Turn | null;
  /** Whether the bars that are answered are seen. */
  readonly answer: boolean;
}

/** A system of the large view with its silences, what is lit up, whose turn it is, and the playhead. */
export function LargeSystem({ layout, system, sheet, light, turn, answer }: LargeSystemProps) {
  const drawing = useRef<HTMLDivElement>(null);
  const state = useScore();
  useLayoutEffect(() => {
    if (state.kind === 'ready')
      drawing.current?.replaceChildren(state.score.drawSystem(layout, system.index));
  }, [state, layout, system]);
  return (
    <div className="system show__system" style={{ height: system.height, width: system.width }}>
      {system.bars.map((box) => (
        <Silences
          key={box.bar}
          box={box}
          system={system}
          sheet={sheet}
          lit={light?.kind === 'silence' && light.bars.includes(box.bar)}
        />
      ))}
      <div className="system__drawing" ref={drawing} />
      {system.bars.map(({ bar, x, width }) => {
        const place = { left: x, width, height: system.height };
        const answered = turn?.kind === 'answer' && turn.bars.includes(bar);
        return (
          <span key={bar} aria-hidden="true">
            {light !== null && (
              <span className={light.bars.includes(bar) ? 'show__lit' : 'show__unlit'} style={place} />
            )}
            {answered && (
              <span className={answer ? 'show__answer' : 'show__answer show__answer--hidden'} style={place}>
                {!answer && 'your answer'}
              </span>
            )}
          </span>
        );
      })}
      <LargePlayhead layout={layout} system={system} sheet={sheet} />
    </div>
  );
}

/** The place of a moment: that of what begins there. */
const xAt = ({ positions, x, width }: BarBox, tick: number): number =>
  positions.find((position) => position.tick >= tick)?.x ?? x + width;

interface SilencesProps extends Omit<DrawnSystemProps, 'layout'> {
  readonly box: BarBox;
  /** Whether it is pointed at. */
  readonly lit: boolean;
}

/** Where the bass is silent, marked and named. */
function Silences({ box, system, sheet, lit }: SilencesProps) {
  const bar = sheet.bars[box.bar];
  if (bar === undefined) return null;
  const notes = bar.notes.map(({ note }) => note);
  const space = spaceOf(system);
  return silencesOf(notes, bar.written.metre).map(({ start, end }) => {
    const left = xAt(box, start) - space;
    const right = Math.min(xAt(box, end) - space * 1.2, box.x + box.width - space / 2);
    const width = Math.max(space * 2, right - left);
    const word = silenceWord(system, width);
    const top = system.staff.top - space;
    const bottom = Math.max(system.tab.bottom + space, word.top + word.size);
    return (
      <span
        key={start}
        className={`show__silence${lit ? ' show__silence--lit' : ''}`}
        style={{ left, width, top, height: bottom - top, fontSize: word.size }}
        aria-hidden="true"
      >
        <b style={{ top: word.top - top }}>rest</b>
      </span>
    );
  });
}

function LargePlayhead({ layout, system, sheet }: DrawnSystemProps) {
  const { playback } = useAtWork();
  const head = useRef<HTMLDivElement>(null);
  const state = useScore();
  useEffect(() => {
    if (state.kind !== 'ready') return;
    const { playheadX } = state.score;
    const placeOf = ({ performance, playedBar, tick }: PlayPosition) => {
      // While it is counted in, it waits where the music begins.
      const played = performance.bars[playedBar ?? (tick < performance.countIn ? 0 : -1)];
      if (played === undefined) return null;
      const within = Math.max(0, tick - played.start);
      return playheadX(layout, played.bar, straightened(within, sheet, performance.tempo));
    };
    return playback.follow((position) => {
      const element = head.current;
      const own = playback.getState().heard?.pieceId === sheet.id ? position : null;
      const place = own && placeOf(own);
      const isHere = place?.system === system.index;
      element?.classList.toggle('playhead--on', isHere);
      if (element === null || own === null || !isHere) return;
      element.style.transform = `translateX(${place.x}px)`;
      element.dataset.count = String(countedBeat(own, sheet.chart.metre) ?? '');
    });
  }, [playback, layout, system, sheet, state]);
  const style = usePlayheadStyle(system);
  return <div className="playhead" ref={head} aria-hidden="true" style={style} />;
}
