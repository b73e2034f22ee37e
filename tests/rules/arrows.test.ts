import { beforeAll, describe, expect, test } from 'vitest';
import { build, check, type Files, soundHouse, type Verdict } from './broken-house';

/** A fault, the file it stands in, what that file says, and the rule that must name it. */
interface Fault {
  readonly fault: string;
  readonly file: string;
  readonly text: string;
  readonly rule: string;
}

const faults: readonly Fault[] = [
  {
    fault: 'an arrow against the table',
    file: 'src/core/base/fault-arrow.ts',
    text: "export { beat } from '../theory';\n",
    rule: 'arrows-of-core-base',
  },
  {
    fault: 'an arrow against the table that carries a type only',
    file: 'src/core/theory/fault-type.ts',
    text: "import type { Chart } from '../chart';\n\nexport type Heard = Chart;\n",
    rule: 'arrows-of-core-theory',
  },
  {
    fault: 'a type brought along by an inline import',
    file: 'src/core/theory/fault-inline-type.ts',
    text: "export type Heard = import('../chart').Chart;\n",
    rule: 'arrows-of-core-theory',
  },
  {
    fault: 'the core importing the score',
    file: 'src/core/theory/fault-page.ts',
    text: "export { system } from '../../score';\n",
    rule: 'arrows-of-core-theory',
  },
  {
    fault: 'the score importing the sound',
    file: 'src/score/fault-sound.ts',
    text: "export { start } from '../sound';\n",
    rule: 'arrows-of-score',
  },
  {
    fault: 'the sound importing the app, when first needed',
    file: 'src/sound/fault-late.ts',
    text: "export const late = () => import('../app');\n",
    rule: 'arrows-of-sound',
  },
  {
    fault: 'a worker with an arrow against the table',
    file: 'src/sound/mixer.ts',
    text: "import { title } from '../app';\n\npostMessage(title);\n",
    rule: 'arrows-of-sound',
  },
  {
    fault: 'a file behind a door',
    file: 'src/core/theory/fault-behind.ts',
    text: "export { ticks } from '../base/units';\n",
    rule: 'door-of-core-base',
  },
  {
    fault: 'a type from behind a door',
    file: 'src/app/fault-type-behind.ts',
    text: "export type { Ticks } from '../core/base/units';\n",
    rule: 'door-of-core-base',
  },
  {
    fault: 'the app reaching behind the door of its own inner room',
    file: 'src/app/fault-inner.ts',
    text: "export { kept } from './storage/kept';\n",
    rule: 'door-of-app-storage',
  },
  {
    fault: 'an inner room reaching behind the door of another',
    file: 'src/app/pages/fault-inner.ts',
    text: "export { kept } from '../storage/kept';\n",
    rule: 'door-of-app-storage',
  },
  {
    fault: 'a room reaching behind the door of its own inner room',
    file: 'src/sound/fault-inner.ts',
    text: "export { pluck } from './synthesis/pluck';\n",
    rule: 'door-of-sound-synthesis',
  },
  {
    fault: 'the app entering an inner room of another room',
    file: 'src/app/fault-side-door.ts',
    text: "export { pluck } from '../sound/synthesis';\n",
    rule: 'arrows-of-app',
  },
  {
    fault: 'a worker imported from another room',
    file: 'src/app/fault-worker.ts',
    text: "export { default as mixer } from '../sound/mixer.ts?worker';\n",
    rule: 'door-of-sound',
  },
  {
    fault: 'a worker started by an address in another room',
    file: 'src/app/fault-address.ts',
    text: "export const address = new URL('../sound/mixer.ts', import.meta.url).href;\n",
    rule: 'address-leaves-its-folder',
  },
  {
    fault: 'a worker that is not there',
    file: 'src/app/fault-no-worker.ts',
    text: "export const address = new URL('./missing.ts', import.meta.url).href;\n",
    rule: 'address-of-nothing',
  },
  {
    fault: 'a cycle',
    file: 'src/core/chart/fault-cycle-one.ts',
    text: "import { two } from './fault-cycle-two';\n\nexport const one = () => two;\n",
    rule: 'no-cycles',
  },
  {
    fault: 'a cycle of types',
    file: 'src/core/chart/fault-types-one.ts',
    text: "import type { Two } from './fault-types-two';\n\nexport type One = Two | 1;\n",
    rule: 'no-cycles',
  },
  {
    fault: 'the core importing React',
    file: 'src/core/base/fault-react.ts',
    text: "export { useState } from 'react';\n",
    rule: 'core-is-pure',
  },
  {
    fault: 'the core importing a type of Tone',
    file: 'src/core/base/fault-tone.ts',
    text: "export type { Gain } from 'tone';\n",
    rule: 'core-is-pure',
  },
  {
    fault: 'the app importing a module of Node',
    file: 'src/app/fault-node.ts',
    text: "export { readFileSync } from 'node:fs';\n",
    rule: 'nothing-of-node',
  },
  {
    fault: 'the app importing a test',
    file: 'src/app/fault-test.ts',
    text: "export { one } from '../../tests/one';\n",
    rule: 'nothing-from-the-tests',
  },
  {
    fault: "the browser's database outside its room",
    file: 'src/app/fault-database.ts',
    text: "export { openDB } from 'idb';\n",
    rule: 'storage-in-its-room-only',
  },
  {
    fault: 'the practice page reaching the lessons of the device',
    file: 'src/app/pages/practice/fault-shelf.ts',
    text: "export { kept } from '../../storage';\n",
    rule: 'practice-keeps-nothing',
  },
  {
    fault: 'a room of the page against the table of its rooms',
    file: 'src/app/pages/hand/fault-arrow.ts',
    text: "export { handout } from '../handout';\n",
    rule: 'arrows-of-page-hand',
  },
  {
    fault: 'a room of the page fetching another against the table, when first needed',
    file: 'src/app/pages/chart/fault-late.ts',
    text: "export const late = () => import('../handout');\n",
    rule: 'arrows-of-page-chart',
  },
  {
    fault: 'a room of the page importing what stands beside the rooms',
    file: 'src/app/pages/hand/fault-beside.ts',
    text: "export { late } from '../fault-beside';\n",
    rule: 'arrows-of-page-hand',
  },
  {
    fault: 'a room of the page that its table does not know',
    file: 'src/app/pages/fault-cellar/index.ts',
    text: "export { handout } from '../handout';\n",
    rule: 'every-room-of-the-page-in-its-table',
  },
  {
    fault: 'main importing a room past the app',
    file: 'src/main.tsx',
    text: "import { start } from './sound';\n\nstart();\n",
    rule: 'main-starts-the-app',
  },
  {
    fault: 'a room importing main',
    file: 'src/score/fault-main.ts',
    text: "export * from '../main';\n",
    rule: 'nothing-imports-main',
  },
  {
    fault: 'a room that the table does not know',
    file: 'src/helpers/index.ts',
    text: "export { ticks } from '../core/base';\n",
    rule: 'every-file-in-a-room',
  },
  {
    fault: 'an import of nothing',
    file: 'src/app/fault-nothing.ts',
    text: "export { title } from './missing';\n",
    rule: 'no-unknown-modules',
  },
];

/** What the faults need to be faults: the other ends of their arrows. */
const otherEnds: Files = {
  'src/core/chart/index.ts': 'export interface Chart {\n  readonly bars: number;\n}\n',
  'src/core/chart/fault-cycle-two.ts':
    "import { one } from './fault-cycle-one';\n\nexport const two = () => one;\n",
  'src/core/chart/fault-types-two.ts':
    "import type { One } from './fault-types-one';\n\nexport type Two = One | 2;\n",
  'src/app/pages/fault-beside.ts': 'export const late = 1;\n',
  'src/app/pages/handout/index.ts': 'export const handout = 1;\n',
  'src/score/index.ts': 'export const system = 1;\n',
  'src/sound/synthesis/index.ts': "export { pluck } from './pluck';\n",
  'src/sound/synthesis/pluck.ts': 'export const pluck = 1;\n',
  'tests/one.ts': 'export const one = 1;\n',
};

describe('the check of the arrows', () => {
  test('passes a house in order', async () => {
    const verdict = await check('arrows', await build(soundHouse));
    expect(verdict).toEqual({ passed: true, said: expect.stringContaining('hold') });
  });

  describe('in a house full of faults', () => {
    let verdict: Verdict;
    beforeAll(async () => {
      const broken = Object.fromEntries(faults.map(({ file, text }) => [file, text]));
      verdict = await check('arrows', await build({ ...soundHouse, ...otherEnds, ...broken }));
    });

    test('fails', () => expect(verdict.passed).toBe(false));

    test.each(faults)('names $fault', ({ file, rule }) => {
      expect(verdict.said.split('\n')).toContainEqual(expect.stringContaining(`${rule}: ${file} → `));
    });

    test('names nothing else', () => {
      const innocent = verdict.said
        .split('\n')
        .filter((line) => line.includes(' → ') && !line.includes('fault'));
      expect(innocent.filter((line) => !faults.some(({ file }) => line.includes(file)))).toEqual([]);
    });
  });

  test('fails when it has seen nothing', async () => {
    const verdict = await check('arrows', await build({ ...soundHouse, ...seeingAllBut('^src/') }));
    expect(verdict).toEqual({ passed: false, said: expect.stringContaining('nothing-cruised: ') });
  });

  test('fails when it has missed a worker', async () => {
    const verdict = await check('arrows', await build({ ...soundHouse, ...seeingAllBut('mixer') }));
    expect(verdict).toEqual({
      passed: false,
      said: expect.stringContaining('not-cruised: src/sound/mixer.ts'),
    });
  });
});

/** Settings with blinkers, standing for a cruiser that does not know the compiler's version. */
const seeingAllBut = (exclude: string): Files => ({
  '.dependency-cruiser.cjs': `module.exports = { forbidden: [], options: { exclude: '${exclude}' } };\n`,
});
