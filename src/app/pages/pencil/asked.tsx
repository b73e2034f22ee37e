import { useEffect, useId, useRef, useState } from 'react';
import { barName } from '../../../core/base';
import { BAR_WORDS_LENGTH } from '../../../core/lesson';
import { barTime, type Desk, type Tap, tapped, wordAbove, writeWord } from '../../../core/writing';
import { useAtWork, useEditor } from '../at-work';
import { startClicks } from './click';
import { goOnWriting, perform } from './perform';
import { layPad } from './tapping';

interface AskedProps {
  readonly desk: Desk;
  /** Of the bar at hand, as it is written over it. */
  readonly number: number;
}

/** What the pencil asks for before it goes on. */
export function Asked({ desk, number }: AskedProps) {
  const asked = useEditor((state) => state.asked);
  if (asked === null) return null;
  return asked === 'word' ? <Word desk={desk} number={number} /> : <Taps desk={desk} number={number} />;
}

function Word({ desk, number }: AskedProps) {
  const { session } = useAtWork();
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => field.current?.focus(), []);
  const write = () => {
    const text = field.current?.value.trim() ?? '';
    goOnWriting(session);
    if (text !== wordAbove(desk)) perform(session, writeWord(text));
  };
  return (
    <form
      className="strip__asked"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        goOnWriting(session);
      }}
    >
      <label htmlFor={id}>Word above {barName(number)}</label>
      <input
        ref={field}
        id={id}
        className="field__box"
        defaultValue={wordAbove(desk)}
        maxLength={BAR_WORDS_LENGTH}
        autoComplete="off"
      />
      <button type="submit" className="button">
        Write it
      </button>
      <button type="button" className="button button--quiet" onClick={() => goOnWriting(session)}>
        Leave it as it was
      </button>
    </form>
  );
}

/** Time between asking and the first click of the count-in, in milliseconds. */
const READY_MS = 400;

/** The rhythm of a bar is tapped, by any key or on the pad, after one bar of count-in. */
function Taps({ desk, number }: AskedProps) {
  const { session } = useAtWork();
  const { beats, beatMs, ticksPerMs } = barTime(desk);
  const [beat, setBeat] = useState<number | null>(null);
  const pad = useRef<HTMLButtonElement>(null);
  const taps = useRef<{ readonly down: number; up: number | null }[]>([]);
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
    const begin = (at: number) => {
      if (taps.current.at(-1)?.up !== null) taps.current.push({ down: at, up: null });
    };
    const end = (at: number) => {
      const last = taps.current.at(-1);
      if (last?.up === null) last.up = at;
    };
    const down = ({ timeStamp }: Event) => begin(timeStamp);
    const up = ({ timeStamp }: Event) => end(timeStamp);
    const takeAway = layPad({ down: begin, up: end });
    const onKey = (event: KeyboardEvent) => {
      event.preventDefault();
      event.stopPropagation();
      if (event.type === 'keyup') up(event);
      else if (event.key === 'Escape') goOnWriting(session);
      else if (!event.repeat) down(event);
    };
    const ticksOf = (time: number) => (time - opening - clicks.delay()) * ticksPerMs;
    const finish = () => {
      const now = performance.now();
      // A tap in the count-in is none, unless it is the first beat struck a little early.
      const struck = taps.current
        .filter((each) => each.down > opening - beatMs / 4)
        .map((each): Tap => ({ down: ticksOf(each.down), up: ticksOf(each.up ?? now) }));
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
      <button ref={pad} type="button" className="strip__pad">
        {beat !== null && beat >= beats
          ? `Tap ${barName(number)} now`
          : `Count-in; then tap ${barName(number)}`}
        <b>{counted}</b>
      </button>
      <p>Tap here or with any key, each note as long as it lasts. Escape leaves the bar as it was.</p>
      <button type="button" className="button button--quiet" onClick={() => goOnWriting(session)}>
        Leave it as it was
      </button>
    </div>
  );
}
