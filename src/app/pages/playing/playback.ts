import { createStore } from 'zustand/vanilla';
import { type Bpm, bpm } from '../../core/base';
import {
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  type PlayingSettings,
} from '../../core/lesson';
import { buildPerformance, type Performance } from '../../core/performance';
import type { Mix, Player, PlayPosition, PlayStep } from '../../sound';
import type { Session } from '../state';
import { lineAtHand } from './at-hand';

/** What is heard: a piece as the ledge says, or one idea in its place. */
export type Heard =
  | { readonly kind: 'piece'; readonly pieceId: string }
  | { readonly kind: 'idea'; readonly pieceId: string; readonly ideaId: string };

export interface PlaybackState {
  readonly kind: 'stopped' | 'preparing' | 'playing';
  /** A sentence when the last attempt failed. */
  readonly fault: string | null;
  readonly heard: Heard | null;
  /** Index of the written bar that sounds, or null. */
  readonly bar: number | null;
  /** Index of the written bar that what is heard begins with. */
  readonly first: number;
}

const SILENT: PlaybackState = { kind: 'stopped', fault: null, heard: null, bar: null, first: 0 };

/** The tempo in force, in whole beats a minute as the ledge shows it. */
export const practiceTempo = (piece: LinePiece): Bpm =>
  bpm(Math.max(1, Math.round((piece.tempo * piece.playing.tempoShare) / 100)));

/** The written numbers of a sheet's first and last bar; a pickup is bar 0. */
export function boundsOf({ bars }: LineSheet): { readonly least: number; readonly most: number } {
  const least = bars[0]?.written.number ?? 1;
  return { least, most: bars.at(-1)?.written.number ?? least };
}

/** The passage to play by the bars' written numbers, held within the chart; null plays everything. */
export function passageOf(piece: LinePiece, sheet: LineSheet): { first: number; last: number } | null {
  const { passage } = piece.playing;
  if (passage === null) return null;
  const { least, most } = boundsOf(sheet);
  const first = Math.max(passage.first, least);
  const last = Math.min(passage.last, most);
  return first > last || (first === least && last === most) ? null : { first, last };
}

/** Which parts the teacher wants to hear. */
export const mixOf = ({ bass, drums, chops, organ, click }: PlayingSettings): Mix => ({
  bass,
  drums,
  chops,
  organ,
  click,
});

const lineSheet = (lesson: Lesson, piece: LinePiece): LineSheet | null => {
  const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
  return sheet.kind === 'line' ? sheet : null;
};

function stepsOf(piece: LinePiece, sheet: LineSheet): readonly PlayStep[] {
  const { loop, countIn } = piece.playing;
  const performance = buildPerformance(sheet, {
    tempo: practiceTempo(piece),
    countIn,
    passage: passageOf(piece, sheet),
  });
  return [{ performance, rounds: loop ? 'endless' : 1 }];
}

/** Two lines that sound the same: nothing has to be rendered again for a change of title or notes. */
const soundsTheSame = (one: LinePiece, other: LinePiece): boolean =>
  one.bars === other.bars &&
  one.chartText === other.chartText &&
  one.metre === other.metre &&
  one.feel === other.feel &&
  one.key === other.key &&
  practiceTempo(one) === practiceTempo(other) &&
  one.playing.loop === other.playing.loop &&
  one.playing.passage === other.playing.passage;

const firstBarOf = (steps: readonly PlayStep[]): number => steps[0]?.performance.bars[0]?.bar ?? 0;

type Follower = (position: PlayPosition | null) => void;

/**
 * Joins the lesson to the player: what is asked for in the ledge is played, and goes on with every change of the
 * lesson while it sounds.
 */
export function createPlayback(session: Session) {
  const store = createStore<PlaybackState>(() => SILENT);
  const followers = new Set<Follower>();
  let loading: Promise<Player> | null = null;
  let player: Player | null = null;

  const importSound = async () => {
    try {
      return await import('../../sound');
    } catch (problem) {
      // The next attempt is to ask for it again.
      loading = null;
      throw problem;
    }
  };

  const load = (): Promise<Player> => {
    loading ??= importSound().then(({ createPlayer }) => {
      const created = createPlayer();
      player = created;
      created.subscribe((state) => {
        if (state.kind === 'stopped') {
          store.setState({ ...SILENT, fault: state.fault });
          for (const follow of followers) follow(null);
        } else {
          store.setState({ kind: state.kind });
          if (state.kind === 'playing') watch();
        }
      });
      return created;
    });
    return loading;
  };

  let watching = false;
  const watch = () => {
    if (watching) return;
    watching = true;
    const frame = () => {
      if (store.getState().kind !== 'playing') {
        watching = false;
        return;
      }
      const position = player?.position() ?? null;
      const bar = position?.bar ?? null;
      if (bar !== store.getState().bar) store.setState({ bar });
      for (const follow of followers) follow(position);
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  };

  const start = async (heard: Heard, steps: readonly PlayStep[], mix: Mix): Promise<void> => {
    player?.stop();
    store.setState({ kind: 'preparing', fault: null, heard, bar: null, first: firstBarOf(steps) });
    const overtaken = () => store.getState().heard !== heard;
    const fail = (fault: string) => {
      if (!overtaken()) store.setState({ ...SILENT, fault });
    };
    let ready: Player;
    try {
      ready = await load();
    } catch {
      fail('The sound could not be loaded. Check that the page is still reachable and press Play again.');
      return;
    }
    if (overtaken()) return;
    const result = await ready.play({ steps, mix });
    if (!result.ok) fail(result.problem);
  };

  /** Goes on with other steps; what sounds goes on as it is, with a sentence, when they cannot be had. */
  let changes = 0;
  const change = async (current: Player, steps: readonly PlayStep[]): Promise<void> => {
    changes += 1;
    const call = changes;
    const { heard } = store.getState();
    store.setState({ first: firstBarOf(steps) });
    const result = await current.change(steps);
    if (call !== changes || store.getState().heard !== heard) return;
    store.setState({ fault: result.ok ? null : result.problem });
  };

  const pieceOf = (pieceId: string): LinePiece | null => {
    const piece = session.lessons.getState().lesson.pieces.find((each) => each.id === pieceId);
    return piece?.kind === 'line' ? piece : null;
  };

  session.lessons.subscribe((now, before) => {
    const { kind, heard } = store.getState();
    if (kind === 'stopped' || heard?.kind !== 'piece' || player === null) return;
    const piece = pieceOf(heard.pieceId);
    const old = before.lesson.pieces.find((each) => each.id === heard.pieceId);
    const sheet = piece && lineSheet(now.lesson, piece);
    if (!piece || !sheet || sheet.bars.length === 0) {
      player.stop();
    } else if (piece !== old) {
      player.setMix(mixOf(piece.playing));
      if (old?.kind !== 'line' || !soundsTheSame(old, piece)) void change(player, stepsOf(piece, sheet));
    }
  });

  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe: store.subscribe,
    /** Fetches the sound's code ahead of the first *Play*; no sound device is opened. */
    warmUp: (): void => {
      // Where it fails, the first *Play* asks again and says so.
      import('../../sound').catch(() => undefined);
    },
    /** Plays the piece at hand as the ledge says. */
    async play(): Promise<void> {
      const { lesson } = session.lessons.getState();
      const piece = lineAtHand(lesson, session.editor.getState().pieceId);
      const sheet = piece && lineSheet(lesson, piece);
      if (!piece || !sheet || sheet.bars.length === 0) {
        store.setState({ ...SILENT, fault: 'There is nothing to play yet: write a chord chart first.' });
        return;
      }
      await start({ kind: 'piece', pieceId: piece.id }, stepsOf(piece, sheet), mixOf(piece.playing));
    },
    /** Plays one idea in its place: the bar before, the bar itself and the bar after, once, with everyone. */
    async hear(piece: LinePiece, sheet: LineSheet, bar: number, ideaId: string): Promise<void> {
      const { least, most } = boundsOf(sheet);
      const number = sheet.bars[bar]?.written.number ?? least;
      const performance: Performance = buildPerformance(sheet, {
        tempo: practiceTempo(piece),
        countIn: 0,
        passage: { first: Math.max(least, number - 1), last: Math.min(most, number + 1) },
      });
      const mix = { ...mixOf(piece.playing), bass: true };
      await start({ kind: 'idea', pieceId: piece.id, ideaId }, [{ performance, rounds: 1 }], mix);
    },
    stop(): void {
      store.setState(SILENT);
      player?.stop();
    },
    /** Calls `follower` every frame while something sounds, and once with null when it ends. */
    follow(follower: Follower): () => void {
      followers.add(follower);
      return () => followers.delete(follower);
    },
  };
}

export type Playback = ReturnType<typeof createPlayback>;
