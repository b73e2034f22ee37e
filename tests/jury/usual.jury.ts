import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { linesRead } from './read-lines';
import { usualOf, withHabits } from './usual-habits';

/*
 * Writes what is usual in each feel, from the lines that blind readers liked: `npm run jury:usual`, after readings were
 * added to `pairs.json`.
 */

const HEAD = `/*
 * What is usual in each feel, level by level from 0 to 5: means over the lines that blind readers marked well
 * (\`tests/jury/pairs.json\`), in parts of a thousand, in the order of HABITS. Written by \`npm run jury:usual\`.
 */
`;

test('writes what is usual in each feel', () => {
  const { usual, spreads } = usualOf(withHabits(linesRead()));
  const rows = [...usual].map(
    ([feel, levels]) => `  '${feel}': [\n${levels.map((row) => `    [${row.join(', ')}],\n`).join('')}  ],\n`,
  );
  writeFileSync(
    'src/core/line/phrase/usual.ts',
    `${HEAD}export const USUAL = {\n${rows.join('')}} as const;\n\n/** How far lines differ in each habit, in parts of a thousand. */\nexport const SPREADS = [${spreads.join(', ')}] as const;\n`,
  );
});
