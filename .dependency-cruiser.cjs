/**
 * The import arrows between rooms. Types count: `tsPreCompilationDeps` keeps `import type` in the picture.
 * A room may import the doors (`index.ts`) of the rooms in its row and its own files, nothing else.
 */
const core = (room) => `^src/core/${room}/`;

const rows = [
  ['base', []],
  ['theory', ['base']],
  ['chart', ['base', 'theory']],
  ['fretboard', ['base', 'theory']],
  ['feel', ['base', 'theory']],
  ['line', ['base', 'theory', 'chart', 'fretboard', 'feel']],
  ['lesson', ['base', 'theory', 'chart', 'fretboard', 'feel', 'line']],
  ['performance', ['base', 'theory', 'chart', 'fretboard', 'feel', 'line', 'lesson']],
  ['exchange', ['base', 'theory', 'chart', 'fretboard', 'feel', 'line', 'lesson', 'performance']],
];

const coreArrows = rows.map(([room, allowed]) => ({
  name: `core-${room}-arrows`,
  comment: `src/core/${room} may import only ${allowed.join(', ') || 'nothing'} of the core.`,
  severity: 'error',
  from: { path: core(room) },
  to: { path: '^src/', pathNot: [core(room), ...allowed.map((other) => `^src/core/${other}/index\\.ts$`)] },
}));

const shell = [
  ['score', ['core']],
  ['sound', ['core']],
  ['handout', ['core', 'score']],
];

const shellArrows = shell.map(([room, allowed]) => ({
  name: `${room}-arrows`,
  comment: `src/${room} may import only its own files and the doors of ${allowed.join(' and ')}.`,
  severity: 'error',
  from: { path: `^src/${room}/` },
  to: {
    path: '^src/',
    pathNot: [
      `^src/${room}/`,
      ...allowed.map((other) =>
        other === 'core' ? '^src/core/[^/]+/index\\.ts$' : `^src/${other}/index\\.ts$`,
      ),
    ],
  },
}));

/** Libraries of the page, which the core must not know. */
const pageLibraries = '(^|/)node_modules/(react|react-dom|tone|vexflow|zustand|zundo|pdfkit|idb)/';

module.exports = {
  forbidden: [
    ...coreArrows,
    ...shellArrows,
    {
      name: 'one-door-a-room',
      comment: 'Other rooms import the door (index.ts), never a file behind it.',
      severity: 'error',
      from: { path: '^src/(core/[^/]+|score|sound|handout|app/[^/]+)/' },
      to: {
        path: '^src/(core/[^/]+|score|sound|handout|app/[^/]+)/',
        pathNot: ['^$1/', '^src/$1/', '/index\\.ts$'],
      },
    },
    {
      name: 'main-uses-the-app-door',
      severity: 'error',
      from: { path: '^src/main\\.tsx$' },
      to: { path: '^src/', pathNot: ['^src/app/index\\.tsx?$', '\\.css$'] },
    },
    {
      name: 'core-is-pure',
      comment: 'The core imports no page library and no Node module.',
      severity: 'error',
      from: { path: '^src/core/' },
      to: { path: pageLibraries },
    },
    {
      name: 'core-is-not-node',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'storage-only-in-its-room',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/app/storage/' },
      to: { path: '(^|/)node_modules/idb/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'resolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?(url|worker|raw)|\\.(css|otf|woff2)' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'module', 'browser', 'default'],
      mainFields: ['module', 'main'],
    },
  },
};
