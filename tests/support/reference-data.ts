import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, test } from 'vitest';

interface DataFolder {
  /** The names in a folder below the data's own, in order. */
  readonly names: (path: string) => readonly string[];
  readonly bytes: (path: string) => Uint8Array;
}

/**
 * A suite over published data that is too large for the repository. It runs when the environment variable
 * `REFERENCE_DATA` names the folder that holds the data; otherwise it is skipped and says what that costs.
 * @param checks About how many checks are lost without the data.
 * @param suite Gets a reader of text files: path below that folder, `/` between folders; and one of folders and of
 *   files that are no text.
 */
export function describeWithReferenceData(
  name: string,
  checks: number,
  suite: (read: (path: string) => string, data: DataFolder) => void,
): void {
  const folder = process.env.REFERENCE_DATA ?? '';
  if (folder !== '') {
    const data: DataFolder = {
      names: (path) => readdirSync(join(folder, path)).sort(),
      bytes: (path) => new Uint8Array(readFileSync(join(folder, path))),
    };
    describe(name, () => suite((path) => readFileSync(join(folder, path), 'utf8'), data));
    return;
  }
  process.stdout.write(`Skipped ${checks} checks of ${name}: REFERENCE_DATA names no folder.\n`);
  describe(name, () =>
    test.skipIf(folder === '')(`${checks} checks that need the reference data`, () => undefined),
  );
}
