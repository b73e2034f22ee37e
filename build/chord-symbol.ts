import type { Plugin } from 'vite';

/**
 * Functions that are one call of the language, for what they are called with here: arrays, mostly of the names of
 * intervals, a test of their items, and plain data.
 */
const OF_THE_LANGUAGE: Readonly<Record<string, string>> = {
  clone: 'export default (values) => [...values];',
  cloneDeep: 'export default structuredClone;',
  isEqual: 'export default (one, other) => one.join() === other.join();',
  find: 'export default (values, test) => values.find(test);',
  isArray: 'export default Array.isArray;',
};

const ours = (name: string): string =>
  OF_THE_LANGUAGE[name] ?? `export { ${name} as default } from 'es-toolkit';`;

const NUMERALS = /chord-symbol\/src\/parser\/filters\/formatNumeralSymbol\.js$/;

/**
 * Makes chord-symbol lighter in what the page first loads. It takes eleven functions of lodash, whose modules weigh 9 kB;
 * those of the same names in es-toolkit weigh a tenth of that. And it adds to every chord a numeral in the key of its
 * own root, which nobody asks for; that weighs a kilobyte. `tests/reference` reads thousands of published chord symbols
 * without either.
 */
export const lightChordSymbol = (): Plugin => ({
  name: 'light-chord-symbol',
  enforce: 'pre',
  resolveId: (id) => (/^lodash\/\w+$/.test(id) ? `\0${id}` : null),
  load(id) {
    if (NUMERALS.test(id)) return 'export default (_, chord) => chord;';
    return id.startsWith('\0lodash/') ? ours(id.slice('\0lodash/'.length)) : null;
  },
});
