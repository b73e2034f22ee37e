import { useEffect, useMemo, useRef, useState } from 'react';
import type { Light, LineSheet } from '../../../core/lesson';
import type { ScoreLayout } from '../../../score';
import { useAtWork } from '../at-work';
import { barToRead, useScore } from '../score';
import type { Shown } from './choices';
import { type LargeLayout, layOutLarge } from './large-layout';
import { type TurnedRows, turnRows } from './page-turn';
import { type Room, useRoom } from './room';
import { LargeSystem } from './system';
import { sameTurn, type Turn, turnAt } from './turn';

interface LargeMusicProps {
  readonly sheet: LineSheet;
  readonly shown: Shown;
  /** Written bars that are seen at once. */
  readonly bars: 2 | 4;
  /** What is shown while nothing is played: another object turns there again. */
  readonly place: Place;
  /** Whether the first bar comes after the last one. */
  readonly goesRound: boolean;
  /** Nothing of the music is seen. */
  readonly hidden: boolean;
  readonly light: Light | null;
  /** Whose turn it is while it is played by turns. */
  readonly turn: Turn | null;
  /** Whether the bars that are answered are seen. */
  readonly answer: boolean;
  /** Of a CSS pixel on the screen. */
  readonly millimetres: number;
  /** Is told what is drawn. */
  readonly onDrawn: (layout: ScoreLayout) => void;
  /** Is told which bars are seen, by their indices: first what is played, then what comes next. */
  readonly onSeen: (bars: readonly number[]) => void;
}

/** Where the view stands open, by the index of a written bar. */
export interface Place {
  readonly bar: number;
}

/** Two bars, or four, as large as the room allows. */
export function LargeMusic(given: LargeMusicProps) {
  const { sheet, shown, bars, place, goesRound, hidden, light, turn, answer, millimetres } = given;
  const { onDrawn, onSeen } = given;
  const holder = useRef<HTMLDivElement>(null);
  const large = useLargeLayout(sheet, shown, bars, useRoom(holder), millimetres);
  const layout = large?.layout ?? null;
  useEffect(() => {
    if (layout !== null) onDrawn(layout);
  }, [layout, onDrawn]);
  const turned = useTurnedRows(layout, large?.rows ?? 1, place, goesRound, sheet.id);
  useEffect(() => {
    if (layout === null) return;
    const inOrder = turned.rows.map((_, row) => turned.rows[(turned.at + row) % turned.rows.length] ?? null);
    onSeen(
      inOrder.flatMap((index) =>
        index === null ? [] : (layout.systems[index]?.bars.map(({ bar }) => bar) ?? []),
      ),
    );
  }, [layout, turned, onSeen]);
  return (
    <div className={`show__music${hidden ? ' show__music--hidden' : ''}`} ref={holder}>
      {hidden && <p className="show__hidden">Hidden: listen</p>}
      {layout !== null &&
        turned.rows.map((row, index) => {
          const system = row === null ? undefined : layout.systems[row];
          return (
            <div
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
              key={index}
              className={`show__row${index === turned.at ? '' : ' show__row--next'}`}
            >
              {system && (
                <LargeSystem
                  layout={layout}
                  system={system}
                  sheet={sheet}
                  light={light}
                  turn={turn}
                  answer={answer}
                />
              )}
            </div>
          );
        })}
    </div>
  );
}

function useLargeLayout(
  sheet: LineSheet,
  shown: Shown,
  bars: 2 | 4,
  room: Room,
  millimetres: number,
): LargeLayout<ScoreLayout> | null {
  const state = useScore();
  const score = state.kind === 'ready' ? state.score : null;
  return useMemo(
    () =>
      score === null || room.width === 0 || room.height === 0
        ? null
        : layOutLarge(score.layoutScore, sheet, { shown, bars, room, millimetres }),
    [score, sheet, shown, bars, room, millimetres],
  );
}

const systemOf = ({ systems }: ScoreLayout, bar: number): number =>
  Math.max(
    0,
    systems.findIndex(({ bars }) => bars.some((box) => box.bar === bar)),
  );

/** Which systems are seen, followed while it plays. */
function useTurnedRows(
  layout: ScoreLayout | null,
  count: number,
  place: Place,
  goesRound: boolean,
  pieceId: string,
): TurnedRows {
  const { playback } = useAtWork();
  const [turned, setTurned] = useState<TurnedRows>({ rows: [], at: 0 });
  useEffect(() => {
    if (layout === null) return;
    const begin = systemOf(layout, place.bar);
    const after = begin + 1 < layout.systems.length ? begin + 1 : null;
    const empty = { rows: Array.from({ length: count }, () => null), at: 0 };
    setTurned(turnRows(empty, begin, after));
    return playback.follow((position) => {
      if (position === null || playback.getState().heard?.pieceId !== pieceId) return;
      const { performance, playedBar } = position;
      // With a row that shows what comes next, the eyes go there by themselves.
      const sounding = playedBar === null ? undefined : performance.bars[playedBar]?.bar;
      const bar = count > 1 ? (sounding ?? performance.bars[0]?.bar) : barToRead(position, goesRound);
      if (bar === undefined || bar === null) return;
      const playing = systemOf(layout, bar);
      const later = performance.bars.slice((playedBar ?? 0) + 1);
      const order = goesRound ? [...later, ...performance.bars] : later;
      const next = order.map((each) => systemOf(layout, each.bar)).find((system) => system !== playing);
      setTurned((before) => turnRows(before, playing, next ?? null));
    });
  }, [layout, count, place, goesRound, playback, pieceId]);
  return turned.rows.length === count ? turned : { rows: [], at: 0 };
}

/** Whose turn it is, while the line is played by turns. */
export function useTurn(pieceId: string): Turn | null {
  const { playback } = useAtWork();
  const [turn, setTurn] = useState<Turn | null>(null);
  useEffect(
    () =>
      playback.follow((position) => {
        const own = playback.getState().heard?.pieceId === pieceId ? position : null;
        const now = own === null ? null : turnAt(own);
        setTurn((before) => (sameTurn(before, now) ? before : now));
      }),
    [playback, pieceId],
  );
  return turn;
}
