/**
 * Small houses in a temporary folder, under the project's own settings, to break its rules in: the shared tree
 * never holds a fault on purpose.
 */
import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';

const projectRoot = fileURLToPath(new URL('../../', import.meta.url));

/** Path below the house to the file's text. */
export type Files = Readonly<Record<string, string>>;

/** A house in which every rule holds. */
export const soundHouse: Files = {
  'src/main.tsx': "import { title } from './app';\n\ndocument.title = title;\n",
  'src/app/index.ts':
    "import { beat } from '../core/theory';\nimport { kept } from './storage';\n\nexport const title = [beat, kept].join();\n",
  'src/app/storage/index.ts': "export { kept } from './kept';\n",
  'src/app/storage/kept.ts': "export const kept = localStorage.getItem('lesson');\n",
  'src/sound/index.ts':
    "export const start = (): Worker => new Worker(new URL('./mixer.ts', import.meta.url), { type: 'module' });\n",
  'src/sound/mixer.ts': "import { ticks } from '../core/base';\n\npostMessage(ticks);\n",
  'src/core/base/index.ts': "export { type Ticks, ticks } from './units';\n",
  'src/core/base/units.ts': 'export type Ticks = number;\n\nexport const ticks: Ticks = 960;\n',
  'src/core/theory/index.ts': "import { ticks } from '../base';\n\nexport const beat = ticks;\n",
};

const settings = [
  '.dependency-cruiser.cjs',
  '.gitignore',
  'biome.json',
  'package.json',
  'tsconfig.json',
  'src/core/tsconfig.json',
  'tests/rules/no-hidden-inputs.grit',
];

const built: string[] = [];

/** Builds a house of these files and gives back its folder; it is torn down at the end of the test file. */
export async function build(files: Files): Promise<string> {
  const house = await mkdtemp(join(tmpdir(), 'broken-house-'));
  built.push(house);
  for (const name of settings) await cp(join(projectRoot, name), join(house, name));
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(house, name)), { recursive: true });
    await writeFile(join(house, name), text);
  }
  await symlink(join(projectRoot, 'node_modules'), join(house, 'node_modules'), 'junction');
  return house;
}

afterAll(async () => {
  await Promise.all(built.splice(0).map((house) => rm(house, { recursive: true })));
});

export interface Verdict {
  readonly passed: boolean;
  /** Everything the tool printed. */
  readonly said: string;
}

const tools = {
  arrows: [join(projectRoot, 'tests', 'rules', 'check-arrows.mjs')],
  lint: [
    join(projectRoot, 'node_modules', '@biomejs', 'biome', 'bin', 'biome'),
    'check',
    '--error-on-warnings',
    '.',
  ],
  types: [join(projectRoot, 'node_modules', 'typescript-native', 'bin', 'tsc'), '-p', 'src/core'],
} as const;

/** Runs one of the project's checks in a house, as the scripts of `package.json` run it in the project. */
export function check(tool: keyof typeof tools, house: string): Promise<Verdict> {
  return new Promise((resolve) => {
    execFile(process.execPath, [...tools[tool]], { cwd: house }, (problem, output, faults) =>
      resolve({ passed: problem === null, said: output + faults }),
    );
  });
}
