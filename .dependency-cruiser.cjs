/**
 * The import arrows between rooms. Types count: `tsPreCompilationDeps` keeps `import type` in the picture.
 * A room may import the doors (`index.ts`) of the rooms in its row and its own files, nothing else.
 * Run by `tests/rules/check-arrows.mjs`, which also sees to it that no file escapes the cruise.
 */
const { existsSync, readdirSync } = require('node:fs');
const { join } = require('node:path');

const rows = [
  ['core/base', []],
  ['core/theory', ['core/base']],
  ['core/chart', ['core/base', 'core/theory']],
  ['core/fretboard', ['core/base', 'core/theory']],
  ['core/feel', ['core/base', 'core/theory']],
  ['core/notation', ['core/base', 'core/theory']],
  ['core/line', ['core/base', 'core/theory', 'core/chart', 'core/fretboard', 'core/feel']],
  ['core/lesson', ['core/base', 'core/theory', 'core/chart', 'core/fretboard', 'core/feel', 'core/line']],
  [
    'core/composing',
    ['core/base', 'core/theory', 'core/chart', 'core/fretboard', 'core/feel', 'core/line', 'core/lesson'],
  ],
  ['core/asking', ['core/base', 'core/theory', 'core/chart', 'core/line', 'core/notation', 'core/lesson']],
  ['core/shelf', ['core/base', 'core/theory', 'core/feel', 'core/line', 'core/lesson']],
  ['core/students', ['core/base', 'core/theory', 'core/fretboard', 'core/feel', 'core/line', 'core/lesson']],
  [
    'core/series',
    ['core/base', 'core/theory', 'core/fretboard', 'core/feel', 'core/line', 'core/lesson', 'core/students'],
  ],
  ['core/versions', ['core/base', 'core/theory', 'core/chart', 'core/lesson']],
  ['core/playing', ['core/base', 'core/feel', 'core/lesson']],
  ['core/practising', ['core/base', 'core/lesson', 'core/playing']],
  [
    'core/performance',
    [
      'core/base',
      'core/theory',
      'core/chart',
      'core/fretboard',
      'core/feel',
      'core/line',
      'core/lesson',
      'core/playing',
    ],
  ],
  ['core/listening', ['core/base', 'core/performance']],
  ['core/writing', ['core/base', 'core/theory', 'core/chart', 'core/fretboard', 'core/feel', 'core/lesson']],
  ['core/exchange', ['core/(?!exchange)[^/]+']],
  ['score', ['core/[^/]+']],
  ['workers', ['core/base']],
  ['sound', ['core/[^/]+', 'workers']],
  ['tracks', ['core/[^/]+', 'workers', 'sound']],
  ['handout', ['core/[^/]+', 'score']],
  ['app', ['core/[^/]+', 'score', 'workers', 'sound', 'tracks', 'handout']],
];

/** The rooms of the page, below `src/app/pages`, and the inner rooms each may enter; none may import a file beside them. */
const pageRows = [
  ['common', []],
  ['words', []],
  ['playing', ['common', 'words']],
  ['at-work', ['common', 'playing']],
  ['score', ['common', 'at-work', 'playing']],
  ['saving', ['common', 'playing']],
  ['register', []],
  ['making', ['saving']],
  ['sending', ['common', 'at-work', 'saving', 'making', 'neck', 'register']],
  ['booklet', ['common', 'making']],
  ['aims', ['words', 'at-work']],
  ['chart', ['words', 'at-work']],
  ['fingering', ['words', 'at-work']],
  ['hand', ['at-work']],
  ['answers', ['at-work']],
  ['opening', ['at-work']],
  ['news', []],
  ['students', ['common', 'at-work', 'saving', 'register']],
  ['series', ['at-work', 'booklet', 'students', 'register']],
  ['lessons', ['at-work', 'saving', 'booklet', 'students', 'series']],
  ['neck', ['common', 'words', 'at-work', 'score']],
  ['pencil', ['common', 'at-work', 'score']],
  ['ideas', ['common', 'words', 'at-work', 'score', 'aims', 'chart', 'fingering', 'pencil']],
  ['ledge', ['common', 'words', 'at-work', 'playing', 'score', 'saving', 'neck', 'pencil']],
  ['handout', ['common', 'at-work', 'saving', 'neck', 'opening']],
  ['pad', ['common', 'at-work', 'aims', 'chart', 'hand', 'answers', 'handout']],
  ['versions', ['common', 'at-work', 'playing', 'saving']],
  ['study', ['words', 'at-work', 'score']],
  ['asking', ['at-work']],
  ['regrade', ['words', 'at-work', 'score']],
  ['stages', ['words', 'at-work', 'playing', 'score']],
  [
    'sheet',
    [
      'common',
      'words',
      'at-work',
      'score',
      'saving',
      'neck',
      'answers',
      'ideas',
      'pencil',
      'asking',
      'regrade',
      'stages',
      'study',
    ],
  ],
  ['show', ['common', 'words', 'at-work', 'score', 'ledge']],
  ['tools', ['at-work']],
  ['listening', ['at-work']],
  [
    'practice',
    [
      ...['common', 'words', 'at-work', 'playing', 'score', 'ledge', 'show', 'stages', 'tools', 'versions'],
      'listening',
    ],
  ],
  [
    'writing',
    [
      ...['common', 'at-work', 'playing', 'score', 'saving', 'opening', 'lessons', 'ledge', 'handout', 'pad'],
      ...['sheet', 'practice', 'news', 'sending', 'versions'],
    ],
  ],
];

const pageArrows = pageRows.map(([room, allowed]) => ({
  name: `arrows-of-page-${room}`,
  comment: `src/app/pages/${room} may import, of the page's rooms, the doors of: ${allowed.join(', ') || 'no other'}.`,
  severity: 'error',
  from: { path: `^src/app/pages/${room}/` },
  to: {
    path: '^src/app/pages/',
    pathNot: [`^src/app/pages/${room}/`, ...allowed.map((other) => `^src/app/pages/${other}/index\\.tsx?$`)],
  },
}));

const arrows = rows.map(([room, allowed]) => ({
  name: `arrows-of-${room.replace('/', '-')}`,
  comment: `src/${room} may import its own files and the doors of: ${allowed.join(', ') || 'no other room'}.`,
  severity: 'error',
  from: { path: `^src/${room}/` },
  to: { path: '^src/', pathNot: [`^src/${room}/`, ...allowed.map((other) => `^src/${other}/index\\.tsx?$`)] },
}));

/** Folders with a door of their own, found wherever they are: an inner room is as closed as a room of the table. */
function roomsBelow(folder) {
  const inner = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap((entry) => roomsBelow(join(folder, entry.name)));
  const hasDoor = ['index.ts', 'index.tsx'].some((door) => existsSync(join(folder, door)));
  return hasDoor ? [folder.replaceAll('\\', '/'), ...inner] : inner;
}

const doors = [...new Set([...rows.map(([room]) => `src/${room}`), ...roomsBelow('src')])].map((room) => ({
  name: `door-of-${room.replace('src/', '').replaceAll('/', '-')}`,
  comment: `From outside, ${room} is entered through its index.ts only.`,
  severity: 'error',
  from: { pathNot: `^${room}/` },
  to: { path: `^${room}/`, pathNot: `^${room}/index\\.tsx?$` },
}));

const rooms = rows.map(([room]) => room).join('|');

/** What the core may take from outside: libraries that compute, and know neither page nor clock. */
const computingLibraries = '(^|/)node_modules/(chord-symbol|fflate|saxes|tonal|zod)/';

module.exports = {
  forbidden: [
    ...arrows,
    ...pageArrows,
    ...doors,
    {
      name: 'every-file-in-a-room',
      comment: 'A folder that the table does not know has no rules; enter it in the table first.',
      severity: 'error',
      from: { path: '^src/', pathNot: [`^src/(${rooms})/`, '^src/main\\.tsx$'] },
      to: {},
    },
    {
      name: 'every-room-of-the-page-in-its-table',
      comment: 'A folder of the page that its table does not know has no rules; enter it in the table first.',
      severity: 'error',
      from: {
        path: '^src/app/pages/[^/]+/',
        pathNot: `^src/app/pages/(${pageRows.map(([room]) => room).join('|')})/`,
      },
      to: {},
    },
    {
      name: 'main-starts-the-app',
      comment: 'src/main.tsx imports the door of the app and style sheets.',
      severity: 'error',
      from: { path: '^src/main\\.tsx$' },
      to: { path: '^src/', pathNot: ['^src/app/index\\.tsx?$', '\\.css$'] },
    },
    {
      name: 'nothing-imports-main',
      severity: 'error',
      from: {},
      to: { path: '^src/main\\.tsx$' },
    },
    {
      name: 'core-is-pure',
      comment: 'The core imports no library of the page, only such as compute.',
      severity: 'error',
      from: { path: '^src/core/' },
      to: { path: '(^|/)node_modules/', pathNot: computingLibraries },
    },
    {
      name: 'nothing-of-node',
      comment: 'The app runs in a browser.',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'nothing-from-the-tests',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^tests/' },
    },
    {
      name: 'storage-in-its-room-only',
      comment: "Only src/app/storage touches the browser's database.",
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/app/storage/' },
      to: { path: '(^|/)node_modules/idb/' },
    },
    {
      name: 'practice-keeps-nothing',
      comment:
        'The practice page, and the state it shares with the writing page, never reach the lessons of the device, so it cannot damage one: they know the storage by its types only.',
      severity: 'error',
      from: { path: '^src/app/(pages/practice|state)/' },
      to: { path: '^src/app/storage/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'the-students-store-is-narrow',
      comment:
        'What is remembered of a student is written by the practice page alone, and knows nothing of the app.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/app/(pages/practice|student-store)/' },
      to: { path: '^src/app/student-store/' },
    },
    {
      name: 'the-students-store-knows-no-lesson',
      severity: 'error',
      from: { path: '^src/app/student-store/' },
      to: { path: '^src/', pathNot: '^src/(core/practising/index\\.ts$|app/student-store/)' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-unknown-modules',
      comment:
        'The address of an encoder is asked of the bundler, behind a name that the package itself gives.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^wasm-media-encoders/wasm/mp3\\?url$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'module', 'browser', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
