import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/** What the built page may do: nothing from elsewhere, no inline script, no eval. */
const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Puts the policy into the built `index.html`; the development server needs inline scripts and goes without. */
function securityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/** `node_modules/@scope/name` of a module, or null for the project's own; virtual and query parts are dropped. */
function packageFolderOf(id: string): string | null {
  return /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id.replace('\0', ''))?.[1] ?? null;
}

/** What a package says about its licence: the text it ships, else the name of the licence in its manifest. */
function noticeOf(folder: string): string {
  const manifest: {
    name: string;
    version: string;
    license?: string;
    author?: string | { name: string };
  } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)/i.test(name));
  const author = typeof manifest.author === 'object' ? manifest.author.name : manifest.author;
  const text =
    file === undefined
      ? `Copyright ${author ?? 'its authors'}; the package brings no licence text of its own.`
      : readFileSync(join(folder, file), 'utf8').trim();
  return `${manifest.name} ${manifest.version} (${manifest.license ?? 'see below'})\n\n${text}`;
}

/** Fonts that only a stylesheet names, which the module graph does not show. */
const STYLED_FONTS = ['@fontsource-variable/atkinson-hyperlegible-next'];

/** Writes `third-party.txt` beside the page: the notices of every package and font that went into the build. */
function thirdPartyNotices(): Plugin {
  return {
    name: 'third-party-notices',
    apply: 'build',
    generateBundle() {
      const folders = new Set([
        ...STYLED_FONTS.map((name) => join(import.meta.dirname, 'node_modules', name)),
        ...[...this.getModuleIds()].flatMap((id) => packageFolderOf(id) ?? []),
      ]);
      const notices = [...folders].sort().map(noticeOf);
      const rule = `\n\n${'-'.repeat(78)}\n\n`;
      this.emitFile({
        type: 'asset',
        fileName: 'third-party.txt',
        source: `Ground Bass is built with the following packages and fonts.${rule}${notices.join(rule)}\n`,
      });
    },
  };
}

export default defineConfig({
  base: './',
  plugins: [react(), securityPolicy(), thirdPartyNotices()],
  worker: { format: 'es' },
  build: { target: 'es2022', assetsInlineLimit: 0, chunkSizeWarningLimit: 1200 },
  preview: { port: 4173 },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/browser/**', 'tests/rules/**', 'tests/pictures/**'],
          environment: 'node',
          testTimeout: 60_000,
          benchmark: { include: ['tests/bench/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: {
          name: 'rules',
          include: ['tests/rules/**/*.test.ts'],
          environment: 'node',
          benchmark: { include: [] },
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          benchmark: { include: ['tests/bench/browser/*.bench.ts'] },
          globalSetup: ['tests/support/serve.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'pictures',
          include: ['tests/pictures/**/*.test.ts'],
          environment: 'node',
          benchmark: { include: [] },
          globalSetup: ['tests/support/serve.ts'],
          testTimeout: 120_000,
        },
      },
    ],
  },
});
