import { failure, type Result, success } from '../../base';
import { type FeelId, isFeelId, isSwung } from '../../feel';
import { C_MAJOR, type Chord, describeKey } from '../../theory';
import { FEEL_TEXT } from '../own-words';
import type { FoundBar, FoundChord, FoundScore } from '../reading/found';
import { metreTicks } from '../reading/metres';
import type { End } from '../reading/one-by-one';
import { Remarks } from '../reading/remarks';
import type { ScoreRead } from '../reading/score-read';
import type { Wishes } from '../reading/wishes';
import { chordChoices, chordsFrom } from './chords-of';
import { barAt, barsUpTo } from './grid';
import { lastUpTo } from './last-up-to';
import { byBars, endChoices, endOf, lineAlone, spelled } from './line-of';
import { pulseOf } from './pulse';
import { GRIDS, type GridBar, type GridId, isGridId, latenessOf, quantise, swingOf } from './quantise';
import { type MidiEvent, readMidiFile } from './read-file';
import { type FoundTexts, keyByEar, keysOf, readTexts } from './signs';
import { isForBass, likeliestVoice, type MidiVoice, voicesOf } from './voices';

/** The share of the time in which the bytes are read; what they mean takes the rest. */
const BYTES_SHARE = 0.5;

/** Quarter notes a minute of a file that says nothing (Standard MIDI File 1.0, MMA RP-001). */
const USUAL_TEMPO = 120;

function tempoOf(events: readonly MidiEvent[], bars: readonly GridBar[], remarks: Remarks): number {
  const tempi = events
    .flatMap((event) => (event.kind === 'tempo' ? [event] : []))
    .sort((one, other) => one.at - other.at);
  const first = tempi[0]?.quarters ?? USUAL_TEMPO;
  for (const { at, quarters } of tempi) {
    if (Math.abs(quarters - first) > 0.5) {
      remarks.inBar('The piece has one tempo here, the first in the file; it changes', barAt(bars, at));
    }
  }
  return first;
}

const EXTRAS: Readonly<Record<MidiVoice['extras'][number]['what'], string>> = {
  bend: 'Bends of the pitch are left out',
  'note without length': 'A note without any length is left out',
};

/** Bars before anything with a pitch sounds: a count-in. */
function withoutCountIn(
  bars: readonly GridBar[],
  voices: readonly MidiVoice[],
  remarks: Remarks,
): { readonly bars: readonly GridBar[]; readonly left: number } {
  const first = Math.min(...voices.map(({ notes }) => notes[0]?.start ?? Number.POSITIVE_INFINITY));
  const left = barAt(bars, first);
  if (left > 0) {
    remarks.say(
      left === 1
        ? 'The first bar of the file has no note of a pitch and is left out.'
        : `The first ${left} bars of the file have no note of a pitch and are left out.`,
    );
  }
  return { bars: bars.slice(left), left };
}

const nameOf = (voice: MidiVoice, place: number): string =>
  voice.name === '' ? `Track ${place + 1}` : voice.name;

/** Names for the choice on the page; those that would be alike are counted. */
function partNames(voices: readonly MidiVoice[]): readonly string[] {
  const names = voices.map(nameOf);
  return names.map((name, place) => {
    const before = names.slice(0, place).filter((other) => other === name).length;
    const alike = names.filter((other) => other === name).length;
    return alike > 1 ? `${name}, ${before + 1}` : name;
  });
}

/** The title stands in a first track without notes, or at the head of the only one. */
function titleOf(tracks: readonly (readonly MidiEvent[])[]): string | null {
  const [first = []] = tracks;
  if (tracks.length > 1 && first.some(({ kind }) => kind === 'on')) return null;
  const name = first.find((event) => event.kind === 'text' && event.what === 'name');
  return name?.kind === 'text' && name.text !== '' ? name.text : null;
}

/**
 * Finds the line in a Standard MIDI File: the part that is most likely the bass, or the one that is asked for, written
 * on sixteenths and triplets, spelled by its key.
 * @param wishes what is asked for, by ids of an earlier reading of the same file
 * @param most bars that are read
 * @param tell hears how much is read
 */
export function readMidi(
  bytes: Uint8Array,
  wishes: Wishes,
  most: number,
  remarks: Remarks,
  tell: (share: number) => void,
): Result<ScoreRead, { readonly message: string }> {
  const file = readMidiFile(bytes, (share) => tell(share * BYTES_SHARE));
  if (!file.ok) return file;
  const pulse = pulseOf(file.value, wishes.pulse, remarks);
  const { tracks, damaged, end: endOfTracks } = pulse.file;
  const voices = voicesOf(tracks);
  const voice = voices.find(({ id }) => id === wishes.part) ?? likeliestVoice(voices);
  if (voice === null) {
    return failure({
      message: 'There is no part with notes of a pitch in this MIDI file. Nothing was changed.',
    });
  }
  if (damaged) remarks.say('The file is damaged; what stands before the fault is read.');
  const events = tracks.flat();
  const lastNote = Math.max(
    ...voices.map(({ notes }) => notes.reduce((last, note) => Math.max(last, note.end - 1), 0)),
  );
  const all = barsUpToEnd(lastNote, endOfTracks, events, most);
  if (all.more) remarks.say(`A lesson has ${most} bars at most; the rest is left out.`);
  const names = partNames(voices);
  const nameOfVoice = (one: MidiVoice): string => names[voices.indexOf(one)] ?? one.name;
  const chosen = nameOfVoice(voice);
  // Of a tune that is not taken nothing needs to be said.
  const aboutNotes = wishes.take === 'line' ? remarks : new Remarks();
  if (voices.length > 1) {
    aboutNotes.say(`The line is the part “${chosen}”, one of ${voices.length} that could be read.`);
  }
  const { bars } = withoutCountIn(all.bars, voices, remarks);
  const end = endOf(voice, wishes.voice);
  const grid = isGridId(wishes.grid) ? wishes.grid : 'nearest';
  const texts = readTexts(events);
  const sources = chordChoices(voices, bars, texts.chords !== null, nameOfVoice);
  const source = (sources.find(({ id }) => id === wishes.chords) ?? sources[0])?.id ?? null;
  const chords = chordsFrom(
    source,
    { voices, bars, keys: keysOf(events, bars), texts },
    nameOfVoice,
    remarks,
  );
  return success({
    found: foundScore(
      { voice, end, grid, events, bars, title: titleOf(tracks), chords, sections: texts.sections },
      remarks,
      aboutNotes,
    ),
    parts: { all: voices.map((one) => ({ id: one.id, name: nameOfVoice(one) })), read: voice.id },
    voices: endChoices(voice, end),
    chords: { all: sources, read: source },
    grids: { all: Object.entries(GRIDS).map(([id, { name }]) => ({ id, name })), read: grid },
    ...(pulse.choice === null ? {} : { pulses: pulse.choice }),
  });
}

/** A bar line this near to the end of the tracks, in ticks, is that end. */
const CLOSE = 30;

/** The bars that notes stand in, and silent ones behind them where all tracks end together on a later bar line. */
function barsUpToEnd(
  lastNote: number,
  endOfTracks: number | null,
  events: readonly MidiEvent[],
  most: number,
): ReturnType<typeof barsUpTo> {
  if (endOfTracks !== null && endOfTracks > lastNote) {
    const whole = barsUpTo(endOfTracks - CLOSE, events, most);
    const last = whole.bars.at(-1);
    if (last !== undefined && Math.abs(last.start + last.length - endOfTracks) <= CLOSE) return whole;
  }
  return barsUpTo(lastNote, events, most);
}

/** The feel that our own files name; null in those of others. */
function feelOf(events: readonly MidiEvent[]): FeelId | null {
  for (const event of events) {
    if (event.kind !== 'text' || event.what !== 'text' || !event.text.startsWith(FEEL_TEXT)) continue;
    const feel = event.text.slice(FEEL_TEXT.length);
    if (isFeelId(feel)) return feel;
  }
  return null;
}

interface Found {
  readonly voice: MidiVoice;
  readonly end: End;
  readonly grid: GridId;
  readonly chords: readonly FoundChord[] | null;
  readonly sections: FoundTexts['sections'];
  readonly events: readonly MidiEvent[];
  readonly bars: readonly GridBar[];
  readonly title: string | null;
}

interface Placed {
  /** In ticks. */
  readonly at: number;
}

const placeOf = ({ at }: Placed): number => at;

/** What stands in each bar; what stands before the first is left out. */
function inTheirBars<Thing extends Placed>(
  things: readonly Thing[],
  bars: readonly GridBar[],
): readonly (readonly Thing[])[] {
  const lists = bars.map((): Thing[] => []);
  for (const thing of things) lists[lastUpTo(bars, ({ start }) => start, thing.at + 1)]?.push(thing);
  return lists;
}

function foundScore(
  { voice, end, grid, events, bars, title, chords, sections }: Found,
  remarks: Remarks,
  aboutNotes: Remarks,
): FoundScore {
  const late = latenessOf(voice.notes, bars);
  const played = voice.notes.map((note) => ({
    ...note,
    start: Math.max(0, note.start - late),
    end: note.end - late,
  }));
  if (late !== 0) {
    aboutNotes.say(`The notes come ${late > 0 ? 'late' : 'early'} alike: they are written on their beats.`);
  }
  const ratio = swingOf(played, bars);
  if (isSwung(ratio)) {
    aboutNotes.say('The off-beats come late: they are written as plain eighths and swung by the feel.');
  }
  for (const { at, what } of voice.extras) {
    aboutNotes.inBar(EXTRAS[what], barAt(bars, at));
  }
  const line = lineAlone(quantise(played, bars, ratio, grid), end, bars, aboutNotes);
  const lists = byBars(line, bars);
  const signatures = keysOf(events, bars);
  const heard = signatures.some((key) => key !== null)
    ? null
    : keyByEar(
        (chords ?? []).map(({ chord }) => chord),
        voice.notes,
      );
  if (heard !== null) remarks.say(`The file has no key; by its notes it is ${describeKey(heard)}.`);
  const home = signatures.find((key) => key !== null) ?? heard ?? C_MAJOR;
  const keys = signatures.map((key) => key ?? home);
  const chordAt = (bar: number, tick: number): Chord | null => {
    const at = (bars[bar]?.start ?? 0) + tick;
    return chords?.[lastUpTo(chords, placeOf, at + 1)]?.chord ?? null;
  };
  const notes = spelled(lists, keys, chordAt);
  const chordsByBar = inTheirBars(chords ?? [], bars);
  const sectionsByBar = inTheirBars(sections, bars);
  const credits = events.flatMap((event) =>
    event.kind === 'text' && event.what === 'copyright' && event.text !== '' ? [event.text] : [],
  );
  return {
    title,
    name: voice.name === '' ? null : voice.name,
    credits: [...new Set(credits)],
    tempo: tempoOf(events, bars, remarks),
    swing: isSwung(ratio) ? ratio : null,
    feel: feelOf(events),
    own: feelOf(events) !== null,
    forBass: isForBass(voice),
    tuning: null,
    bars: bars.map(({ start, length, metre }, bar): FoundBar => {
      const next = bars[bar + 1];
      return {
        metre,
        pickup: bar === 0 && next !== undefined && isUpbeat(length, metre, next),
        length,
        key: keys[bar] ?? null,
        chords: (chordsByBar[bar] ?? []).map(({ at, chord }) => ({ at: Math.max(0, at - start), chord })),
        notes: notes[bar] ?? [],
        section: sectionsByBar[bar]?.[0]?.name ?? null,
        repeatStart: false,
        repeatEnd: null,
        ending: null,
      };
    }),
  };
}

/** The first bar is shorter than its metre, or has a shorter metre of its own. */
const isUpbeat = (length: number, metre: GridBar['metre'], next: GridBar): boolean =>
  length < metreTicks(metre) - 1 || metreTicks(metre) < metreTicks(next.metre);
