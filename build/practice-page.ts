import { createHash } from 'node:crypto';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { buildAlone, isApp } from './alone.ts';
import { noticesOf } from './notices.ts';

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
    'media-src data:',
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

/** Modules in whose place another one stands in the single file. */
const IN_THE_FILE = ['./start-worker', './address', './pencil-part', './version-part'];

/** In the single file the worker's script is a text within the page's own. */
const inlineWorker: Plugin = {
  name: 'inline-worker',
  enforce: 'pre',
  resolveId: (source, importer) =>
    IN_THE_FILE.includes(source) ? join(importer ?? '', '..', `${source}-inline.ts`) : null,
};

/** Builds the practice page that is a single file, and writes it beside the app, which puts a lesson into it. */
export function practicePage(): Plugin {
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
