import { useCallback, useEffect, useRef, useState } from 'react';
import {
  type Deafness,
  type Expected,
  expectedOf,
  type HeardNote,
  type LevelCheck,
  type ListeningReport,
  offsetOf,
  reportOf,
} from '../../../core/listening';
import type { HeardLevel, OpenEar } from '../../../sound';
import { useAtWork } from '../at-work';
import { createRounds } from './rounds';
import { useCheck } from './use-check';
import { useRecording } from './use-recording';

/** Notes are kept for so many seconds at most: longer than anybody plays without a break. */
const KEPT = 1800;

/** A bar is told of when it has been over for so many seconds: its last note has ended and was looked at by then. */
const SETTLED = 0.7;

/** Seconds that a device of which nothing was measured may be late. */
const UNKNOWN = 0.4;

/** Milliseconds between two looks at what was heard, while it plays. */
const LOOK = 400;

const now = (): number => performance.now() / 1000;

/** What is asked for until a moment, the bars that were not over by then left out. */
function endedBy({ notes, rests, bars }: Expected, until: number): Expected {
  const over = bars.filter(({ end }) => end <= until);
  const end = over.at(-1)?.end ?? Number.NEGATIVE_INFINITY;
  // Swung and laid-back notes begin a hair's breadth before or after their bar.
  const isOver = ({ start }: { readonly start: number }) => start < end - 0.02;
  return { bars: over, notes: notes.filter(isOver), rests: rests.filter(isOver) };
}

/** What the ear hears, held against the rounds that are played. */
export interface Hearing {
  /** Null while nothing is listened to. */
  readonly open: Pick<OpenEar, 'input' | 'inputs' | 'forSpeech'> | null;
  /** Why it does not listen, or null. */
  readonly fault: string | null;
  readonly level: HeardLevel | null;
  /** Of what was played last, or is being played; null before. */
  readonly report: ListeningReport | null;
  /** The delay of its input was measured when it was made, so that it can tell early from late. */
  readonly timed: boolean;
  /** The input that is listened to, or was last, by its own id; '' where the browser does not tell. */
  readonly device: string;
  /** Milliseconds that it hears late; null where that was not measured. */
  readonly delay: number | null;
  readonly playing: boolean;
  /** How far what is left of the loudspeaker is below what is heard, in decibels; 0 where nothing of it is known. */
  readonly below: number;
  /** What the check of the level found; null where it was left. */
  readonly check: LevelCheck | null;
  /** The recording of what was played last, made only where it is asked for. */
  readonly recording: Pick<ReturnType<typeof useRecording>, 'asked' | 'ask' | 'recorded'>;
  readonly beginCheck: () => void;
  readonly leaveCheck: () => void;
  /** @param input - the id of one of the inputs; the browser's own choice where it is left out */
  readonly start: (input?: string) => Promise<void>;
  readonly stop: () => void;
  /** What was heard since a moment of the page's clock, in seconds. */
  readonly heardSince: (from: number) => readonly HeardNote[];
}

/**
 * @param delayOf - milliseconds that what is played is heard after its moment, by the id of the input; null where it was
 * not measured
 * @param aloud - a loudspeaker plays the rhythm section: it is taken out of what is heard
 */
export function useHearing(delayOf: (input: string) => number | null, aloud: boolean): Hearing {
  const { playback } = useAtWork();
  const ear = useRef<OpenEar | null>(null);
  const heard = useRef<HeardNote[]>([]);
  const deaf = useRef<readonly Deafness[]>([]);
  const [open, setOpen] = useState<Hearing['open']>(null);
  const { check, begin: beginCheck, leave: leaveCheck, take: takeCheck } = useCheck();
  const recording = useRecording();
  const { begin: beginRecording, end: endRecording } = recording;
  /** Counts what opens and closes, so that an input that is given late is not listened to. */
  const calls = useRef(0);
  const [fault, setFault] = useState<string | null>(null);
  const [level, setLevel] = useState<HeardLevel | null>(null);
  const [report, setReport] = useState<ListeningReport | null>(null);
  const [playing, setPlaying] = useState(false);
  const [below, setBelow] = useState(0);
  const [device, setDevice] = useState('');
  const [timed, setTimed] = useState(false);
  const delay = delayOf(device);
  const known = useRef<number | null>(null);
  known.current = delay === null ? null : delay / 1000;

  const shut = useCallback(() => {
    calls.current += 1;
    ear.current?.close();
    ear.current = null;
    setLevel(null);
    leaveCheck();
    void endRecording();
  }, [leaveCheck, endRecording]);
  const close = useCallback(() => {
    shut();
    setOpen(null);
  }, [shut]);
  useEffect(() => close, [close]);

  useEffect(() => {
    if (open === null) return;
    if (!aloud) return ear.current?.takeOff(null);
    const follow = () => ear.current?.takeOff(playback.output());
    follow();
    return playback.follow(follow);
  }, [open, aloud, playback]);

  useEffect(() => {
    if (open === null) return;
    const rounds = createRounds();
    let looked = 0;
    const look = (until: number) => {
      const played = rounds.played();
      const expected = endedBy(expectedOf(played), until);
      const from = (played[0]?.origin ?? until) - 1;
      const sounds = heard.current.filter(({ start }) => start >= from && start < until + 1);
      const late = known.current ?? offsetOf(expected.notes, sounds);
      const moved = sounds.map(({ start, end, ...note }) => ({
        ...note,
        start: start - late,
        end: end - late,
      }));
      const deafness = deaf.current.map((span) => ({ from: span.from - late, to: span.to - late }));
      if (expected.bars.length === 0) return;
      setReport(reportOf(expected, moved, deafness));
      setTimed(known.current !== null);
    };
    return playback.follow((position) => {
      const at = now();
      if (position === null) {
        setPlaying(false);
        void endRecording();
        // What was played to the end is told of when its last sound was looked at.
        if (rounds.played().length === 0) return;
        window.setTimeout(() => {
          look(at);
          rounds.forget();
        }, SETTLED * 1000);
        return;
      }
      if (playback.getState().heard?.kind !== 'piece') return;
      setPlaying(true);
      beginRecording(ear.current);
      leaveCheck();
      rounds.follow(position, at);
      if (at * 1000 - looked < LOOK) return;
      looked = at * 1000;
      look(at - SETTLED - (known.current ?? UNKNOWN));
    });
  }, [open, playback, leaveCheck, beginRecording, endRecording]);

  const start = async (input?: string) => {
    // Where another input is chosen, what it was chosen in stays until that one is open, and keeps the focus.
    shut();
    setFault(null);
    const call = calls.current;
    const { hearNotes } = await import('../../../sound');
    const opened = await hearNotes({
      input,
      onNews: (news) => {
        if (call !== calls.current) return;
        deaf.current = news.deafness;
        setLevel(news.level);
        setBelow(Math.round(news.below));
        takeCheck(news.level);
        heard.current.push(...news.heard);
        const first = now() - KEPT;
        if ((heard.current[0]?.start ?? first) < first)
          heard.current = heard.current.filter((note) => note.start >= first);
      },
      onFault: (problem) => {
        if (call !== calls.current) return;
        close();
        setFault(problem);
      },
    });
    // Who has folded it away meanwhile is not listened to.
    if (call !== calls.current) {
      if (opened.ok) opened.value.close();
      return;
    }
    if (!opened.ok) {
      setOpen(null);
      return setFault(opened.problem);
    }
    ear.current = opened.value;
    setDevice(opened.value.device);
    beginCheck();
    setOpen(opened.value);
  };
  const heardSince = useCallback((from: number) => heard.current.filter((note) => note.start >= from), []);
  return {
    ...{
      open,
      fault,
      level,
      report,
      timed,
      device,
      delay,
      playing,
      below,
      check,
      recording,
      beginCheck,
      leaveCheck,
    },
    ...{ start, stop: close, heardSince },
  };
}
