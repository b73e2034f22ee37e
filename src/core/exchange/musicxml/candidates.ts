import { counted, midiOf } from '../../base';
import { bassPoints, HALF_STEPS_A_POINT } from '../reading/bass-part';
import type { End } from '../reading/one-by-one';
import type { FileChoice } from '../reading/score-read';
import type { RawNote, RawPart, RawStaff } from './raw';

/** A staff of a part, which may be the bass. */
export interface Candidate {
  readonly part: RawPart;
  readonly staff: number;
  readonly facts: RawStaff;
  /** The voices with notes, in the order in which they come. */
  readonly voices: readonly string[];
  /** The voice that is read; the first one, if no other is asked for. */
  readonly voice: string;
  /** Which of notes that sound together is read: a bass plays the lowest, a tune is the highest. */
  readonly end: End;
  /** Notes of that voice, a list a measure. */
  readonly notes: readonly (readonly RawNote[])[];
  /** The tab of the same notes, whose strings and frets are taken. */
  readonly tab: Candidate | null;
}

const NO_FACTS: RawStaff = { clef: '', tuning: null, capo: false };

const stavesOf = (part: RawPart): readonly number[] =>
  [...new Set(part.measures.flatMap(({ notes }) => notes.map(({ staff }) => staff)))].sort((a, b) => a - b);

function candidateOf(part: RawPart, staff: number): Candidate {
  const all = part.measures.flatMap(({ notes }) => notes.filter((note) => note.staff === staff));
  const voices = [...new Set(all.map(({ voice }) => voice))];
  const voice = voices[0] ?? '1';
  const facts = part.staves.get(staff) ?? NO_FACTS;
  return {
    part,
    staff,
    facts,
    voices,
    voice,
    end: facts.clef === 'G' && namedBass(part) === 0 ? 'highest' : 'lowest',
    notes: notesOf(part, staff, voice),
    tab: null,
  };
}

/** @param voice null for all of them */
const notesOf = (part: RawPart, staff: number, voice: string | null): Candidate['notes'] =>
  part.measures.map(({ notes }) =>
    notes.filter((note) => note.staff === staff && (voice === null || note.voice === voice)),
  );

const namedBass = (part: RawPart): number => bassPoints(part.program, `${part.name} ${part.instruments}`);

/** Whether a staff is written for a bass: by its sound, its name, its clef or a tab. */
export const isForBass = ({ part, facts, tab }: Candidate): boolean =>
  namedBass(part) > 0 || facts.clef === 'F' || facts.clef === 'TAB' || tab !== null;

const VOICE_ENDS = ['highest', 'lowest'] as const;

export const voiceId = ({ voice, end }: Candidate): string => `${voice} ${end}`;

const together = (bar: readonly RawNote[]): boolean =>
  new Set(bar.map(({ start }) => Math.round(start))).size < bar.length;

/** What can be read of a staff: each voice, and its highest and its lowest notes where some sound together. */
export function voiceChoices(candidate: Candidate): readonly FileChoice[] {
  return candidate.voices.flatMap((voice, place) => {
    const notes = notesOf(candidate.part, candidate.staff, voice);
    const name = `Voice ${place + 1}`;
    const count = counted(notes.flat().length, 'note');
    return notes.some(together)
      ? VOICE_ENDS.map((end) => ({
          id: voiceId({ ...candidate, voice, end }),
          name: `${name}, ${end} notes`,
        }))
      : [{ id: voiceId({ ...candidate, voice }), name: `${name} (${count})` }];
  });
}

/** The staff with another of its voices; as it is where it has no such voice. */
export function withVoice(candidate: Candidate, id: string | null): Candidate {
  const { part, staff, tab } = candidate;
  for (const voice of candidate.voices) {
    for (const end of VOICE_ENDS) {
      if (voiceId({ ...candidate, voice, end }) !== id) continue;
      // The tab has one place for each note, in whatever voice it is.
      const places = tab === null ? null : { ...tab, notes: notesOf(tab.part, tab.staff, null) };
      return { ...candidate, voice, end, notes: notesOf(part, staff, voice), tab: places };
    }
  }
  return candidate;
}

const isTab = ({ facts }: Candidate): boolean => facts.clef === 'TAB';

/** Starts and pitch classes, so that a tab is known by its notes in whatever octave it is written. */
const melodyOf = ({ notes }: Candidate): string =>
  notes
    .map((bar) =>
      [...bar]
        .map((note) => `${Math.round(note.start)}:${midiOf(note.pitch) % 12}`)
        .sort()
        .join(' '),
    )
    .join('|');

/** Every staff with pitched notes, in the order of the score; a tab of the notes of a staff is joined to it. */
export function candidatesOf(parts: readonly RawPart[]): readonly Candidate[] {
  const all = parts
    .filter(({ percussion }) => !percussion)
    .flatMap((part) => stavesOf(part).map((staff) => candidateOf(part, staff)))
    .filter(({ facts }) => facts.clef !== 'percussion');
  const tabs = new Map(all.filter(isTab).map((tab) => [melodyOf(tab), tab]));
  const joined = new Set<Candidate>();
  const staves = all.flatMap((one): Candidate[] => {
    if (isTab(one)) return [];
    const tab = tabs.get(melodyOf(one)) ?? null;
    if (tab !== null) joined.add(tab);
    return [{ ...one, tab }];
  });
  const alone = all.filter((one) => isTab(one) && !joined.has(one));
  return [...staves, ...alone].sort((one, other) => parts.indexOf(one.part) - parts.indexOf(other.part));
}

const meanMidi = ({ notes }: Candidate): number => {
  const all = notes.flat();
  return all.reduce((sum, { pitch }) => sum + midiOf(pitch), 0) / Math.max(1, all.length);
};

/**
 * How much speaks for a staff to be the bass line: its sound, its name, its clef, that it is a tab, and its height
 * (common practice, no source). More is likelier.
 */
function likelihood(candidate: Candidate): number {
  const { part, facts } = candidate;
  return (
    namedBass(part) +
    (facts.clef === 'F' ? 3 : 0) +
    (candidate.tab !== null ? 2 : 0) -
    meanMidi(candidate) / HALF_STEPS_A_POINT
  );
}

/** The staff that is most likely the bass line. */
export function likeliest(candidates: readonly Candidate[]): Candidate | null {
  const [first = null, ...others] = candidates;
  return others.reduce<Candidate | null>(
    (best, one) => (best !== null && likelihood(one) > likelihood(best) ? one : best),
    first,
  );
}

/** Names a candidate among the others for the choice on the page; the same again for the same file. */
export const candidateId = ({ part, staff }: Candidate): string => `${part.id} ${staff}`;

/** The part's name, and which of its staves where it has several with notes. */
export function candidateName(candidate: Candidate, all: readonly Candidate[]): string {
  const { part, staff, facts } = candidate;
  const name = part.name === '' ? part.instruments || part.id : part.name;
  const sameName = all.filter((other) => (other.part.name || other.part.id) === (part.name || part.id));
  if (sameName.length < 2) return name;
  const within = sameName.filter((other) => other.part === part).length > 1;
  if (within) return `${name}, staff ${staff}`;
  return `${name} (${facts.clef === 'TAB' ? 'tab, ' : ''}${part.id})`;
}
