import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, test } from 'vitest';

/**
 * A suite over published data that is too large for the repository. It runs when the environment variable
 * `REFERENCE_DATA` names the folder that holds the data; otherwise it is skipped and says what that costs.
 * @param checks About how many checks are lost without the data.
 * @param suite Gets a reader of text files: path below that folder, `/` between folders.
 */
export function describeWithReferenceData(
  name: string,
  checks: number,
  suite: (read: (path: string) => string) => void,
): void {
  const folder = process.env.REFERENCE_DATA ?? '';
  if (folder !== '') {
    describe(name, () => suite((path) => readFileSync(join(folder, path), 'utf8')));
    return;
  }
  process.stdout.write(`Skipped ${checks} checks of ${name}: REFERENCE_DATA names no folder.\n`);
  describe(name, () =>
    test.skipIf(folder === '')(`${checks} checks that need the reference data`, () => undefined),
  );
}
