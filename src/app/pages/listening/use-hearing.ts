import { useCallback, useEffect, useRef, useState } from 'react';
import {
  type Deafness,
  type Expected,
  expectedOf,
  type HeardNote,
  type ListeningReport,
  offsetOf,
  reportOf,
} from '../../../core/listening';
import type { Ear, HeardLevel } from '../../../sound';
import { useAtWork } from '../at-work';
import { createRounds } from './rounds';

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
  readonly open: boolean;
  /** Why it does not listen, or null. */
  readonly fault: string | null;
  readonly level: HeardLevel | null;
  /** Of what was played last, or is being played; null before. */
  readonly report: ListeningReport | null;
  readonly playing: boolean;
  readonly start: () => Promise<void>;
  readonly stop: () => void;
  /** What was heard since a moment of the page's clock, in seconds. */
  readonly heardSince: (from: number) => readonly HeardNote[];
}

/** @param delay - seconds that what is played is heard after its moment; null where it was not measured */
export function useHearing(delay: number | null): Hearing {
  const { playback } = useAtWork();
  const ear = useRef<Ear | null>(null);
  const heard = useRef<HeardNote[]>([]);
  const deaf = useRef<readonly Deafness[]>([]);
  const [open, setOpen] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const [level, setLevel] = useState<HeardLevel | null>(null);
  const [report, setReport] = useState<ListeningReport | null>(null);
  const [playing, setPlaying] = useState(false);
  const known = useRef(delay);
  known.current = delay;

  const close = useCallback(() => {
    ear.current?.close();
    ear.current = null;
    setOpen(false);
    setLevel(null);
  }, []);
  useEffect(() => close, [close]);

  useEffect(() => {
    if (!open) return;
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
      if (expected.bars.length > 0) setReport(reportOf(expected, moved, deafness));
    };
    return playback.follow((position) => {
      const at = now();
      if (position === null) {
        setPlaying(false);
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
      rounds.follow(position, at);
      if (at * 1000 - looked < LOOK) return;
      looked = at * 1000;
      look(at - SETTLED - (known.current ?? UNKNOWN));
    });
  }, [open, playback]);

  const start = async () => {
    setFault(null);
    const { hearNotes } = await import('../../../sound');
    const opened = await hearNotes((news) => {
      deaf.current = news.deafness;
      setLevel(news.level);
      heard.current.push(...news.heard);
      const first = now() - KEPT;
      if ((heard.current[0]?.start ?? first) < first)
        heard.current = heard.current.filter((note) => note.start >= first);
    });
    if (!opened.ok) return setFault(opened.problem);
    ear.current = opened.value;
    setOpen(true);
  };
  const heardSince = useCallback((from: number) => heard.current.filter((note) => note.start >= from), []);
  return { open, fault, level, report, playing, start, stop: close, heardSince };
}
