import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** `node_modules/@scope/name` of a module, or null for the project's own; virtual and query parts are dropped. */
function packageFolderOf(id: string): string | null {
  return /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id.replace('\0', ''))?.[1] ?? null;
}

/** The ISC licence below its copyright line (SPDX licence list, identifier ISC). */
const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby
granted, provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
THIS SOFTWARE.`;

/** The text of a licence that a package names but does not ship. */
const unshipped = (license: string | undefined): string =>
  license === 'ISC' ? ISC : 'The package brings no licence text of its own.';

/** Where a package's source is, as the Mozilla Public License (2.0, 3.2) asks to be told; nothing where it does not say. */
function sourceOf(repository: string | { readonly url: string } | undefined): string {
  const address = typeof repository === 'object' ? repository.url : (repository ?? '');
  const page = address.replace(/^git\+/, '').replace(/\.git$/, '');
  return page.startsWith('https://') ? `Source: ${page}\n\n` : '';
}

/** What a package says about its licence: the text it ships, else the name of the licence in its manifest. */
function noticeOf(folder: string): string {
  const manifest: {
    name: string;
    version: string;
    license?: string;
    author?: string | { name: string };
    repository?: string | { url: string };
  } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)/i.test(name));
  const author = typeof manifest.author === 'object' ? manifest.author.name : manifest.author;
  const text =
    file === undefined
      ? `Copyright ${author ?? 'its authors'}\n\n${unshipped(manifest.license)}`
      : readFileSync(join(folder, file), 'utf8').trim();
  return `${manifest.name} ${manifest.version} (${manifest.license ?? 'see below'})\n\n${sourceOf(manifest.repository)}${text}`;
}

/** Fonts that only a stylesheet names, which the module graph does not show. */
const STYLED_FONTS = ['@fontsource-variable/atkinson-hyperlegible-next'];

/** Packages that only a worker names: its modules are a build of their own, which the module graph does not show. */
const IN_WORKERS = ['mediabunny', 'wasm-media-encoders'];

/** What is in a package without being one, and what its licence asks to be told. */
const WITHIN: readonly string[] = [
  `LAME 3.100, in wasm-media-encoders (LGPL-2.0)

Tracks are written as MP3 with the LAME library (https://lame.sourceforge.io), compiled to WebAssembly and shipped as a
file of its own, which can be replaced. Its source is there; it is covered by the licence that follows.

${readFileSync(join(import.meta.dirname, 'lgpl-2.txt'), 'utf8').trim()}`,
];

/** The notices of every package and font that went into a build. */
export function noticesOf(moduleIds: Iterable<string>, withWorkers = false): string {
  const folders = new Set([
    ...[...STYLED_FONTS, ...(withWorkers ? IN_WORKERS : [])].map((name) =>
      join(import.meta.dirname, '..', 'node_modules', name),
    ),
    ...[...moduleIds].flatMap((id) => packageFolderOf(id) ?? []),
  ]);
  const notices = [...[...folders].sort().map(noticeOf), ...(withWorkers ? WITHIN : [])];
  const rule = `\n\n${'-'.repeat(78)}\n\n`;
  return `Ground Bass is built with the following packages and fonts.${rule}${notices.join(rule)}\n`;
}

/** Writes `third-party.txt` beside the page. */
export function thirdPartyNotices(): Plugin {
  return {
    name: 'third-party-notices',
    apply: 'build',
    generateBundle() {
      const source = noticesOf(this.getModuleIds(), true);
      this.emitFile({ type: 'asset', fileName: 'third-party.txt', source });
    },
  };
}
