import { useEffect, useRef, useState } from 'react';
import { bpm, COMMON_TIME } from '../../../core/base';
import { secondsAt } from '../../../core/performance';
import { useAtWork } from '../at-work';
import { createRounds } from './rounds';
import type { Hearing } from './use-hearing';

/** Clicks a minute of the test, slow enough that the slowest headphones are not a beat late; and how many are heard out. */
const TEST = { tempo: 60, beats: 8, most: 0.7, least: -0.25, apart: 0.06 } as const;

const NAME = 'the test of the delay';

/** The middle one of the delays, where most of them agree; null where they do not. */
function delayOf(clicks: readonly number[], sounds: readonly number[]): number | null {
  const delays = clicks
    .flatMap((click) => {
      const sound = sounds.find((each) => each - click > TEST.least && each - click < TEST.most);
      return sound === undefined ? [] : [sound - click];
    })
    .sort((one, other) => one - other);
  const middle = delays[delays.length >> 1];
  if (middle === undefined || delays.length < clicks.length / 2) return null;
  const agree = delays.filter((delay) => Math.abs(delay - middle) <= TEST.apart);
  return agree.length < clicks.length / 2 ? null : middle;
}

interface DelayProps {
  readonly hearing: Hearing;
  /** Milliseconds; null where it was not measured with this input. */
  readonly delay: number | null;
  readonly onDelay: (milliseconds: number) => void;
}

/** Measures how late this device plays and hears together: by its own click, or by a student who claps with it. */
export function Delay({ hearing, delay, onDelay }: DelayProps) {
  const { playback } = useAtWork();
  const [said, setSaid] = useState('');
  const [testing, setTesting] = useState(false);
  const end = useRef(() => {});
  useEffect(() => () => end.current(), []);
  const measure = async () => {
    setTesting(true);
    setSaid('Listening to the click.');
    const rounds = createRounds();
    let timer = 0;
    let first: number | null = null;
    const unfollow = playback.follow((position) => {
      const now = performance.now() / 1000;
      if (position !== null) {
        rounds.follow(position, now);
        first ??= now;
        return;
      }
      if (first !== null) finish();
    });
    const finish = () => {
      end.current();
      const clicks = rounds
        .played()
        .flatMap(({ performance: played, origin }) =>
          played.events.map(({ start }) => origin + secondsAt(played, start)),
        )
        // The first ones may be heard while the sound still rises, the last one not to its end.
        .filter((click) => click > (first ?? 0) + 1.5 && click < performance.now() / 1000 - 1);
      const sounds = hearing.heardSince(first ?? 0).map(({ start }) => start);
      const measured = delayOf(clicks, sounds);
      if (measured !== null) onDelay(Math.round(measured * 1000));
      setSaid(
        measured === null
          ? 'The click was not heard clearly. Turn the sound up, hold an earpiece to the microphone, or clap with the click, and try again.'
          : `Measured: what you play is heard ${Math.round(measured * 1000)} ms after its moment. This is taken off.`,
      );
    };
    end.current = () => {
      end.current = () => {};
      window.clearTimeout(timer);
      unfollow();
      playback.stop();
      setTesting(false);
    };
    await playback.playAlone(NAME, ({ clickAlone }) =>
      clickAlone(bpm(TEST.tempo), COMMON_TIME, { beats: 'every beat', dropOut: null }),
    );
    timer = window.setTimeout(finish, (TEST.beats * 60_000) / TEST.tempo + 1500);
  };
  return (
    <div className="listening__delay">
      <p>
        {delay === null
          ? 'How late this device hears by this input is not measured yet, so nothing is said of early and late.'
          : `The delay of this device and this input: ${delay} ms.`}{' '}
        Let the click reach the microphone, from the loudspeaker or from an earpiece held to it, or clap with
        it.
      </p>
      <button type="button" className="button" disabled={testing} onClick={() => void measure()}>
        Measure the delay
      </button>
      <p role="status" aria-label="Delay of the device">
        {said}
      </p>
    </div>
  );
}
