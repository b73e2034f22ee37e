import { jumpOf, type Navigation } from '../../chart';
import { BAR_WORDS_LENGTH } from '../../lesson';
import type { FoundBar } from '../reading/found';
import { metreTicks } from '../reading/metres';
import type { Remarks } from '../reading/remarks';
import type { Candidate } from './candidates';
import { chordsFrom } from './chords-of';
import { keyReader } from './keys-of';
import { lineOf } from './line-of';
import type { RawMeasure, RawPart } from './raw';

/** Repeats stand in every part as a rule; where the part has none, those of another one hold. */
function repeatsFrom(parts: readonly RawPart[], own: RawPart): RawPart {
  const has = ({ measures }: RawPart): boolean =>
    measures.some(({ forward, backward, ending }) => forward || backward !== null || ending !== null);
  return has(own) ? own : (parts.find(has) ?? own);
}

/** An upbeat: the first measure, shorter than its metre, or than the next one's where it has a metre of its own. */
function isPickup(measure: RawMeasure, next: RawMeasure | undefined): boolean {
  if (next === undefined || measure.length <= 0) return false;
  const own = metreTicks(measure.metre);
  return measure.length < own - 1 || (measure.implicit && own < metreTicks(next.metre));
}

/** Words over a bar, as much of them as a lesson holds. */
function wordsOf({ words }: RawMeasure, bar: number, remarks: Remarks): Pick<FoundBar, 'words'> {
  const said = words.join(' ').replace(/\s+/g, ' ').trim();
  if (said === '') return {};
  const kept = [...said].slice(0, BAR_WORDS_LENGTH).join('').trim();
  if (kept !== said) remarks.inBar(`Words over a bar are cut after ${BAR_WORDS_LENGTH} letters`, bar);
  return { words: kept };
}

/** A bar has one jump back: the one that says most. */
function oneJump(signs: readonly Navigation[]): readonly Navigation[] {
  const jumps = signs.filter((sign) => jumpOf([sign]) !== null);
  const [fullest] = [...jumps].sort((one, other) => other.length - one.length);
  return signs.filter((sign) => !jumps.includes(sign) || sign === fullest);
}

/**
 * The bars of the line with all that the score says about them, and the swing it asks for.
 * @param chordSource id of where the chords come from (see `chordChoices`); null where there are none
 * @param aboutNotes takes what is said of the notes: nothing of it matters where only the chords are taken
 */
export function barsOf(
  parts: readonly RawPart[],
  candidate: Candidate,
  chordSource: string | null,
  remarks: Remarks,
  aboutNotes: Remarks,
): { readonly bars: readonly FoundBar[]; readonly swing: number | null } {
  const { part } = candidate;
  const chords = chordsFrom(parts, part, chordSource, remarks);
  const lines = part.measures.map((_, bar) => lineOf(candidate, bar, aboutNotes));
  const keyOf = keyReader(chords.flat(), lines.flat());
  const repeats = repeatsFrom(parts, part);
  const everywhere = part.measures.map((_, bar) => parts.flatMap(({ measures }) => measures[bar] ?? []));
  const bars = part.measures.map((measure, bar): FoundBar => {
    const repeat = repeats.measures[bar];
    for (const remark of measure.remarks) remarks.inBar(remark, bar);
    return {
      metre: measure.metre,
      pickup: bar === 0 && isPickup(measure, part.measures[1]),
      length: measure.length,
      key: keyOf(measure.key),
      chords: chords[bar] ?? [],
      notes: lines[bar] ?? [],
      section:
        measure.rehearsal ?? everywhere[bar]?.find(({ rehearsal }) => rehearsal !== null)?.rehearsal ?? null,
      repeatStart: repeat?.forward ?? false,
      repeatEnd: repeat?.backward ?? null,
      ending: repeat?.ending ?? null,
      dynamics: measure.dynamics.filter(({ staff }) => staff === candidate.staff),
      ...wordsOf(measure, bar, remarks),
      navigation: oneJump([...new Set(everywhere[bar]?.flatMap(({ navigation }) => navigation))]),
    };
  });
  return { bars, swing: everywhere.flat().find(({ swing }) => swing !== null)?.swing ?? null };
}
