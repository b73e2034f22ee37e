import { capitalised, counted, listed } from '../base';
import { feelById, isFeelId } from '../feel';
import { romanNumeral } from '../fretboard';
import type { Thing, ThingKind } from '../students';
import { describeKeyIn, type Naming, parseKey } from '../theory';
import type { Proposal } from './next';
import { type Cell, type ReadWeek, seriesTable } from './table';

/** What the things of a kind are called together. */
export const KIND_WORDS: Readonly<Record<ThingKind, string>> = {
  technique: 'Techniques',
  degree: 'Degrees',
  key: 'Keys',
  position: 'Hand positions',
  feel: 'Feels',
};

/** A thing as a person reads it: `♭7`, `position V`, `Rocksteady`. */
export function thingName({ kind, name }: Thing, naming: Naming): string {
  if (kind === 'key') {
    const key = parseKey(name);
    return key.ok ? describeKeyIn(naming, key.value) : name;
  }
  if (kind === 'position') return /^[1-9]\d?$/.test(name) ? `position ${romanNumeral(Number(name))}` : name;
  return kind === 'feel' && isFeelId(name) ? feelById(name).name : name;
}

export const CELL_WORDS: Readonly<Record<Cell, string>> = {
  new: 'new',
  again: 'again',
  none: 'not shown',
};

/** What a week is called by. */
const weekName = (weeks: readonly ReadWeek[], index: number): string => {
  const title = weeks[index]?.title ?? '';
  return `week ${index + 1}, “${title === '' ? 'Without a title' : title}”`;
};

const ofKind: Readonly<Record<ThingKind, (name: string) => string>> = {
  technique: (name) => `the technique ${name}`,
  degree: (name) => `the degree ${name}`,
  key: (name) => `the key of ${name}`,
  position: (name) => `the hand in ${name}`,
  feel: (name) => `the feel ${name}`,
};

/** A proposal as one sentence, with its reason. */
export function proposalWords(proposal: Proposal, weeks: readonly ReadWeek[], naming: Naming): string {
  switch (proposal.kind) {
    case 'again': {
      const { mend, tempo, week } = proposal;
      const reasons = [
        ...(tempo === null ? [] : [`it was reached at ${tempo.reached} of ${tempo.wanted} bpm`]),
        ...(mend === '' ? [] : [`to mend is: ${mend.replace(/[.!]$/, '')}`]),
      ];
      return `${capitalised(weekName(weeks, week))} once more, with nothing new: ${reasons.join(', and ')}.`;
    }
    case 'new': {
      const { thing, since } = proposal;
      const what = ofKind[thing.kind](thingName(thing, naming));
      const plural = KIND_WORDS[thing.kind].toLowerCase();
      const why =
        since === null
          ? `of ${plural} nothing was shown yet`
          : since === 0
            ? `it comes next of the ${plural}`
            : `of ${plural} nothing was new for ${counted(since, 'week')}`;
      return `One new thing, ${what}: ${why}.`;
    }
    case 'level':
      return `Level ${proposal.level}: what the level before it has of techniques and degrees was shown.`;
  }
}

/** A week in a few words for a table of contents: its key, feel and level, and the techniques that are new in it. */
export function weekBrief(weeks: readonly ReadWeek[], index: number, naming: Naming): string {
  const read = weeks[index]?.read ?? null;
  if (read === null) return '';
  const named = (kind: ThingKind) =>
    read.things.filter((thing) => thing.kind === kind).map((thing) => thingName(thing, naming));
  const fresh = seriesTable(weeks)
    .filter(({ thing, cells }) => thing.kind === 'technique' && cells[index] === 'new')
    .map(({ thing }) => thingName(thing, naming));
  return [
    named('key').join(', '),
    named('feel').join(', '),
    `level ${read.difficulty.asked}`,
    fresh.length === 0 ? '' : `new: ${listed(fresh)}`,
  ]
    .filter((part) => part !== '')
    .join(' · ');
}
