import { beatTicks, type Metre, metreName, TICKS_PER_QUARTER } from '../../base';
import { CHART_METRES } from '../../chart';
import { FEELS, type FeelId } from '../../feel';
import { COUNTS, type Count, writtenTempo } from '../../lesson';
import { formatName, type Key, type Naming, parseKey, parseNameIn } from '../../theory';
import { GERMAN_NAMES, SILENCES } from './write';

/** What the header of our own text tab says. */
export interface TabHeader {
  readonly title: string | null;
  readonly name: string | null;
  readonly key: Key;
  readonly metre: Metre;
  /** Quarter notes a minute. */
  readonly tempo: number;
  readonly feel: FeelId;
  /** Whether silences are told. */
  readonly silences: boolean;
  readonly naming: Naming;
}

const FACTS =
  /^([^,]{1,30}), (\d{1,2}\/\d), ([\d.]{1,6}) bpm(?: in the (fast|slow) count)?, ([^,]{1,40})(?:, eighths swung)?$/u;

/** The metre of this name that a chart can have. */
export const metreNamed = (name: string): Metre | null =>
  CHART_METRES.find((metre) => metreName(metre) === name) ?? null;

/** The key of this name, as our own tab types it. */
export function keyNamed(text: string, naming: Naming): Key | null {
  const [name = '', mode = ''] = text.split(' ');
  const tonic = parseNameIn(naming, name);
  const key = tonic.ok ? parseKey(`${formatName(tonic.value)} ${mode}`) : null;
  return key?.ok ? key.value : null;
}

const isCount = (text: string | undefined): text is Count => COUNTS.some((count) => count === text);

/** In which names the strings and the key of a tab are written; letters where they can be read so. */
function namingOf(all: string, key: string): Naming {
  if (all.includes(GERMAN_NAMES)) return 'german';
  return parseNameIn('letters', key.split(' ')[0] ?? '').ok ? 'letters' : 'fixed do';
}

/**
 * Reads the header of our own text tab; null for any other text.
 * @param lines - those before the first system
 */
export function readHeader(lines: readonly string[]): TabHeader | null {
  const all = lines.join(' ').replace(/\s+/gu, ' ');
  for (const [index, line] of lines.entries()) {
    // A line that was longer than the page was broken.
    const facts = FACTS.exec(line) ?? FACTS.exec(`${line} ${lines[index + 1] ?? ''}`);
    if (facts === null) continue;
    const [, keyText = '', metreText = '', bpm = '', count, feelName] = facts;
    const naming = namingOf(all, keyText);
    const key = keyNamed(keyText, naming);
    const metre = metreNamed(metreText);
    const feel = FEELS.find(({ name }) => name === feelName);
    if (key === null || metre === null || feel === undefined) continue;
    const told = { feel, metre, ...(isCount(count) ? { count } : {}) };
    const titles = lines.slice(0, index).filter((each) => each !== '');
    return {
      title: titles.length > 1 ? titles.slice(0, -1).join(' ') : (titles[0] ?? null),
      name: titles.at(-1) ?? null,
      key,
      metre,
      tempo: (writtenTempo(told, Number(bpm)) * beatTicks(metre)) / TICKS_PER_QUARTER,
      feel: feel.id,
      silences: all.includes(SILENCES),
      naming,
    };
  }
  return null;
}
