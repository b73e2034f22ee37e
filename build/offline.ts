import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin } from 'vite';
import { buildAlone, isApp } from './alone.ts';

/** Every file below a folder, by its path from there; none where there is no such folder. */
function filesBelow(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}

/** Pictures for the window in which a browser offers to install the app: the app itself never shows them. */
const isOfApp = (name: string): boolean => !name.startsWith('screens/');

/** Writes `sw.js`: the service worker, headed by the list of all files of the build and a version made of them. */
export function offline(): Plugin {
  let publicFolder = '';
  return {
    name: 'offline',
    apply: isApp,
    enforce: 'post',
    configResolved(config) {
      publicFolder = config.publicDir;
    },
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const worker = await buildAlone('src/app/offline/worker.ts', { output: { format: 'iife' } });
        const contents = new Map<string, string | Uint8Array>([
          ...Object.values(bundle).map(
            (file) => [file.fileName, file.type === 'chunk' ? file.code : file.source] as const,
          ),
          ...filesBelow(publicFolder)
            .filter(isOfApp)
            .map((name) => [name, readFileSync(join(publicFolder, name))] as const),
        ]);
        const files = [...contents.keys()].sort();
        const hash = createHash('sha256').update(worker.script);
        for (const name of files) hash.update(name).update(contents.get(name) ?? '');
        const build = { version: hash.digest('hex').slice(0, 16), files };
        this.emitFile({
          type: 'asset',
          fileName: 'sw.js',
          source: `self.groundBassBuild = ${JSON.stringify(build)};\n${worker.script}`,
        });
      },
    },
  };
}
