import type { Audio } from './audio';
import { isHeard, PAN } from './synthesis/mix';
import { STEMS, type Stem, type Stems } from './synthesis/score';
import type { Segment } from './synthesis/segment';
import type { Channel, StemPlayer } from './tone';
import type { Mix } from './types';

/** Seconds in which a part is switched on or off, and in which a stop falls silent. */
const SWITCH = 0.02;
const STOP = 0.006;

/** Decibels at which a part that is switched off stands: nothing that could be heard. */
const OFF = -120;

/** A segment loaded and ready to be started. */
export interface Cue {
  /** Plays it from a sample of the device's time on. */
  startAt(sample: number): void;
  /** Ends it at a sample of the device's time; what was to sound later never does. */
  cutAt(sample: number): void;
  /** Gives it up, started or not. */
  drop(): void;
}

/** The way to the ear: a channel for each stem into one master. */
export interface Deck {
  setMix(mix: Mix): void;
  load(segment: Segment): Cue;
  /** Rises from `level` (0 to 1) to full level in so many seconds from now. */
  fadeIn(level: number, seconds: number): void;
  /** Falls silent at once and frees everything. */
  close(): void;
}

/** A player with the time it was told to play, in samples of the device. */
interface Timed {
  readonly player: StemPlayer;
  readonly from: number;
  readonly to: number | null;
}

/**
 * All stems of a piece of a segment are the channels of one buffer with one player, split behind it: however
 * busy the page is, the parts cannot come apart.
 */
export function createDeck({ tone, context }: Audio, mix: Mix): Deck {
  const { sampleRate } = context;
  const master = new tone.Gain({ context, gain: 1 });
  master.connect(context.destination);
  const splitter = new tone.Split({ context, channels: STEMS.length });
  const openChannel = (stem: Stem, index: number): Channel => {
    const channel = new tone.Channel({ context, pan: PAN[stem], volume: isHeard(mix, stem) ? 0 : OFF });
    splitter.connect(channel, index);
    channel.connect(master);
    return channel;
  };
  const channels = new Map(STEMS.map((stem, index) => [stem, openChannel(stem, index)]));
  const players = new Set<StemPlayer>();

  const free = (player: StemPlayer): void => {
    players.delete(player);
    player.dispose();
  };

  const ready = (stems: Stems, names: readonly Stem[]): StemPlayer | null => {
    const { length } = stems.bass;
    if (length === 0) {
      return null;
    }
    const buffer = context.createBuffer(names.length, length, sampleRate);
    for (const [channel, name] of names.entries()) {
      buffer.getChannelData(channel).set(stems[name]);
    }
    const player = new tone.StemPlayer({ context, url: buffer });
    player.connect(splitter);
    player.onstop = () => {
      setTimeout(() => free(player), 0);
    };
    players.add(player);
    return player;
  };

  const load = (segment: Segment): Cue => {
    const parts = STEMS.filter((stem) => stem !== 'count-in');
    const goesRound = segment.total === null || segment.total > segment.leadLength;
    const lead = ready(segment.lead, STEMS);
    const round = goesRound ? ready(segment.round, parts) : null;
    const after = segment.after === null ? null : ready(segment.after, parts);
    let timed: readonly Timed[] = [];
    const time = (player: StemPlayer | null, from: number, to: number | null, offset = 0): Timed[] => {
      if (player === null) {
        return [];
      }
      player.start(from / sampleRate, offset / sampleRate);
      if (to !== null) {
        player.stop(to / sampleRate);
      }
      return [{ player, from, to }];
    };
    return {
      startAt: (sample) => {
        const leadEnd = sample + segment.leadLength;
        const end = segment.total === null ? null : sample + segment.total;
        if (round !== null) {
          round.loop = true;
        }
        timed = [
          ...time(lead, sample, leadEnd),
          ...time(round, leadEnd, end, segment.roundOffset),
          ...time(after, end ?? 0, null),
        ];
      },
      drop: () => {
        for (const player of [lead, round, after]) {
          if (player !== null) {
            free(player);
          }
        }
      },
      cutAt: (sample) => {
        for (const { player, from, to } of timed) {
          if (!players.has(player) || (to !== null && to <= sample)) {
            continue;
          }
          if (from >= sample) {
            free(player);
          } else {
            player.stop(sample / sampleRate);
          }
        }
      },
    };
  };

  return {
    load,
    setMix: (next) => {
      const now = context.currentTime;
      for (const [stem, channel] of channels) {
        channel.volume.cancelAndHoldAtTime(now);
        channel.volume.linearRampToValueAtTime(isHeard(next, stem) ? 0 : OFF, now + SWITCH);
      }
    },
    fadeIn: (level, seconds) => {
      const now = context.currentTime;
      master.gain.setValueAtTime(level, now);
      master.gain.linearRampToValueAtTime(1, now + seconds);
    },
    close: () => {
      const now = context.currentTime;
      master.gain.cancelAndHoldAtTime(now);
      master.gain.linearRampToValueAtTime(0, now + STOP);
      setTimeout(
        () => {
          for (const player of [...players]) {
            free(player);
          }
          splitter.dispose();
          for (const channel of channels.values()) {
            channel.dispose();
          }
          master.dispose();
        },
        STOP * 1000 + 50,
      );
    },
  };
}
