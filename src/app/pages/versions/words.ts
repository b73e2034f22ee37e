import { barName, listed } from '../../../core/base';
import { writeTuning } from '../../../core/fretboard';
import type { HandoutSettings, Lesson } from '../../../core/lesson';
import { describeKeyIn } from '../../../core/theory';
import {
  lessonOfVersion,
  type Mend,
  numberOfBar,
  type Own,
  type SharedField,
  type VersionApart,
} from '../../../core/versions';

/** A name that no version of a lesson has yet. */
export function freeName({ versions = [] }: Lesson): string {
  const taken = new Set(versions.map(({ name }) => name));
  for (let number = versions.length + 1; ; number += 1) {
    const name = `Version ${number}`;
    if (!taken.has(name)) return name;
  }
}

const FIELDS: Readonly<Record<SharedField, string>> = {
  name: 'the name',
  chartText: 'the chords',
  metre: 'the metre',
  tempo: 'the tempo',
  count: 'how it is counted',
  feel: 'the feel',
  techniques: 'what it teaches',
  playing: 'how it is played',
  aims: 'the aims',
  sections: 'the sections',
  meant: 'what is meant as it is',
  buildUp: 'the build-up',
  leftOut: 'what is left out on paper',
};

const IN_HANDOUT: Readonly<Record<keyof HandoutSettings, string>> = {
  paper: 'the paper',
  degrees: 'the degrees',
  fingers: 'the fingers',
  counting: 'the counting',
  numerals: 'the numerals',
  positions: 'the positions',
  parts: 'the other parts',
  blocks: 'the parts of the sheet',
  print: 'the print',
  onePage: 'one page or more',
  header: 'the heading',
  student: 'the student’s name',
  logo: 'the logo',
  code: 'the code',
  steps: 'the practice steps',
  twoUp: 'two on a sheet',
  binding: 'room for holes',
  questions: 'the questions',
};

const IN_LESSON = {
  title: 'the title',
  notes: 'the notes for the student',
  noteNames: 'the names of the notes',
} as const;

/** Something of a line, with the name of the line where there are several. */
function ofLine({ pieces }: Lesson, what: string, id: string): string {
  const lines = pieces.filter(({ kind }) => kind === 'line');
  return lines.length > 1 ? `${what} of ${lines.find((line) => line.id === id)?.name ?? 'a line'}` : what;
}

/** `bar 3`, `bar 3 of Ferry queue` where there are several lines, `a parked bar` where it has no place. */
export function placeOfBar(document: Lesson, mend: Mend): string {
  const number = numberOfBar(document, mend);
  const name = number === null ? 'a parked bar' : barName(number);
  return ofLine(lessonOfVersion(document, mend.version), name, mend.line);
}

/** What a version has of its own in one place: `bar 3`, `the tempo`, `the title`. */
export function ownName(document: Lesson, versionId: string, own: Own): string {
  const seen = lessonOfVersion(document, versionId);
  switch (own.kind) {
    case 'bar':
      return placeOfBar(document, { version: versionId, line: own.line, bar: own.bar });
    case 'chart':
      return ofLine(seen, 'the chords', own.line);
    case 'field':
      return ofLine(seen, FIELDS[own.field], own.line);
    case 'text':
      return IN_LESSON[own.field];
    case 'handout':
      return `${IN_HANDOUT[own.field]} on the handout`;
    case 'piece': {
      const name = [...seen.pieces, ...document.pieces].find(({ id }) => id === own.piece)?.name ?? '';
      return own.how === 'left out' ? `leaving out ${name}` : `the piece ${name}`;
    }
  }
}

/** For whom a version is, beside what it shares: `G major (the tune: F major), level 1 (the tune: 3)`; '' for no one else. */
export function apartWords(
  { lines, instrument }: VersionApart,
  noteNames: Lesson['noteNames'] = 'letters',
): string {
  const said = lines.flatMap(({ name, key, level, hand }) => {
    const of = lines.length > 1 ? `${name}: ` : '';
    const parts = [
      ...(key === null
        ? []
        : [`${describeKeyIn(noteNames, key.here)} (the tune: ${describeKeyIn(noteNames, key.tune)})`]),
      ...(level === null ? [] : [`level ${level.here} (the tune: ${level.tune})`]),
      ...(hand ? ['another hand'] : []),
    ];
    return parts.length === 0 ? [] : [`${of}${parts.join(', ')}`];
  });
  if (instrument === null) return said.join('; ');
  const [tune, here] = [instrument.tune, instrument.here];
  const strings = [writeTuning(here.openStrings, noteNames), writeTuning(tune.openStrings, noteNames)];
  const bass =
    strings[0] === strings[1]
      ? (here.leftHanded ?? false) === (tune.leftHanded ?? false)
        ? 'another bass'
        : here.leftHanded === true
          ? 'left-handed'
          : 'right-handed'
      : `tuned ${strings[0]} (the tune: ${strings[1]})`;
  return [...said, bass].join('; ');
}

/** Who keeps something of their own: ` For Ada keeps its own there.` */
export const keepWords = (names: readonly string[]): string =>
  names.length === 0
    ? ''
    : ` ${listed(names.map((name) => `“${name}”`))} ${names.length === 1 ? 'has' : 'have'} something else there and ${names.length === 1 ? 'keeps' : 'keep'} it.`;
