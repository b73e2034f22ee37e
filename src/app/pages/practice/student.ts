import { useCallback, useEffect, useRef, useState } from 'react';
import { barRange } from '../../../core/base';
import { deriveSheet, type LinePiece, type LineSheet, toldTempo } from '../../../core/lesson';
import { climbs, passageOf } from '../../../core/playing';
import {
  addEntry,
  closed,
  hear,
  type LastPractice,
  loadAfter,
  type Moment,
  NO_LOAD,
  type PracticeRecord,
  remember,
  restStanding,
  type Stretch,
  withHearingDelay,
} from '../../../core/practising';
import type { PlayPosition } from '../../../sound';
import type { StudentStore } from '../../student-store';
import type { PracticeDesk } from './desk';

const now = (): number => performance.now() / 1000;

/** The day where the student is, as `2026-11-28`. */
function today(): string {
  const date = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

interface Playing {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly stretch: Stretch;
}

function momentOf(
  { performance: played, playedBar, bar, tick, place }: PlayPosition,
  playing: Omit<Playing, 'stretch'>,
): Moment {
  const { sheet, piece } = playing;
  const written = bar === null ? undefined : sheet.bars[bar];
  const sounding = written?.notes.reduce((sum, { note }) => sum + note.duration, 0) ?? 0;
  const length = playedBar === null ? 0 : (played.bars[playedBar]?.duration ?? 0);
  return {
    at: now(),
    rung: place.rung,
    round: place.round,
    playedBar: playedBar === null ? null : place.playedBar,
    notes: written?.notes.length ?? 0,
    breathes: length - sounding >= played.beat,
    tempo: Math.round(toldTempo(piece, played.tempo)),
    ending: tick >= played.end - played.beat,
  };
}

const lastOf = (lessonId: string, { id, playing }: LinePiece, rung: number): LastPractice => {
  const { bass, drums, chops, organ, click, loop, passage, tempoShare } = playing;
  return {
    ...{ lessonId, pieceId: id, day: today(), bass, drums, chops, organ, click, loop, passage, tempoShare },
    rung: climbs(playing) ? rung : null,
  };
};

/** What the page remembers of its student; null where it remembers nothing, as for a teacher who looks at it. */
export function useStudent(desk: PracticeDesk, store: StudentStore | null) {
  const [record, setRecord] = useState<PracticeRecord | null>(() => store?.read() ?? null);
  const [kept, setKept] = useState(true);
  const [rest, setRest] = useState<string | null>(null);
  const load = useRef(NO_LOAD);
  const change = useCallback(
    (edit: (record: PracticeRecord) => PracticeRecord) => {
      if (store === null) return;
      // Another window may have written meanwhile.
      const next = edit(store.read());
      setKept(store.write(next));
      setRecord(next);
    },
    [store],
  );
  const { session, playback } = desk;

  useEffect(() => {
    let playing: Playing | null = null;
    const begin = (): Omit<Playing, 'stretch'> | null => {
      const { heard } = playback.getState();
      const { lesson } = session.lessons.getState();
      const piece = lesson.pieces.find(({ id }) => id === heard?.pieceId);
      const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
      return piece?.kind === 'line' && sheet?.kind === 'line' ? { piece, sheet } : null;
    };
    const end = () => {
      if (playing === null) return;
      const { piece, sheet } = playing;
      const stretch = closed(playing.stretch);
      playing = null;
      load.current = loadAfter(load.current, stretch);
      const { lesson } = session.lessons.getState();
      const passage = passageOf(piece, sheet);
      change((before) =>
        addEntry(remember(before, lastOf(lesson.id, piece, stretch.last.rung)), {
          day: today(),
          lesson: lesson.title,
          piece: piece.name,
          bars: passage === null ? 'all bars' : barRange(passage.first, passage.last),
          seconds: Math.round(stretch.last.at - stretch.began),
          rounds: stretch.rounds,
          tempo: stretch.tempo,
        }),
      );
    };
    const stop = playback.follow((position) => {
      if (position === null) {
        end();
        return;
      }
      const now = begin();
      // Another passage or tempo is another line of the diary.
      if (now !== null && playing !== null && now.piece.playing !== playing.piece.playing) end();
      const place = playing ?? now;
      if (place === null) return;
      const stretch = hear(playing?.stretch ?? null, momentOf(position, place));
      playing = { piece: place.piece, sheet: place.sheet, stretch };
      const done = loadAfter(load.current, stretch);
      setRest((before) => restStanding(before, done));
    });
    // A page that is closed, or put away for good, has been played till then.
    window.addEventListener('pagehide', end);
    return () => {
      window.removeEventListener('pagehide', end);
      end();
      stop();
    };
  }, [session, playback, change]);

  useEffect(() => playback.setFurtherDelay((record?.delay ?? 0) / 1000), [playback, record?.delay]);

  return {
    record,
    kept,
    rest,
    setDelay: (delay: number) => change((before) => ({ ...before, delay })),
    setHearing: (input: string, delay: number) => change((before) => withHearingDelay(before, input, delay)),
    clear: () => {
      store?.clear();
      setRecord(store?.read() ?? null);
      setRest(null);
    },
  };
}

export type Student = ReturnType<typeof useStudent>;
