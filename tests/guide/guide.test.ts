/** The contributor's guide is held against the house: what it names is there, and its examples run. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { numberWord } from '../../src/core/base';
import { FEEL_IDS } from '../../src/core/feel';
import { LEVELS } from '../../src/core/line';
import { RULE_NUMBERS } from '../../src/core/line/rules/numbers';
import { FEATURES, lackedIn } from '../support/other-browsers/features';
import { fromChartToFiles, numberPieces, savedAndRead } from './examples';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const here = (path: string): boolean => existsSync(new URL(`../../${path}`, import.meta.url));

const GUIDES = ['DEVELOPERS.md', 'README.md', 'tests/jury/README.md'] as const;
const guide = read('DEVELOPERS.md');

/** Numbers as a guide writes them; a longer list of things needs a longer list here. */
const inWords = (count: number): string =>
  count <= 12
    ? numberWord(count)
    : (['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen', 'twenty'][
        count - 13
      ] ?? `${count}`);

/** What stands in backticks within a line, blocks of code left out. */
const quotedIn = (text: string): readonly string[] =>
  [...text.replace(/^```[\s\S]*?^```$/gm, '').matchAll(/`([^`\n]+)`/g)].map(([, quoted = '']) => quoted);

/** Every file below a folder, by its path from the root. */
const filesBelow = (folder: string): readonly string[] =>
  readdirSync(new URL(`../../${folder}`, import.meta.url), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`);

const files = [
  ...['src', 'tests', 'build', 'public'].flatMap(filesBelow),
  ...readdirSync(new URL('../../', import.meta.url)),
];
const names = new Set(files.map((path) => path.slice(path.lastIndexOf('/') + 1)));
const allCode = files
  .filter((path) => /\.(?:tsx?|mjs)$/.test(path) && path.includes('/'))
  .map((path) => readFileSync(path, 'utf8'))
  .join('\n');

/** The rooms of a table of the guide: the first column of the rows below its heading. */
function roomsBelow(heading: string): readonly string[] {
  const [, table = ''] = guide.split(`${heading}\n| --- |`.replace('| --- |', '|---|'));
  const rows = table.split('\n\n')[0]?.split('\n').slice(1) ?? [];
  return rows.flatMap((row) =>
    [...(row.split('|')[1] ?? '').matchAll(/`([^`]+)`/g)].map(([, room = '']) => room),
  );
}

const foldersIn = (path: string): readonly string[] =>
  readdirSync(new URL(`../../${path}`, import.meta.url), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

describe('what the guides name', () => {
  test.each(GUIDES)('%s names files and folders that are there', (name) => {
    const paths = quotedIn(read(name).replaceAll('/N.txt', '/2.txt')).filter((quoted) =>
      /^(?:src|tests|build|public)\/[\w./-]+$/.test(quoted),
    );
    expect(paths.filter((path) => !here(path))).toEqual([]);
    const named = quotedIn(read(name)).filter((quoted) => /^[\w-]+\.(?:tsx?|mjs|cjs)$/.test(quoted));
    expect(named.filter((file) => !names.has(file))).toEqual([]);
  });

  test.each(GUIDES)('%s names commands that are there', (name) => {
    const { scripts } = JSON.parse(read('package.json')) as {
      readonly scripts: Readonly<Record<string, string>>;
    };
    const asked = [...read(name).matchAll(/npm run ([\w:]+)/g)].map(([, script = '']) => script);
    expect(asked.filter((script) => !Object.hasOwn(scripts, script))).toEqual([]);
  });

  test.each(GUIDES)('%s names functions, fields and constants that are there', (name) => {
    const asked = quotedIn(read(name)).flatMap(
      (quoted) => /^(?:[a-z]+[A-Z]\w*|[A-Z][A-Z]+_[A-Z_]+)$/.exec(quoted)?.[0] ?? [],
    );
    const SETTINGS = /^(?:REFERENCE_DATA|CHROME_PATH|SOAK_\w+|FUZZ_\w+)$/;
    expect(asked.filter((word) => !SETTINGS.test(word) && !allCode.includes(word))).toEqual([]);
  });

  test('the rooms of the tables are the folders, each once', () => {
    const house = roomsBelow('| room | what lives there | may import |').map((room) =>
      room.replace(/^src\//, ''),
    );
    const folders = [
      ...foldersIn('src/core').map((room) => `core/${room}`),
      ...foldersIn('src').filter((room) => room !== 'core'),
    ];
    expect([...house].sort()).toEqual([...folders].sort());
    expect([...roomsBelow('| room of the page | what the user does there |')].sort()).toEqual(
      foldersIn('src/app/pages'),
    );
  });

  test('the README counts the feels, levels and rules there are', () => {
    const readme = read('README.md').toLowerCase();
    expect(readme).toContain(`${inWords(FEEL_IDS.length)} feels`);
    expect(readme).toContain(`${inWords(LEVELS.length)} teaching levels`);
    expect(readme).toContain(`${inWords(RULE_NUMBERS.length)} rules`);
  });

  test('the table of browsers tells of each feature that one of them lacks, and no other', () => {
    const told = lackedIn(guide).map(({ words }) => words);
    const untold = FEATURES.filter(({ name }) => !told.some((words) => words.includes(name)));
    expect(untold).toEqual(FEATURES.filter(({ everywhere }) => everywhere));
  });

  test('the recipe for a level counts the levels there are', () => {
    expect(guide).toContain(`levels ${LEVELS[0]} to ${LEVELS.at(-1)}`);
  });
});

describe('the examples of the guide', () => {
  const written = [
    ...read('tests/guide/examples.ts').matchAll(/^\/\/ example: (.+)\n([\s\S]*?)^\/\/ end$/gm),
  ];

  test.each(written.map(([, name = '', code = '']) => [name, code]))(
    '%s stands there as it runs',
    (name, code) => {
      expect(guide).toContain(`\`\`\`ts\n// ${name}\n${code}\`\`\``);
    },
  );

  test('every block of code is one of them', () => {
    expect(guide.match(/^```ts$/gm)).toHaveLength(written.length);
  });

  test('a chart becomes a line in tab and MusicXML, and what is played', () => {
    const { sheet, performance, musicXml, tab } = fromChartToFiles('| F | Dm7 | Gm7 | C7 |');
    expect(sheet.bars.map(({ notes }) => notes.length > 0)).toEqual([true, true, true, true]);
    expect(performance.events.some(({ part }) => part === 'bass')).toBe(true);
    expect(musicXml).toContain('<measure number="4"');
    expect(musicXml).not.toContain('<measure number="5"');
    expect(tab).toContain('Harbour steps');
  });

  test('an edit gives a lesson that can be saved and read', () => {
    const { lesson } = fromChartToFiles('| Am | D7 |');
    const numbered = numberPieces(lesson);
    expect(numbered.pieces.map(({ name }) => name)).toEqual(['Exercise 1']);
    expect(savedAndRead(numbered)).toEqual({ ok: true, value: numbered });
  });
});
