import { barName, barRange, beatsOf, capitalised, type Metre, midiOf, sameMetre } from '../base';
import { chordsIn, countedIn } from '../chart';
import { type LineSheet, silentBeats, stringName } from '../lesson';
import { formatNameIn } from '../theory';
import { type AskedBar, counted, degreesOf, metreOf, rhythmOf } from './reading';
import type { Question, QuestionKind } from './types';

/** A line with all of its bars read. */
export interface Asked {
  readonly sheet: LineSheet;
  readonly bars: readonly AskedBar[];
}

type Maker = (asked: Asked, bar: AskedBar) => readonly Question[];

const nameOf = ({ bar }: AskedBar): string => barName(bar.written.number);

const naming = ({ sheet }: Asked) => sheet.noteNames ?? 'letters';

const joined = (parts: readonly string[]): string => parts.join(', ');

/** Names of notes that a student taps: those of the line and of its chords, by their letters. */
function nameChoices(asked: Asked): readonly string[] {
  const chords = asked.sheet.bars.flatMap(({ written }) => chordsIn(written));
  const tones = chords.flatMap((chord) => chord.tones.map(({ name }) => name));
  const played = asked.bars.flatMap(({ struck }) => struck.map(({ note }) => note.pitch));
  const names = [...played, ...tones].sort(
    (one, other) => one.letter.localeCompare(other.letter) || one.alteration - other.alteration,
  );
  return [...new Set(names.map((each) => formatNameIn(naming(asked), each)))];
}

const namesIn = (asked: Asked, { struck }: AskedBar): readonly string[] =>
  struck.map(({ note }) => formatNameIn(naming(asked), note.pitch));

const names: Maker = (asked, bar) => {
  const { struck } = bar;
  const choices = nameChoices(asked);
  if (struck.length === 0 || choices.length < 2) return [];
  return [
    {
      kind: 'names',
      difficulty: 1,
      bars: [bar.index],
      text: `Tap the names of the notes in ${nameOf(bar)}, one after the other.`,
      onPaper: `Write the names of the notes in ${nameOf(bar)}.`,
      answer: joined(namesIn(asked, bar)),
      choices,
      taps: namesIn(asked, bar),
      blanks: struck.length,
    },
  ];
};

const degrees: Maker = (asked, bar) => {
  const { struck } = bar;
  const choices = degreeChoices(asked);
  if (choices.length < 2 || struck.length === 0 || struck.some(({ degreeText }) => degreeText === ''))
    return [];
  return [
    {
      kind: 'degrees',
      difficulty: 2,
      bars: [bar.index],
      text: `Tap the degrees of the notes in ${nameOf(bar)}, each above the root of its chord.`,
      onPaper: `Write the degrees of the notes in ${nameOf(bar)}, each above the root of its chord.`,
      answer: joined(degreesOf(bar)),
      choices,
      taps: degreesOf(bar),
      blanks: struck.length,
    },
  ];
};

/** Places by string, then fret. */
const byPlace = (one: string, other: string): number => one.localeCompare(other, 'en', { numeric: true });

const placesIn = ({ sheet }: Asked, { struck }: AskedBar): readonly string[] =>
  struck.flatMap(({ fingered }) =>
    fingered === null ? [] : [`${stringName(sheet, fingered.string)} ${fingered.fret}`],
  );

const frets: Maker = (asked, bar) => {
  const places = placesIn(asked, bar);
  const choices = [...new Set(asked.bars.flatMap((each) => placesIn(asked, each)))].sort(byPlace);
  if (choices.length < 2 || places.length === 0 || places.length < bar.struck.length) return [];
  return [
    {
      kind: 'frets',
      difficulty: 2,
      bars: [bar.index],
      text: `Tap string and fret of the notes in ${nameOf(bar)}, as the tab has them.`,
      onPaper: `Write a string and a fret for each note of ${nameOf(bar)}.`,
      answer: joined(places),
      choices,
      taps: places,
      blanks: places.length,
    },
  ];
};

/** Degrees that a student taps: those of the line. */
function degreeChoices({ bars }: Asked): readonly string[] {
  const order = ['R', '♭2', '2', '♭3', '3', '4', '♯4', '♭5', '5', '♯5', '♭6', '6', '♭♭7', '♭7', '7', '8'];
  const heard = new Set(bars.flatMap((each) => degreesOf(each)));
  return [...heard]
    .filter((text) => text !== '')
    .sort((one, other) => order.indexOf(one) - order.indexOf(other));
}

const degree: Maker = (asked, bar) => {
  const choices = degreeChoices(asked);
  if (choices.length < 2) return [];
  const placed = countedIn(asked.sheet.chart, bar.index, metreOf(bar));
  return bar.struck.flatMap(({ note, degreeText }): readonly Question[] => {
    if (degreeText === '') return [];
    return [
      {
        kind: 'degree',
        difficulty: degreeText === 'R' || degreeText === '5' || degreeText === '8' ? 1 : 2,
        bars: [bar.index],
        text: `Which degree of its chord is the note on ${placed(note.start)} in ${nameOf(bar)}?`,
        answer: degreeText,
        choices,
        taps: [degreeText],
        blanks: 1,
      },
    ];
  });
};

const emptyBeat: Maker = (_, bar) => {
  const [beat, ...others] = silentBeats(bar.bar);
  if (beat === undefined || others.length > 0 || bar.struck.length === 0 || bar.bar.written.pickup) return [];
  return [
    {
      kind: 'empty beat',
      difficulty: 1,
      bars: [bar.index],
      text: `Nothing sounds through one whole beat of ${nameOf(bar)}. Which?`,
      answer: `beat ${beat + 1}`,
      choices: beatsOf(metreOf(bar)).map(({ index }) => `beat ${index + 1}`),
      taps: [`beat ${beat + 1}`],
      blanks: 1,
    },
  ];
};

const third: Maker = (_, bar) => {
  const thirds = new Set(degreesOf(bar).filter((text) => text === '3' || text === '♭3'));
  const [only] = thirds;
  if (only === undefined || thirds.size > 1) return [];
  return [
    {
      kind: 'third',
      difficulty: 2,
      bars: [bar.index],
      text: `The third of a chord is played in ${nameOf(bar)}. Is it major or minor?`,
      answer: only === '3' ? 'major' : 'minor',
      choices: ['major', 'minor'],
      taps: [only === '3' ? 'major' : 'minor'],
      blanks: 1,
    },
  ];
};

/** Bars as they are counted in which every beat is struck, or the first alone: for a line that has no other rhythm. */
function plainCounts(metre: Metre): readonly string[] {
  const beats = beatsOf(metre).map(({ index }) => index + 1);
  return [beats.join(' '), beats.map((beat) => (beat === 1 ? '1' : `(${beat})`)).join(' ')];
}

const clap: Maker = (asked, bar) => {
  const answer = counted(bar);
  if (answer === null || bar.struck.length === 0 || bar.bar.written.pickup) return [];
  const others = asked.bars
    .filter((each) => sameMetre(metreOf(each), metreOf(bar)))
    .flatMap((each) => counted(each) ?? []);
  const choices = [...new Set([answer, ...others, ...plainCounts(metreOf(bar))])].slice(0, 4).sort();
  return [
    {
      kind: 'clap',
      difficulty: bar.struck.every(({ note }) => note.start % 960 === 0) ? 1 : 2,
      bars: [bar.index],
      text: `Clap ${nameOf(bar)} and count aloud; whisper what is not struck. What do you say?`,
      answer,
      choices,
      taps: [answer],
      blanks: 1,
    },
  ];
};

/** Bars of which the others are answers are sought within so many. */
const PHRASE = 4;

const answeringBar: Maker = ({ bars }, bar) => {
  if (bar.struck.length < 2 || bar.bar.written.pickup) return [];
  const phrase = bars.slice(bar.index + 1, bar.index + PHRASE);
  const alike = phrase.filter((each) => rhythmOf(each) === rhythmOf(bar));
  const [answer, ...others] = alike.filter((each) => joined(degreesOf(each)) !== joined(degreesOf(bar)));
  const last = phrase.at(-1);
  if (answer === undefined || others.length > 0 || phrase.length < 2 || last === undefined) return [];
  return [
    {
      kind: 'answering bar',
      difficulty: 3,
      bars: [bar.index, ...phrase.map(({ index }) => index)],
      text: `${capitalised(nameOf(bar))} asks. Which of ${barRange(bar.bar.written.number + 1, last.bar.written.number)} answers it: the same rhythm, other degrees?`,
      answer: nameOf(answer),
      choices: phrase.map(nameOf),
      taps: [nameOf(answer)],
      blanks: 1,
    },
  ];
};

const LEADS = [
  'a half step from below',
  'a half step from above',
  'a whole step from below',
  'a whole step from above',
  'the same note again',
  'a leap from below',
  'a leap from above',
] as const;

function leadOf(halfSteps: number): (typeof LEADS)[number] {
  if (halfSteps === 0) return 'the same note again';
  const from = halfSteps > 0 ? 'below' : 'above';
  const size = Math.abs(halfSteps);
  return size === 1
    ? `a half step from ${from}`
    : size === 2
      ? `a whole step from ${from}`
      : `a leap from ${from}`;
}

const lead: Maker = ({ bars }, bar) => {
  const last = bar.struck.at(-1)?.note;
  const [next, ...others] = bar.after;
  const first = next === undefined ? undefined : bars[next]?.struck[0]?.note;
  if (last === undefined || last.tiedOn === true || first === undefined || others.length > 0) return [];
  const into = bars[next ?? 0];
  if (into === undefined || into.struck.length < into.bar.notes.length) return [];
  const answer = leadOf(midiOf(first.pitch) - midiOf(last.pitch));
  return [
    {
      kind: 'lead',
      difficulty: 3,
      bars: [bar.index, into.index],
      text: `How does the last note of ${nameOf(bar)} lead to the first of ${nameOf(into)}?`,
      answer,
      choices: LEADS,
      taps: [answer],
      blanks: 1,
    },
  ];
};

const leftOutBar: Maker = (asked, bar) => {
  const before = asked.bars[bar.index - 1];
  if (before === undefined || bar.struck.length < 2 || bar.bar.notes.length !== bar.struck.length) return [];
  if (bar.struck.at(-1)?.note.tiedOn === true) return [];
  const choices = nameChoices(asked);
  if (choices.length < 2) return [];
  const placed = countedIn(asked.sheet.chart, bar.index, metreOf(bar));
  const told = bar.struck.map(
    ({ note }) => `${formatNameIn(naming(asked), note.pitch)} on ${placed(note.start)}`,
  );
  return [
    {
      kind: 'left-out bar',
      difficulty: 3,
      bars: [before.index, bar.index],
      empty: bar.index,
      text: `Cover ${nameOf(bar)}, play ${nameOf(before)}, and tap the notes of the next bar as the line has them.`,
      onPaper: `${capitalised(nameOf(bar))} is left empty. Listen to the line, and write its notes there.`,
      answer: joined(told),
      choices,
      taps: namesIn(asked, bar),
      blanks: told.length,
    },
  ];
};

export const MAKERS: Readonly<Record<QuestionKind, Maker>> = {
  names,
  'empty beat': emptyBeat,
  clap,
  degree,
  third,
  degrees,
  frets,
  'answering bar': answeringBar,
  lead,
  'left-out bar': leftOutBar,
};
