import {
  isLink,
  type LineNote,
  type MidiNumber,
  marksOf,
  midiOf,
  SIGNS,
  type Sign,
  type SignSound,
  signOf,
  ticks,
} from '../base';
import type { SheetBar } from '../lesson';
import { strengthsOf } from './dynamics';
import type { PlannedBar } from './plan';
import { swungTogether } from './swing';
import type { Attack, Glide, PitchedEvent } from './types';

/** A downbeat is a little stronger; common practice, no source. */
const DOWNBEAT = 98 / 92;

/** A note that is not plucked is softer, by what it comes from; common practice, no source. */
const UNPLUCKED: Readonly<Record<Attack, number>> = { hammered: 0.85, joined: 0.9 };

/** A glide takes at most half its note, and no longer than this in ticks: three sixteenths at most. */
const LONGEST_GLIDE = { into: 240, on: 480 } as const;

/** A note that rings on does so for two whole notes at most. */
const LONGEST_RING = 2 * 3840;

interface SoundingNote {
  readonly note: LineNote;
  readonly midi: MidiNumber;
  readonly string: number | null;
  readonly fret: number | null;
  /** Of a plain note at its place. */
  readonly strength: number;
  readonly start: number;
  end: number;
  /** The note waits for its continuation at the beginning of the next bar. */
  tied: boolean;
  /** The mark at the end of the last of its tied notes. */
  exit: LineNote;
}

/** What a note does, its neighbours known. */
interface Played {
  readonly sounding: SoundingNote;
  readonly sounds: readonly SignSound[];
  readonly attack: Attack | null;
  readonly next: SoundingNote | null;
  /** The next note is not plucked. */
  readonly leadsOn: boolean;
}

const ATTACKS: Readonly<Record<NonNullable<SignSound['onwards']>, Attack>> = {
  joined: 'joined',
  hammered: 'hammered',
  gliding: 'joined',
};

function strengthOf({ sounding, sounds, attack }: Played): number {
  const marked = sounds.some(({ strength }) => strength !== undefined);
  const factor = sounds.reduce((product, { strength = 1 }) => product * strength, 1);
  const downbeat = !marked && sounding.note.start === 0 && attack === null ? DOWNBEAT : 1;
  const unplucked = attack === null ? 1 : UNPLUCKED[attack];
  return Math.min(127, Math.max(1, Math.round(sounding.strength * factor * downbeat * unplucked)));
}

/**
 * How long a note is held, a tick at least, however small a share of it is played. One that rings does so until its
 * string is needed again, or to the line's end.
 */
function durationOf({ sounding, sounds }: Played, later: readonly SoundingNote[]): number {
  const length = sounding.end - sounding.start;
  if (sounding.note.marks?.length === 'let ring') {
    const stop = later.find(({ string }) => string === null || string === sounding.string)?.start;
    const end = stop ?? later.at(-1)?.end ?? sounding.end;
    return Math.max(1, length, Math.min(LONGEST_RING, end - sounding.start));
  }
  const share = sounds.reduce((product, { share: part = 1 }) => product * part, 1);
  const longest = Math.min(...sounds.map((sound) => sound.longest ?? Number.POSITIVE_INFINITY));
  return Math.max(1, Math.min(Math.round(length * share), longest));
}

function glidesOf({ sounding, sounds, next }: Played, duration: number): readonly Glide[] {
  return sounds.flatMap(({ glide, onwards }): readonly Glide[] => {
    const lasts = (most: number) => ticks(Math.max(1, Math.min(most, Math.round(duration / 2))));
    if (glide) {
      const most = glide.at === 'beginning' ? LONGEST_GLIDE.into : LONGEST_GLIDE.on;
      return [{ ...glide, duration: lasts(most) }];
    }
    if (onwards !== 'gliding' || next === null) return [];
    return [{ at: 'end', halfSteps: next.midi - sounding.midi, duration: lasts(LONGEST_GLIDE.on) }];
  });
}

function eventOf(played: Played, later: readonly SoundingNote[], damped: boolean): PitchedEvent {
  const { sounding, sounds, attack, leadsOn } = played;
  const duration = durationOf(played, later);
  const glides = glidesOf(played, duration);
  const tone = sounds.map((sound) => sound.tone).findLast((one) => one !== undefined);
  return {
    part: 'bass',
    midi: sounding.midi,
    start: ticks(sounding.start),
    duration: ticks(duration),
    velocity: strengthOf(played),
    muted: sounds.some((sound) => sound.tone === 'dead'),
    ...(sounding.fret === null ? {} : { fret: sounding.fret }),
    ...(damped && tone === undefined ? { damped: true as const } : {}),
    ...(leadsOn ? { leadsOn: true as const } : {}),
    ...(tone === undefined || tone === 'dead' ? {} : { tone }),
    ...(attack === null ? {} : { attack }),
    ...(glides.length === 0 ? {} : { glides }),
    ...(sounding.start + duration > sounding.end ? { rings: true } : {}),
  };
}

/** The signs of a note with that of its end. */
function signsOf({ note, midi, exit, end }: SoundingNote, next: SoundingNote | null): readonly Sign[] {
  const atEnd = exit.marks?.exit;
  const own = marksOf(note).filter((mark) => mark !== note.marks?.exit);
  const leads = next !== null && next.start === end;
  const leaves = atEnd !== undefined && (!isLink(atEnd) || leads) ? [atEnd] : [];
  return [...own, ...leaves].map((mark) => signOf(mark, midi, next?.midi ?? null));
}

function playAll(sounding: readonly SoundingNote[], damped: boolean): readonly PitchedEvent[] {
  let attack: Attack | null = null;
  return sounding.map((note, index) => {
    const next = sounding[index + 1] ?? null;
    const sounds = signsOf(note, next).map((sign) => SIGNS[sign].sound);
    const begun = attack;
    const onwards = sounds.map((sound) => sound.onwards).find((way) => way !== undefined);
    // What is plucked by a mark of its own is plucked, whatever leads to it.
    attack = onwards === undefined || next?.note.marks?.pluck !== undefined ? null : ATTACKS[onwards];
    const played = { sounding: note, sounds, attack: begun, next, leadsOn: attack !== null };
    return eventOf(played, note.note.marks?.length === 'let ring' ? sounding.slice(index + 1) : [], damped);
  });
}

/**
 * The bass line as it sounds: tied notes become one, wherever the order of playing leads them. A continuation
 * that nothing leads into (the passage begins with it) is struck like any note.
 * @param written the bars of the sheet, whose dynamics hold wherever they are played
 * @param damped whether the feel plays its bass muted
 */
export function bassEvents(
  bars: readonly PlannedBar[],
  ratio: number,
  written: readonly SheetBar[],
  damped: boolean,
): readonly PitchedEvent[] {
  const strengthAt = strengthsOf(written);
  const sounding: SoundingNote[] = [];
  for (const bar of bars) {
    const notes = bar.bassPlays ? (bar.sheetBar?.notes ?? []) : [];
    const moved = swungTogether(
      notes.flatMap(({ note }) => [note.start, note.start + note.duration]),
      bar.metre,
      ratio,
    );
    const at = (position: number): number => bar.start + moved(position);
    for (const { note, fingered } of notes) {
      const last = sounding.at(-1);
      const midi = midiOf(note.pitch);
      const end = at(note.start + note.duration);
      if (last?.tied && last.midi === midi && last.end === at(note.start)) {
        last.end = end;
        last.tied = note.tiedOn ?? false;
        last.exit = note;
      } else {
        sounding.push({
          note,
          midi,
          string: fingered?.string ?? null,
          fret: fingered?.fret ?? null,
          strength: strengthAt(bar.bar ?? 0, note.start),
          start: at(note.start),
          end,
          tied: note.tiedOn ?? false,
          exit: note,
        });
      }
    }
  }
  return playAll(sounding, damped);
}
