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

/** A segment's players, to be cut short where another segment takes over. */
export interface Cue {
  /** Ends the cue at a sample of the device's time; what was to sound later never does. */
  cutAt(sample: number): void;
}

/** One session of playing: a channel for each stem into one master. */
export interface Deck {
  setMix(mix: Mix): void;
  /** Plays the segment from a sample of the device's time on. */
  cue(segment: Segment, start: number): Cue;
  /** Falls silent at once and frees everything. */
  close(): void;
}

const isSilent = (samples: Float32Array): boolean => samples.every((sample) => sample === 0);

export interface Fade {
  /** Level from which the sound rises, 0 to 1. */
  readonly from: number;
  readonly seconds: number;
}

export function createDeck({ tone, context }: Audio, mix: Mix, fade: Fade): Deck {
  const { sampleRate } = context;
  const master = new tone.Gain({ context, gain: 0 });
  master.connect(context.destination);
  master.gain.setValueAtTime(fade.from, context.currentTime);
  master.gain.linearRampToValueAtTime(1, context.currentTime + fade.seconds);

  const openChannel = (stem: Stem): Channel => {
    const channel = new tone.Channel({ context, pan: PAN[stem], volume: isHeard(mix, stem) ? 0 : OFF });
    channel.connect(master);
    return channel;
  };
  const channels = new Map(STEMS.map((stem) => [stem, openChannel(stem)]));
  const players = new Set<StemPlayer>();

  const load = (stem: Stem, samples: Float32Array<ArrayBufferLike>): StemPlayer | null => {
    const channel = channels.get(stem);
    if (channel === undefined || samples.length === 0 || isSilent(samples)) {
      return null;
    }
    const buffer = context.createBuffer(1, samples.length, sampleRate);
    buffer.getChannelData(0).set(samples);
    const player = new tone.StemPlayer({ context, url: buffer });
    player.connect(channel);
    players.add(player);
    return player;
  };

  const free = (player: StemPlayer): void => {
    players.delete(player);
    player.dispose();
  };

  /** Plays every stem of the samples from `start` on; `loop` gives the place in the round to begin at. */
  const startAll = (
    stems: Stems,
    start: number,
    loop: number | null,
    end: number | null,
  ): readonly StemPlayer[] =>
    STEMS.flatMap((stem) => {
      const player = load(stem, stems[stem]);
      if (player === null) {
        return [];
      }
      player.onstop = () => {
        setTimeout(() => free(player), 0);
      };
      if (loop !== null) {
        player.loop = true;
      }
      player.start(start / sampleRate, (loop ?? 0) / sampleRate);
      if (end !== null) {
        player.stop(end / sampleRate);
      }
      return [player];
    });

  return {
    setMix: (next) => {
      for (const [stem, channel] of channels) {
        const now = context.currentTime;
        channel.volume.cancelAndHoldAtTime(now);
        channel.volume.linearRampToValueAtTime(isHeard(next, stem) ? 0 : OFF, now + SWITCH);
      }
    },
    cue: (segment, start) => {
      const leadEnd = start + segment.leadLength;
      const end = segment.total === null ? null : start + segment.total;
      const lead = startAll(segment.lead, start, null, leadEnd);
      const round =
        segment.roundLength > 0 && (end === null || end > leadEnd)
          ? startAll(segment.round, leadEnd, segment.roundOffset, end)
          : [];
      const after = segment.after === null || end === null ? [] : startAll(segment.after, end, null, null);
      return {
        cutAt: (sample) => {
          const cut = (started: readonly StemPlayer[], from: number, to: number | null): void => {
            for (const player of started) {
              if (!players.has(player) || (to !== null && to <= sample)) {
                continue;
              }
              if (from >= sample) {
                free(player);
              } else {
                player.stop(sample / sampleRate);
              }
            }
          };
          cut(lead, start, leadEnd);
          cut(round, leadEnd, end);
          if (end !== null) {
            cut(after, end, null);
          }
        },
      };
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
