import { TICKS_PER_QUARTER } from '../../base';
import type { Remarks } from '../reading/remarks';
import type { Chosen } from '../reading/score-read';
import { beatsOf } from './beats';
import type { MidiEvent, MidiRead } from './read-file';

/** Fewer notes than this say nothing about a beat. */
const FEWEST = 16;
/** More are not listened to for it. */
const MOST = 4000;
/** Nor what is begun later than so many seconds after the first note: one stray note may stand hours behind the others. */
const LONGEST = 900;
/**
 * How much onsets must gather on the sixteenths or the triplets of a file, from 0 (anywhere) to 1 (all of them): a
 * player who is off by 40 ticks (20 ms at 120) still reaches 0.58 on sixteenths. Set by invented examples.
 */
const GATHERED = 0.4;

/** How much ticks gather at one place of a period: the mean resultant length of circular statistics (Mardia 1972). */
function gathering(ticks: readonly number[], period: number): number {
  let [x, y] = [0, 0];
  for (const tick of ticks) {
    const angle = (2 * Math.PI * tick) / period;
    x += Math.cos(angle);
    y += Math.sin(angle);
  }
  return Math.hypot(x, y) / Math.max(1, ticks.length);
}

/** Whether what is played has to do with the grid of its file. */
const isOnGrid = (starts: readonly number[]): boolean =>
  [TICKS_PER_QUARTER / 4, TICKS_PER_QUARTER / 3, TICKS_PER_QUARTER / 2, TICKS_PER_QUARTER].some(
    (period) => gathering(starts, period) >= GATHERED,
  );

/** A file on the beats that are read, and what can be chosen of them. */
interface Pulse {
  readonly file: MidiRead;
  /** Null where it was played to a click, or where there are too few notes to tell. */
  readonly choice: Chosen | null;
}

/** The tick of the file's grid on the beats that were found; evenly on before and behind them. */
function warpOf(beats: readonly number[]): (tick: number) => number {
  const step = (index: number): number => (beats[index + 1] ?? 0) - (beats[index] ?? 0);
  const last = beats.length - 1;
  return (tick) => {
    let [low, high] = [0, last - 1];
    while (low < high) {
      const half = Math.ceil((low + high) / 2);
      if ((beats[half] ?? 0) <= tick) low = half;
      else high = half - 1;
    }
    return Math.max(0, (low + (tick - (beats[low] ?? 0)) / step(low)) * TICKS_PER_QUARTER);
  };
}

/**
 * Tells whether a file was played to its own beats. Where it was not, that is said, and the beats of the playing are
 * offered; when they are asked for, everything in the file goes onto them.
 * @param asked - id of an earlier choice: `file` or `playing`
 */
export function pulseOf(file: MidiRead, asked: string | null, remarks: Remarks): Pulse {
  const events = file.tracks.flat();
  const starts = events
    .flatMap((event) => (event.kind === 'on' ? [event.at] : []))
    .sort((one, other) => one - other)
    .slice(0, MOST);
  const tempi = new Set(
    events.flatMap((event) => (event.kind === 'tempo' ? [Math.round(event.quarters)] : [])),
  );
  if (starts.length < FEWEST || tempi.size > 1 || isOnGrid(starts)) return { file, choice: null };
  const [tempo = 120] = tempi;
  const secondsATick = 60 / tempo / TICKS_PER_QUARTER;
  const first = starts[0] ?? 0;
  const heard = starts.map((tick) => (tick - first) * secondsATick).filter((seconds) => seconds <= LONGEST);
  if (heard.length < FEWEST) return { file, choice: null };
  const beats = beatsOf(heard).map((seconds) => first + seconds / secondsATick);
  if (beats.length < 4) return { file, choice: null };
  const steps = beats.slice(1).map((beat, index) => (beat - (beats[index] ?? 0)) * secondsATick);
  const usual = [...steps].sort((one, other) => one - other)[Math.floor(steps.length / 2)] ?? 0.5;
  const found = Math.round(60 / usual);
  const playing = asked === 'playing';
  remarks.say(
    playing
      ? `The beats are found from the playing, about ${found} a minute; the first note is taken for the beginning of a bar.`
      : `It was played without a click: its notes do not keep to the beats of the file, on whose grid it is read. By the playing there are about ${found} beats a minute; under Beats these can be chosen.`,
  );
  const choice: Chosen = {
    all: [
      { id: 'file', name: 'The grid of the file' },
      { id: 'playing', name: `Found from the playing, about ${found} a minute` },
    ],
    read: playing ? 'playing' : 'file',
  };
  return { file: playing ? onBeats(file, beats, found) : file, choice };
}

function onBeats(file: MidiRead, beats: readonly number[], quarters: number): MidiRead {
  const warp = warpOf(beats);
  const tempo: MidiEvent = { at: 0, kind: 'tempo', quarters };
  return {
    ...file,
    tracks: file.tracks.map((events, track) => [
      ...(track === 0 ? [tempo] : []),
      ...events.flatMap((event) => (event.kind === 'tempo' ? [] : [{ ...event, at: warp(event.at) }])),
    ]),
    end: null,
  };
}
