import { type CSSProperties, memo, type ReactNode, useLayoutEffect, useMemo, useRef } from 'react';
import type { BarBox, ScoreLayout, SystemLayout } from '../../../score';
import { useNear } from '../common';
import { useScore } from './ready';

export interface BarButton {
  readonly name: string;
  readonly description: string;
  readonly kept: boolean;
  /** Whether it is marked where several bars are; else the chosen one is. */
  readonly marked?: boolean;
}

interface SystemViewProps {
  readonly layout: ScoreLayout;
  readonly system: SystemLayout;
  readonly buttons: readonly BarButton[] | null;
  readonly chosen: number | null;
  /** The one bar of the score that the Tab key reaches; arrows lead to the others. */
  readonly reachable: number;
  /** Whether it is drawn out of view too. */
  readonly whole: boolean;
  /** What lies over a bar, besides its button; null where nothing does. */
  readonly over: ((box: BarBox, system: SystemLayout) => ReactNode) | null;
  readonly onChoose: (bar: number) => void;
  readonly onFocus: (bar: number) => void;
}

/** Whether a system looks and answers the same: what is written in another one changes nothing here. */
function sameSystem(before: SystemViewProps, after: SystemViewProps): boolean {
  const { system } = after;
  const holds = (bar: number | null) => system.bars.some((box) => box.bar === bar);
  return (
    before.system.fingerprint === system.fingerprint &&
    before.system.index === system.index &&
    before.system.height === system.height &&
    before.whole === after.whole &&
    before.onChoose === after.onChoose &&
    before.onFocus === after.onFocus &&
    // What lies over the bars is given anew each time.
    before.over === null &&
    after.over === null &&
    (before.chosen === after.chosen || !(holds(before.chosen) || holds(after.chosen))) &&
    (before.reachable === after.reachable || !(holds(before.reachable) || holds(after.reachable))) &&
    system.bars.every(({ bar }) => sameButton(before.buttons?.[bar], after.buttons?.[bar]))
  );
}

const sameButton = (one: BarButton | undefined, other: BarButton | undefined): boolean =>
  one === other ||
  (one?.name === other?.name &&
    one?.description === other?.description &&
    one?.kept === other?.kept &&
    one?.marked === other?.marked);

/** One line of music: the drawing, a button over every bar, and the playhead's place. */
export const SystemView = memo(function SystemView(props: SystemViewProps) {
  const { layout, system, buttons } = props;
  const root = useRef<HTMLDivElement>(null);
  const near = useNear(root);
  const playheadStyle = usePlayheadStyle(system);
  return (
    <div className="system" ref={root} style={{ height: system.height }}>
      <div className="system__chosen">
        {system.bars
          .filter((box) => box.bar === props.chosen)
          .map((box) => (
            <div
              key={box.bar}
              className="chosen-bar"
              style={{ left: box.x, width: box.width, height: system.height }}
            />
          ))}
      </div>
      {(near || props.whole) && (
        <Drawing layout={layout} index={system.index} fingerprint={system.fingerprint} />
      )}
      {buttons !== null && <BarButtons {...props} buttons={buttons} />}
      {system.bars.map(
        (box) =>
          buttons?.[box.bar]?.kept === true && (
            <span
              key={box.bar}
              className="kept"
              aria-hidden="true"
              style={{ right: system.width - box.x - box.width }}
            >
              kept
            </span>
          ),
      )}
      {props.over !== null && system.bars.map((box) => props.over?.(box, system))}
      <div className="playhead" data-playhead={system.index} aria-hidden="true" style={playheadStyle} />
    </div>
  );
}, sameSystem);

interface DrawingProps {
  readonly layout: ScoreLayout;
  readonly index: number;
  readonly fingerprint: string;
}

/** How high the playhead is in a system, and what its digit is sized by. */
export function usePlayheadStyle(system: SystemLayout): CSSProperties {
  const state = useScore();
  return useMemo(() => {
    if (state.kind !== 'ready') return {};
    const { top, bottom } = state.score.playheadSpan(system);
    const size: Record<`--${string}`, string> = {
      '--staff-space': `${(system.staff.bottom - system.staff.top) / 4}px`,
    };
    return { top, height: bottom - top, ...size };
  }, [state, system]);
}

/** Drawn again only when what it shows has changed. */
const Drawing = memo(
  function Drawing({ layout, index }: DrawingProps) {
    const holder = useRef<HTMLDivElement>(null);
    const state = useScore();
    useLayoutEffect(() => {
      const place = holder.current;
      if (state.kind !== 'ready' || place === null) return;
      const { drawSystem, redrawSystem } = state.score;
      const picture = place.firstElementChild;
      if (picture === null || !redrawSystem(picture, layout, index))
        place.replaceChildren(drawSystem(layout, index));
    }, [state, layout, index]);
    return <div className="system__drawing" ref={holder} />;
  },
  (before, after) => before.fingerprint === after.fingerprint && before.index === after.index,
);

function BarButtons({
  system,
  buttons,
  chosen,
  reachable,
  onChoose,
  onFocus,
}: SystemViewProps & { readonly buttons: readonly BarButton[] }) {
  return system.bars.map((box) => {
    const button = buttons[box.bar];
    return button === undefined ? null : (
      <button
        key={box.bar}
        type="button"
        className="bar"
        data-bar={box.bar}
        aria-label={button.name}
        aria-description={button.description}
        aria-pressed={button.marked ?? box.bar === chosen}
        tabIndex={box.bar === reachable ? 0 : -1}
        style={{ left: box.x, width: box.width }}
        onClick={() => onChoose(box.bar)}
        onFocus={() => onFocus(box.bar)}
      />
    );
  });
}
