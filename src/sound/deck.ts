import type { Audio } from './audio';
import { levelOf, PAN } from './synthesis/mix';
import type { SegmentHead, SegmentRest } from './synthesis/segment';
import { STEMS, type Stem, type Stems } from './synthesis/stems';
import type { Channel, Gain as Gate, StemPlayer } from './tone';
import type { Mix } from './types';

/**
 * Whole samples are told to the browser by this much of a sample early. It rounds times up to whole samples, and a product
 * that is a hair too large would begin one sample late and leave a hole where two pieces meet.
 */
const HAIR = 1e-6;

/** Seconds in which a part is switched on or off, and in which a stop falls silent. */
const SWITCH = 0.02;
const STOP = 0.006;

/** Seconds after a cut in which the audio thread has surely come past it. */
const PAST_CUT = 0.2;

/** Decibels at which a part that is switched off stands: nothing that could be heard. */
const OFF = -120;

/** How loud a stem's channel is, in decibels. */
const decibelsOf = (mix: Mix, stem: Stem): number => Math.max(OFF, 20 * Math.log10(levelOf(mix, stem)));

/** A segment whose lead is loaded and ready to be started. */
export interface Cue {
  /** Plays it from a sample of the device's time on. */
  startAt(sample: number): void;
  /** Silences it from a sample of the device's time on; what was to sound later never does. */
  cutAt(sample: number): void;
  /**
   * Brings what comes after the lead, where its round is held whole. Where that is too late, it goes on with what would
   * sound by then.
   */
  complete(rest: SegmentRest): void;
  /**
   * Brings a piece of what comes after the lead, where that is made in pieces, or as much of it as is still to come.
   * @param from - samples after the segment's beginning
   */
  follow(piece: Stems, from: number): void;
  /** Whether nothing that is brought could be heard any more. */
  isOver(from: number): boolean;
  /** Gives it up, started or not. */
  drop(): void;
}

/** The way to the ear: a channel for each stem into one master. */
export interface Deck {
  setMix(mix: Mix): void;
  /** @param segment - what it begins with; `complete` or `follow` bring what comes after it */
  load(segment: SegmentHead): Cue;
  /**
   * The music rises from `level` (0 to 1) to full level in so many seconds, beginning at a sample of the device's time.
   * The count-in never fades: it is what the student comes in by.
   */
  fadeIn(level: number, seconds: number, sample: number): void;
  /** Falls silent at once and frees everything. */
  close(): void;
}

/**
 * All stems of a piece of a segment are the channels of one buffer with one player, split behind it: however
 * busy the page is, the parts cannot come apart.
 */
export function createDeck({ tone, context, output }: Audio, mix: Mix): Deck {
  const { sampleRate } = context;
  const secondsAt = (sample: number): number => (sample - HAIR) / sampleRate;
  const master = new tone.Gain({ context, gain: 1 });
  master.connect(output);
  const music = new tone.Gain({ context, gain: 1 });
  music.connect(master);
  const splitter = new tone.Split({ context, channels: STEMS.length });
  const openChannel = (stem: Stem, index: number): Channel => {
    const channel = new tone.Channel({ context, pan: PAN[stem], volume: decibelsOf(mix, stem) });
    splitter.connect(channel, index);
    channel.connect(stem === 'count-in' ? master : music);
    return channel;
  };
  const channels = new Map(STEMS.map((stem, index) => [stem, openChannel(stem, index)]));
  const players = new Set<StemPlayer>();
  const gates = new Set<Gate>();

  const free = (player: StemPlayer): void => {
    if (players.delete(player)) {
      player.dispose();
    }
  };

  const shut = (gate: Gate): void => {
    if (gates.delete(gate)) {
      gate.dispose();
    }
  };

  const ready = (stems: Stems, names: readonly Stem[], to: Gate): StemPlayer | null => {
    const { length } = stems.bass;
    if (length === 0) {
      return null;
    }
    const buffer = context.createBuffer(names.length, length, sampleRate);
    for (const [channel, name] of names.entries()) {
      buffer.getChannelData(channel).set(stems[name]);
    }
    const player = new tone.StemPlayer({ context, url: buffer });
    player.connect(to);
    players.add(player);
    return player;
  };

  /** All of a segment passes here, its stems side by side. */
  const openGate = (): Gate => {
    const gate = new tone.Gain({ context, gain: 1 });
    gate.channelCount = STEMS.length;
    gate.channelCountMode = 'explicit';
    gate.channelInterpretation = 'discrete';
    gate.connect(splitter);
    gates.add(gate);
    return gate;
  };

  const load = (segment: SegmentHead): Cue => {
    const { leadLength, roundLength, roundOffset, total } = segment;
    const gate = openGate();
    const all: StemPlayer[] = [];
    let started: number | null = null;
    let isWhole = false;
    let dropped = false;
    let cut = Number.POSITIVE_INFINITY;
    const take = (stems: Stems, names: readonly Stem[]): StemPlayer | null => {
      const player = ready(stems, names, gate);
      if (player === null) return null;
      all.push(player);
      player.onstop = () => {
        setTimeout(() => {
          free(player);
          if (isWhole && !all.some((other) => players.has(other))) {
            shut(gate);
          }
        }, 0);
      };
      return player;
    };
    const time = (player: StemPlayer | null, from: number, to: number | null, offset = 0): void => {
      player?.start(secondsAt(from), offset / sampleRate);
      if (to !== null) {
        player?.stop(secondsAt(to));
      }
    };
    const lead = take(segment.lead, STEMS);
    let round: StemPlayer | null = null;
    let after: StemPlayer | null = null;
    const timeRest = (sample: number): void => {
      const leadEnd = sample + leadLength;
      const end = total === null ? null : sample + total;
      const begin = Math.max(leadEnd, Math.ceil(context.currentTime * sampleRate));
      if (round !== null && (end === null || begin < end)) {
        round.loop = true;
        time(round, begin, end, (roundOffset + begin - leadEnd) % roundLength);
      }
      time(after, end ?? 0, null);
    };
    const complete = (rest: SegmentRest): void => {
      if (dropped) return;
      const parts = STEMS.filter((stem) => stem !== 'count-in');
      round = total === null || total > leadLength ? take(rest.round, parts) : null;
      after = rest.after === null ? null : take(rest.after, parts);
      isWhole = true;
      if (started !== null) timeRest(started);
    };
    const follow = (piece: Stems, from: number): void => {
      if (dropped || started === null) return;
      const begin = started + from;
      const late = Math.max(0, Math.ceil(context.currentTime * sampleRate) - begin);
      if (late >= piece.bass.length) return;
      time(
        take(
          piece,
          STEMS.filter((stem) => stem !== 'count-in'),
        ),
        begin + late,
        null,
        late,
      );
    };
    const drop = (): void => {
      dropped = true;
      for (const player of all) {
        free(player);
      }
      shut(gate);
    };
    return {
      startAt: (sample) => {
        started = sample;
        time(lead, sample, sample + leadLength);
        timeRest(sample);
      },
      complete,
      follow,
      isOver: (from) => dropped || (started !== null && started + from >= cut),
      drop,
      cutAt: (sample) => {
        cut = Math.min(cut, sample);
        // Not by stopping the players: a player that is told to stop while it sounds can lose the run of samples
        // that the audio thread was about to take, and is late from then on.
        gate.gain.setValueAtTime(0, secondsAt(sample));
        // By the device's time, behind which the page's own timers run ahead on a laden machine.
        context.setTimeout(drop, sample / sampleRate - context.currentTime + PAST_CUT);
      },
    };
  };

  return {
    load,
    setMix: (next) => {
      const now = context.currentTime;
      for (const [stem, channel] of channels) {
        channel.volume.cancelAndHoldAtTime(now);
        channel.volume.linearRampToValueAtTime(decibelsOf(next, stem), now + SWITCH);
      }
    },
    fadeIn: (level, seconds, sample) => {
      const begin = Math.max(context.currentTime, sample / sampleRate);
      music.gain.setValueAtTime(level, context.currentTime);
      music.gain.setValueAtTime(level, begin);
      music.gain.linearRampToValueAtTime(1, begin + seconds);
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
          for (const gate of [...gates]) {
            shut(gate);
          }
          splitter.dispose();
          for (const channel of channels.values()) {
            channel.dispose();
          }
          music.dispose();
          master.dispose();
        },
        STOP * 1000 + 50,
      );
    },
  };
}
