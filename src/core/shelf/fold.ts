/** Marks that are written over or under letters: the block of combining marks (Unicode, U+0300 to U+036F). */
const COMBINING = /[\u0300-\u036f]/g;

/**
 * A text as it is compared: in small letters, without marks over the letters, with `b` and `#` for the signs that
 * fonts draw, so that `Übung` is found by `ubung` and `B♭` by `bb`.
 */
export const folded = (text: string): string =>
  text.normalize('NFD').replace(COMBINING, '').toLowerCase().replaceAll('♭', 'b').replaceAll('♯', '#');

/** The words of what is searched for, folded; none for an empty search. */
export const wordsOf = (text: string): readonly string[] =>
  folded(text)
    .split(/\s+/)
    .filter((word) => word !== '');
