import { createKit, renderRounds } from '../sound';
import { answerJobs } from '../workers';
import { writeTrack } from './files';
import { levelled } from './level';
import { TRACK_RATE } from './loudness';
import type { TrackAnswer, TrackJob } from './messages';

/** What of the work mixing and levelling are, about; the rest is encoding. */
const MIXED = 0.5;
const LEVELLED = 0.7;

const kit = createKit(TRACK_RATE);

async function made(job: TrackJob, onShare: (share: number) => void): Promise<TrackAnswer> {
  const { rounds, repeats, mix, coding, tags } = job;
  const mixed = renderRounds(rounds, mix, kit, { repeats, onShare: (share) => onShare(MIXED * share) });
  const sound = levelled(mixed, repeats);
  onShare(LEVELLED);
  const file = await writeTrack(sound, coding, tags, (share) => onShare(LEVELLED + (1 - LEVELLED) * share));
  return { ...file, seconds: sound.left.length / TRACK_RATE };
}

answerJobs(made, null, (answer) => (answer === null ? [] : [answer.bytes.buffer]));
