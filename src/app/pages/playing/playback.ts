import { createStore } from 'zustand/vanilla';
import { type LinePiece, type LineSheet, lineAtHand, parsedChart } from '../../../core/lesson';
import type { Performance, PlayPlace, PlayStep } from '../../../core/performance';
import { boundsOf, climbs, mixOf, practiceTempo, soundsTheSame } from '../../../core/playing';
import type { Mix, Player } from '../../../sound';
import { createFollowing } from './following';
import { fetchPerformance, type PerformanceRoom } from './performance-room';
import type { PlaybackSource, StagesOf } from './playback-source';
import { type Heard, type PlaybackState, SILENT } from './playback-state';
import type { Readiness } from './ready';

const NOTHING_YET = 'There is nothing to play yet: write a chord chart first.';

/** Milliseconds of playing without a break after which a rest is proposed (common practice, no source). */
const LONG = 10 * 60 * 1000;

/** The sound follows a chart that is typed into when the typing has rested for this long, in milliseconds. */
const TYPING_REST = 250;

const openPlayer = async (): Promise<Player> => (await import('../../../sound')).createPlayer();

const firstBarOf = (steps: readonly PlayStep[]): number => steps[0]?.performance.bars[0]?.bar ?? 0;

const beginsCounted = (steps: readonly PlayStep[]): boolean => (steps[0]?.performance.countIn ?? 0) > 0;

interface Loaded {
  readonly player: Player;
  readonly room: PerformanceRoom;
  readonly readiness: Readiness;
}

/**
 * Joins the lesson to the player: what is asked for in the sentence is played, and goes on with every change of the
 * lesson while it sounds. It reads the lesson and changes nothing in it.
 * @param open - fetches the sound and makes a player of it; asked again after it has failed
 */
export function createPlayback(source: PlaybackSource, open: () => Promise<Player> = openPlayer) {
  const store = createStore<PlaybackState>(() => SILENT);
  const following = createFollowing(store, () => player?.position() ?? null);
  let loading: Promise<readonly [Player, PerformanceRoom]> | null = null;
  let player: Player | null = null;
  /** There as soon as the player is. */
  let room: PerformanceRoom | null = null;
  let resting: ReturnType<typeof setTimeout> | undefined;
  /** The piece that is heard, as it is played. */
  let played: LinePiece | null = null;

  let furtherDelay = 0;

  let readiness: Readiness | null = null;
  const makeReadySoon = (): void => readiness?.makeSoon();
  const unsubscribe = source.editor.subscribe(makeReadySoon);

  const hasFailed = (): boolean => ![null, NOTHING_YET].includes(store.getState().fault);

  const createReadinessBy = (made: PerformanceRoom): Readiness =>
    made.createReadiness(made, {
      wish: () => {
        const { lesson } = source.lessons.getState();
        const { paused } = store.getState();
        const piece = lineAtHand(lesson, paused?.pieceId ?? source.editor.getState().pieceId);
        return piece && { lesson, piece, bar: paused?.bar, place: paused?.place };
      },
      // What failed is tried again where somebody asks for it: until then nothing is asked of it ahead.
      player: () => (store.getState().kind === 'stopped' && !hasFailed() ? player : null),
    });

  const follow = (created: Player): void => {
    player = created;
    created.setFurtherDelay(furtherDelay);
    created.subscribe((state) => {
      clearTimeout(resting);
      if (state.kind === 'stopped') {
        const { paused } = store.getState();
        store.setState({ ...SILENT, paused, fault: state.fault });
        following.tell(null);
        makeReadySoon();
      } else {
        store.setState({ kind: state.kind });
        if (state.kind === 'playing') {
          resting = setTimeout(() => store.setState({ restDue: true }), LONG);
          following.watch();
        }
      }
    });
  };

  const load = async (): Promise<Loaded> => {
    loading ??= Promise.all([open(), fetchPerformance()]);
    try {
      const [created, performance] = await loading;
      room = performance;
      if (player === null) follow(created);
      readiness ??= createReadinessBy(performance);
      return { player: created, room: performance, readiness };
    } catch (problem) {
      // The next attempt is to ask for it again.
      loading = null;
      throw problem;
    }
  };

  const start = async (
    heard: Heard,
    stepsBy: (room: PerformanceRoom, readiness: Readiness) => readonly PlayStep[],
    mix: Mix,
  ): Promise<void> => {
    player?.stop();
    store.setState({ ...SILENT, kind: 'preparing', heard });
    const overtaken = () => store.getState().heard !== heard;
    const fail = (fault: string) => {
      if (!overtaken()) store.setState({ ...SILENT, fault });
    };
    let ready: Awaited<ReturnType<typeof load>>;
    try {
      ready = await load();
    } catch {
      fail('The sound could not be loaded. Check that the page is still reachable and load it again.');
      return;
    }
    if (overtaken()) return;
    const steps = stepsBy(ready.room, ready.readiness);
    store.setState({ counting: beginsCounted(steps), first: firstBarOf(steps) });
    const result = await ready.player.play({ steps, mix });
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

  /** A ladder goes on from the rung that is climbed. */
  const stepsFromHere = (
    { stepsOf }: PerformanceRoom,
    piece: LinePiece,
    sheet: LineSheet,
    old: LinePiece,
  ): readonly PlayStep[] => {
    const goesOn = climbs(piece.playing) && climbs(old.playing);
    const last = (piece.playing.ladder?.rungs.length ?? 1) - 1;
    const rung = goesOn ? Math.min(store.getState().step, last) : 0;
    return stepsOf(piece, sheet, { rung, round: 0, playedBar: 0 });
  };

  const pieceOf = (pieceId: string): LinePiece | null => {
    const piece = source.lessons.getState().lesson.pieces.find((each) => each.id === pieceId);
    return piece?.kind === 'line' ? piece : null;
  };

  /** Plays the piece that is heard as it is now. */
  const followLesson = (): void => {
    const { kind, heard } = store.getState();
    if (kind === 'stopped' || heard?.kind !== 'piece' || player === null || room === null) return;
    const old = played;
    const piece = pieceOf(heard.pieceId);
    const sheet = piece && room.lineSheet(source.lessons.getState().lesson, piece);
    played = piece;
    if (!piece || !sheet) {
      player.stop();
    } else if (old !== null && !soundsTheSame(old, piece)) {
      void change(player, stepsFromHere(room, piece, sheet, old));
    }
  };

  const playFrom = async (pieceId: string, bar?: number, place?: PlayPlace): Promise<void> => {
    const { lesson } = source.lessons.getState();
    const piece = lineAtHand(lesson, pieceId);
    if (!piece || parsedChart(piece).chart.bars.length === 0) {
      store.setState({ ...SILENT, fault: NOTHING_YET });
      return;
    }
    played = piece;
    await start(
      { kind: 'piece', pieceId: piece.id },
      (_, { stepsFor }) => stepsFor({ lesson, piece, bar, place }),
      mixOf(piece.playing),
    );
  };

  /** What gives the stages that are heard, as the lesson is now. */
  let stagesOf: StagesOf = () => [];

  const roundsOf = ({ buildUp }: LinePiece): number => buildUp?.rounds ?? 1;

  /** The stages go on from the one that is heard, as the ledge says now; where they are not the same ones, they end. */
  const followStages = (): void => {
    const { kind, heard, step, round } = store.getState();
    if (kind === 'stopped' || heard?.kind !== 'stages' || player === null || room === null) return;
    const old = played;
    const piece = pieceOf(heard.pieceId);
    played = piece;
    const lines = piece === null ? [] : stagesOf(piece);
    if (
      piece === null ||
      lines.map(({ sheet }) => sheet.id).join() !== heard.stages.map((each) => each.sheetId).join()
    ) {
      store.setState(SILENT);
      player.stop();
      return;
    }
    player.setMix(mixOf(piece.playing));
    if (old !== null && soundsTheSame(old, piece) && roundsOf(old) === roundsOf(piece)) return;
    const place = { rung: step, round: Math.min(round, roundsOf(piece) - 1), playedBar: 0 };
    void change(player, room.stepsInTurn(lines, roundsOf(piece), place));
  };

  let goingOn: ReturnType<typeof setTimeout> | undefined;
  source.lessons.subscribe((_, before) => {
    const { kind, heard } = store.getState();
    makeReadySoon();
    if (heard?.kind === 'stages') {
      if (pieceOf(heard.pieceId) !== played) followStages();
      return;
    }
    if (kind === 'stopped' || heard?.kind !== 'piece' || player === null) return;
    const piece = pieceOf(heard.pieceId);
    const old = before.lesson.pieces.find((each) => each.id === heard.pieceId);
    if (piece === old) return;
    clearTimeout(goingOn);
    if (piece !== null) player.setMix(mixOf(piece.playing));
    const isTyped = piece !== null && old?.kind === 'line' && old.chartText !== piece.chartText;
    if (isTyped) goingOn = setTimeout(followLesson, TYPING_REST);
    else followLesson();
  });

  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe: store.subscribe,
    /** Makes the first *Play* quick; no sound device is opened. */
    warmUp: (): void => {
      if (hasFailed()) return;
      // Where it fails, the first *Play* asks again and says so.
      load().then(
        ({ readiness }) => readiness.make(),
        () => undefined,
      );
    },
    /**
     * Plays the piece at hand as the ledge says.
     * @param bar index of the written bar to begin with; the beginning when left out
     */
    async play(bar?: number): Promise<void> {
      await playFrom(source.editor.getState().pieceId, bar);
    },
    /** Plays what belongs to no piece, the click or a tone, until it is stopped. */
    async playAlone(name: string, made: (room: PerformanceRoom) => Performance): Promise<void> {
      await start(
        { kind: 'alone', pieceId: '', name },
        (ready) => [{ performance: made(ready), rounds: 'endless' }],
        { bass: true, drums: false, chops: false, organ: false, click: true },
      );
    },
    /** Falls silent, and remembers the bar; what belongs to no piece is only stopped. */
    pause(): void {
      const { kind, heard, first } = store.getState();
      if (kind === 'stopped') return;
      if (heard?.kind !== 'piece') {
        store.setState(SILENT);
        player?.stop();
        return;
      }
      const position = player?.position() ?? null;
      const place = position?.place ?? { rung: 0, round: 0, playedBar: 0 };
      store.setState({ paused: { pieceId: heard.pieceId, bar: position?.bar ?? first, place } });
      player?.stop();
      store.setState({ kind: 'stopped', heard: null });
    },
    /** Has the next going on begin on a rung of a piece's ladder, as after a pause. */
    waitOnRung(pieceId: string, rung: number): void {
      if (store.getState().kind !== 'stopped') return;
      store.setState({ paused: { pieceId, bar: 0, place: { rung, round: 0, playedBar: 0 } } });
    },
    /** Goes on with the bar at which it was paused, counted in as the ledge says; from the beginning where nothing is paused. */
    async goOn(): Promise<void> {
      const { paused } = store.getState();
      if (paused === null) await playFrom(source.editor.getState().pieceId);
      else await playFrom(paused.pieceId, paused.bar, paused.place);
    },
    /** Plays one idea in its place: the bar before, the bar itself and the bar after, once, with everyone. */
    async hear(piece: LinePiece, sheet: LineSheet, bar: number, ideaId: string): Promise<void> {
      const { least, most } = boundsOf(sheet);
      const number = sheet.bars[bar]?.written.number ?? least;
      const passage = { first: Math.max(least, number - 1), last: Math.min(most, number + 1) };
      const mix = { ...mixOf(piece.playing), bass: true };
      await start(
        { kind: 'idea', pieceId: piece.id, ideaId },
        ({ buildPerformance }) => {
          const performance = buildPerformance(sheet, { tempo: practiceTempo(piece), countIn: 0, passage });
          return [{ performance, rounds: 1 }];
        },
        mix,
      );
    },
    /**
     * Plays the stages of a line's build-up one after the other, each as often as the build-up says, with everything
     * else as the ledge says.
     * @param made - gives the stages that are played; asked again when the line changes meanwhile
     */
    async playStages(piece: LinePiece, made: StagesOf): Promise<void> {
      const lines = made(piece);
      if (lines.length === 0) return;
      played = piece;
      stagesOf = made;
      const stages = lines.map(({ sheet, name }) => ({ sheetId: sheet.id, name }));
      await start(
        { kind: 'stages', pieceId: piece.id, stages },
        ({ stepsInTurn }) => stepsInTurn(lines, roundsOf(piece)),
        mixOf(piece.playing),
      );
    },
    /** Seconds that the sound is heard later than the browser knows: what is shown follows what is heard. */
    setFurtherDelay(seconds: number): void {
      furtherDelay = seconds;
      player?.setFurtherDelay(seconds);
    },
    stop(): void {
      store.setState(SILENT);
      player?.stop();
    },
    /** Silence for good: gives the sound device back. */
    end(): void {
      store.setState(SILENT);
      following.end();
      readiness?.end();
      unsubscribe();
      player?.dispose();
      player = null;
    },
    follow: following.follow,
    /** All that sounds, as a stream; null before anything did. */
    output: (): MediaStream | null => player?.output() ?? null,
  };
}

export type Playback = ReturnType<typeof createPlayback>;
