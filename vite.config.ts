import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import react from '@vitejs/plugin-react';
import { build, type ConfigEnv, type Plugin, type Rolldown, type UserConfig } from 'vite';
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

/** The notices of every package and font that went into a build. */
function noticesOf(moduleIds: Iterable<string>): string {
  const folders = new Set([
    ...STYLED_FONTS.map((name) => join(import.meta.dirname, 'node_modules', name)),
    ...[...moduleIds].flatMap((id) => packageFolderOf(id) ?? []),
  ]);
  const notices = [...folders].sort().map(noticeOf);
  const rule = `\n\n${'-'.repeat(78)}\n\n`;
  return `Ground Bass is built with the following packages and fonts.${rule}${notices.join(rule)}\n`;
}

/** Writes `third-party.txt` beside the page. */
function thirdPartyNotices(): Plugin {
  return {
    name: 'third-party-notices',
    apply: 'build',
    generateBundle() {
      const source = noticesOf(this.getModuleIds());
      this.emitFile({ type: 'asset', fileName: 'third-party.txt', source });
    },
  };
}

/** Where the app puts the lesson into the file, word for word as `src/core/exchange/practice/embed.ts` looks for it. */
const LESSON_PLACE = '<script type="application/json" id="lesson"></script>';

/** How a hash is written in a Content-Security-Policy. */
const cspHash = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** The practice page as one file: it may run what is in it, and reach nothing outside. */
function practiceFile(script: string, style: string, notices: string): string {
  // Written so that no text in the script can end its element (HTML, 13.1.2.6).
  const run = script.replaceAll(/<(?=\/script|!--|script)/gi, '\\x3c');
  const policy = [
    "default-src 'none'",
    `script-src ${cspHash(run)}`,
    `style-src ${cspHash(style)}`,
    'img-src data: blob:',
    'font-src data:',
    'worker-src blob:',
    "connect-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Practice page</title>
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
<div id="app"></div>
<noscript>This practice page plays and draws by itself and needs a browser in which JavaScript is switched on. Where a preview shows this sentence, open the file in a browser.</noscript>
${LESSON_PLACE}
<script type="text/plain" id="notices">
${notices.replaceAll('<', '(')}
</script>
<script type="module">${run}</script>
</body>
</html>
`;
}

/** In the single file the worker's script is a text within the page's own. */
const inlineWorker: Plugin = {
  name: 'inline-worker',
  enforce: 'pre',
  resolveId: (source, importer) =>
    source === './start-worker' ? join(importer ?? '', '..', 'start-worker-inline.ts') : null,
};

/** The app itself, and not another page that is built with these settings. */
const isApp = ({ root }: UserConfig, { command }: ConfigEnv): boolean =>
  command === 'build' && root === undefined;

interface BuiltAlone {
  readonly script: string;
  /** Empty where the script brings no style. */
  readonly style: string;
  readonly moduleIds: readonly string[];
}

/** Builds a script that is a single file, with all that it imports in it, and writes nothing. */
async function buildAlone(
  entry: string,
  { output = {}, plugins = [] }: { readonly output?: Rolldown.OutputOptions; readonly plugins?: Plugin[] },
): Promise<BuiltAlone> {
  let moduleIds: readonly string[] = [];
  const collectModules: Plugin = {
    name: 'collect-modules',
    generateBundle() {
      moduleIds = [...this.getModuleIds()];
    },
  };
  const built = await build({
    configFile: false,
    root: import.meta.dirname,
    logLevel: 'warn',
    publicDir: false,
    plugins: [...plugins, collectModules],
    worker: { format: 'iife' },
    build: {
      ...buildOptions,
      write: false,
      assetsInlineLimit: () => true,
      cssCodeSplit: false,
      rolldownOptions: {
        ...buildOptions.rolldownOptions,
        input: join(import.meta.dirname, entry),
        output: { ...output, codeSplitting: false },
      },
    },
  });
  const files = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  const scripts = files.flatMap((file) => (file.type === 'chunk' ? [file.code] : []));
  const styles = files.flatMap((file) =>
    file.type === 'asset' && file.fileName.endsWith('.css') ? [String(file.source)] : [],
  );
  const [script, ...furtherScripts] = scripts;
  if (script === undefined || furtherScripts.length > 0 || styles.length > 1)
    throw new Error(`${entry} must become one script and at most one style sheet.`);
  return { script, style: styles[0] ?? '', moduleIds };
}

/** Builds the practice page that is a single file, and writes it beside the app, which puts a lesson into it. */
function practicePage(): Plugin {
  return {
    name: 'practice-page',
    apply: isApp,
    async generateBundle() {
      const { script, style, moduleIds } = await buildAlone('src/app/pages/practice/file.tsx', {
        plugins: [react(), inlineWorker].flat(),
      });
      this.emitFile({
        type: 'asset',
        fileName: 'practice-page.html',
        source: practiceFile(script, style, noticesOf(moduleIds)),
      });
    },
  };
}

/** Every file below a folder, by its path from there; none where there is no such folder. */
function filesBelow(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}

/** Writes `sw.js`: the service worker, headed by the list of all files of the build and a version made of them. */
function offline(): Plugin {
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
          ...filesBelow(publicFolder).map((name) => [name, readFileSync(join(publicFolder, name))] as const),
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

const buildOptions = {
  target: 'es2022',
  assetsInlineLimit: 0,
  chunkSizeWarningLimit: 2000,
  rolldownOptions: { checks: { pluginTimings: false } },
} as const;

export default defineConfig({
  base: './',
  plugins: [react(), securityPolicy(), thirdPartyNotices(), practicePage(), offline()],
  worker: { format: 'es' },
  build: buildOptions,
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
