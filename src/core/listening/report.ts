import { align, apartWithinOctave, IN_TUNE } from './align';
import { likely } from './likely';
import { paceOf } from './pace';
import type {
  BarReport,
  Deafness,
  Expected,
  ExpectedBar,
  ExpectedNote,
  ExpectedRest,
  ExtraReport,
  HeardNote,
  ListeningReport,
  NoteReport,
  NoteVerdict,
  RestReport,
} from './types';

/** Seconds by which a sound may reach into a rest, or a note come early at its end, and the rest is kept; ours. */
const REST_EDGE = 0.09;

/** A sound that goes on through more than this share of a rest fills it; ours. */
const REST_SHARE = 0.4;

/** Below this share of its length a note is short, and as much longer than itself it is long; ours. */
const HELD = { short: 0.55, long: 0.5, least: 0.1 } as const;

const isDeaf = (deafness: readonly Deafness[], from: number, to: number): boolean =>
  deafness.some((span) => span.from < to && span.to > from);

function verdictOf({ midi, dead }: ExpectedNote, heard: HeardNote): NoteVerdict {
  if (dead || heard.midi === null) return { kind: 'played' };
  // The ear may be an octave off, so an octave is no other pitch.
  if (apartWithinOctave(heard.midi, midi) <= IN_TUNE) return { kind: 'played' };
  return { kind: 'other pitch', halfSteps: Math.round(heard.midi - midi) };
}

function heldOf(note: ExpectedNote, heard: HeardNote): NoteReport['held'] {
  if (note.dead || heard.midi === null) return null;
  const [wanted, held] = [note.end - note.start, heard.end - heard.start];
  if (wanted - held > HELD.least && held < wanted * HELD.short) return 'short';
  return held - wanted > Math.max(HELD.least, wanted * HELD.long) ? 'long' : 'as written';
}

function played(note: ExpectedNote, heard: HeardNote): NoteReport {
  const late = heard.joined === true ? null : heard.start - note.start;
  return {
    note,
    verdict: verdictOf(note, heard),
    late,
    lateBeats: late === null ? null : late / note.beat,
    held: heldOf(note, heard),
  };
}

/** Nothing was heard in its place: it was left out, unless nothing could be heard there or it may be too soft. */
const missing = (note: ExpectedNote, deafness: readonly Deafness[]): NoteReport => ({
  note,
  verdict: {
    kind:
      note.soft || note.dead || isDeaf(deafness, note.start - 0.05, note.start + 0.1)
        ? 'not heard'
        : 'left out',
  },
  late: null,
  lateBeats: null,
  held: null,
});

/** @param extras - what was played beside the written notes; a written note that comes early fills no rest */
function restReport(
  rest: ExpectedRest,
  heard: readonly HeardNote[],
  extras: ReadonlySet<HeardNote>,
  deafness: readonly Deafness[],
): RestReport {
  const [from, to] = [rest.start + REST_EDGE, rest.end - REST_EDGE];
  const filled = heard.some((sound) => {
    if (extras.has(sound) && sound.start > from && sound.start < to) return true;
    const within = Math.min(sound.end, rest.end) - Math.max(sound.start, rest.start);
    const reaches = sound.start < from && sound.end > from;
    return reaches && within > REST_SHARE * (rest.end - rest.start);
  });
  if (filled) return { rest, verdict: 'filled' };
  return { rest, verdict: isDeaf(deafness, rest.start, rest.end) ? 'not heard' : 'kept' };
}

/** The bar in which something was heard, if only just before it; null outside all of them. */
const barAt = (bars: readonly ExpectedBar[], { start }: HeardNote): ExpectedBar | null =>
  bars.find((bar) => start >= bar.start && start < bar.end) ?? null;

/**
 * What was heard, held against what is written: note by note, rest by rest, bar by bar and round by round.
 * @param all - what was heard, by its start, the delay of the device taken off
 * @param deafness - where nothing could be heard; nothing is said to be left out there
 */
export function reportOf(
  { notes, rests, bars }: Expected,
  all: readonly HeardNote[],
  deafness: readonly Deafness[] = [],
): ListeningReport {
  const heard = likely(notes, all);
  const noteReports: NoteReport[] = [];
  const extras: ExtraReport[] = [];
  for (const pairing of align(notes, heard)) {
    const note = pairing.expected === null ? undefined : notes[pairing.expected];
    const sound = pairing.heard === null ? undefined : heard[pairing.heard];
    if (note !== undefined) noteReports.push(sound ? played(note, sound) : missing(note, deafness));
    else if (sound !== undefined) {
      const bar = barAt(bars, sound);
      const known = bar !== null && !isDeaf(deafness, sound.start, sound.start + 0.05);
      if (known) extras.push({ heard: sound, bar: bar.bar, round: bar.round });
    }
  }
  const extraSounds = new Set(extras.map((extra) => extra.heard));
  const restReports = rests.map((rest) => restReport(rest, heard, extraSounds, deafness));
  const barReports = bars.map((bar): BarReport => {
    const isHere = (of: { readonly start: number }) =>
      of.start >= bar.start - 0.02 && of.start < bar.end - 0.02;
    return {
      bar: bar.bar,
      round: bar.round,
      notes: noteReports.filter(({ note }) => note.bar === bar.bar && isHere(note)),
      extras: extras.filter((extra) => barAt(bars, extra.heard) === bar),
      rests: restReports.filter(({ rest }) => rest.bar === bar.bar && isHere(rest)),
    };
  });
  const rounds = [...new Set(bars.map(({ round }) => round))];
  return rounds.map((round) => {
    const own = noteReports.filter(({ note }) => note.round === round);
    return {
      round,
      tempo: bars.find((bar) => bar.round === round)?.tempo ?? 0,
      bars: barReports.filter((bar) => bar.round === round),
      ...paceOf(own),
    };
  });
}
