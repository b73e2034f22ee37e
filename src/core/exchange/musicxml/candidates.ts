import { midiOf } from '../../base';
import { bassPoints, HALF_STEPS_A_POINT } from '../reading/bass-part';
import type { RawNote, RawPart, RawStaff } from './raw';

/** A staff of a part, which may be the bass. */
export interface Candidate {
  readonly part: RawPart;
  readonly staff: number;
  readonly facts: RawStaff;
  /** The first voice that has notes. */
  readonly voice: string;
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
  const voice = all[0]?.voice ?? '1';
  return {
    part,
    staff,
    facts: part.staves.get(staff) ?? NO_FACTS,
    voice,
    notes: part.measures.map(({ notes }) =>
      notes.filter((note) => note.staff === staff && note.voice === voice),
    ),
    tab: null,
  };
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
    bassPoints(part.program, `${part.name} ${part.instruments}`) +
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
