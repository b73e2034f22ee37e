const WORDS = [
  ...[
    'no',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
  ],
] as const;

/** A count up to twelve as a word, `no` for none; figures beyond, as newspapers have it. */
export const numberWord = (count: number): string => WORDS[count] ?? `${count}`;

/** `1 bar`, `3 bars`. */
export const counted = (count: number, one: string, several = `${one}s`): string =>
  `${count} ${count === 1 ? one : several}`;

/** `no shift`, `one shift`, `two shifts`. */
export const countedInWords = (count: number, one: string, several = `${one}s`): string =>
  `${numberWord(count)} ${count < 2 ? one : several}`;
