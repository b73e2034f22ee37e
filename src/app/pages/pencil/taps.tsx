import { useEffect, useId, useRef, useState } from 'react';
import { barName } from '../../../core/base';
import { barTime, type Desk, type Tap, tapped } from '../../../core/writing';
import { useAtWork } from '../at-work';
import { startClicks } from './click';
import { goOnWriting, perform } from './perform';
import { endTapping, layPad, tapper } from './tapping';

interface TapsProps {
  readonly desk: Desk;
  /** Of the bar at hand, as it is written over it. */
  readonly number: number;
}

/** Time between asking and the first click of the count-in, in milliseconds. */
const READY_MS = 400;

/** The rhythm of a bar is tapped, by any key or on the pad, after one bar of count-in. */
export function Taps({ desk, number }: TapsProps) {
  const { session } = useAtWork();
  const { beats, beatMs, ticksPerMs } = barTime(desk);
  const [beat, setBeat] = useState<number | null>(null);
  const pad = useRef<HTMLButtonElement>(null);
  const how = useId();
  useEffect(() => {
    const start = performance.now() + READY_MS;
    const opening = start + beats * beatMs;
    const clicks = startClicks(
      Array.from({ length: 2 * beats }, (_, index) => ({
        at: start + index * beatMs,
        one: index % beats === 0,
      })),
    );
    pad.current?.focus({ preventScroll: true });
    const taps = tapper();
    const down = ({ timeStamp }: Event) => taps.down('thumb', timeStamp);
    const up = ({ timeStamp }: Event) => taps.up('thumb', timeStamp);
    const takeAway = layPad(session, taps);
    const onKey = (event: KeyboardEvent) => {
      event.preventDefault();
      event.stopPropagation();
      if (event.type === 'keyup') taps.up(event.code, event.timeStamp);
      else if (event.key === 'Escape') goOnWriting(session);
      else if (!event.repeat) taps.down(event.code, event.timeStamp);
    };
    const ticksOf = (time: number) => (time - opening - clicks.delay()) * ticksPerMs;
    const finish = () => {
      const now = performance.now();
      // A tap in the count-in is none, unless it is the first beat struck a little early.
      const struck = taps
        .struck()
        .filter((each) => each.down > opening - beatMs / 4)
        .map((each): Tap => ({ down: ticksOf(each.down), up: ticksOf(each.up ?? now) }));
      endTapping();
      goOnWriting(session);
      perform(session, tapped(struck));
    };
    const timers = Array.from({ length: 2 * beats }, (_, index) =>
      window.setTimeout(() => setBeat(index), READY_MS + index * beatMs),
    );
    timers.push(window.setTimeout(finish, READY_MS + 2 * beats * beatMs));
    const surface = pad.current;
    surface?.addEventListener('pointerdown', down);
    window.addEventListener('pointerup', up);
    window.addEventListener('keydown', onKey, { capture: true });
    window.addEventListener('keyup', onKey, { capture: true });
    return () => {
      takeAway();
      clicks.stop();
      for (const timer of timers) window.clearTimeout(timer);
      surface?.removeEventListener('pointerdown', down);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('keydown', onKey, { capture: true });
      window.removeEventListener('keyup', onKey, { capture: true });
    };
  }, [session, beats, beatMs, ticksPerMs]);
  const counted = beat === null ? '' : String((beat % beats) + 1);
  return (
    <div className="strip__asked">
      <button ref={pad} type="button" className="strip__pad" aria-describedby={how}>
        {beat !== null && beat >= beats
          ? `Tap ${barName(number)} now`
          : `Count-in; then tap ${barName(number)}`}
        <b>{counted}</b>
      </button>
      <p id={how}>
        Tap here or with any key, each note as long as it lasts. Escape leaves the bar as it was.
      </p>
      <button type="button" className="button button--quiet" onClick={() => goOnWriting(session)}>
        Leave it as it was
      </button>
    </div>
  );
}
