import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { chmod, mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { arch, homedir, platform } from 'node:os';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { createBrotliDecompress } from 'node:zlib';
import { extract } from 'tar';

/** A browser to start, and what its process needs to find its libraries and fonts. */
export interface TestBrowser {
  readonly executablePath: string;
  readonly environment: Readonly<Record<string, string>>;
}

const projectRoot = fileURLToPath(new URL('../../', import.meta.url));

/**
 * The browser of the tests: the one named by `CHROME_PATH`; else, on 64-bit Intel Linux, the one that comes
 * with `npm ci`, so that a machine needs nothing but Node; else a Chrome or Chromium in its usual place.
 * @throws Error with a sentence that says what to do when there is none.
 */
export async function findTestBrowser(): Promise<TestBrowser> {
  const chosen = process.env.CHROME_PATH;
  if (chosen !== undefined && chosen !== '') {
    if (!existsSync(chosen)) throw new Error(`CHROME_PATH names ${chosen}, but there is no such file.`);
    return { executablePath: chosen, environment: {} };
  }
  if (platform() === 'linux' && arch() === 'x64') return unpackPackagedBrowser();
  const installed = usualPlaces().find((path) => existsSync(path));
  if (installed !== undefined) return { executablePath: installed, environment: {} };
  throw new Error(
    'The browser tests found no Chrome or Chromium. Install one, or set CHROME_PATH to its executable file.',
  );
}

function usualPlaces(): string[] {
  const windowsFolders = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => {
    const folder = process.env[name];
    return folder === undefined ? [] : [folder];
  });
  return [
    ...['', homedir()].flatMap((home) => [
      `${home}/Applications/Google Chrome.app/Contents/MacOS/Google Chrome`,
      `${home}/Applications/Chromium.app/Contents/MacOS/Chromium`,
    ]),
    ...windowsFolders.map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')),
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/snap/bin/chromium',
  ];
}

/**
 * Unpacks the packaged browser, its NSS libraries and a text font once for each version, below
 * `node_modules/.cache`. The package's own unpacking is passed by: it takes any file named `chromium` in
 * the machine's folder for temporary files as its own, and leaves the libraries out.
 */
async function unpackPackagedBrowser(): Promise<TestBrowser> {
  const packageRoot = dirname(
    dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'))),
  );
  const { version } = JSON.parse(await readFile(join(packageRoot, 'package.json'), 'utf8'));
  const cache = join(projectRoot, 'node_modules', '.cache');
  const home = join(cache, `test-browser-${version}`);
  if (!existsSync(home)) {
    await mkdir(cache, { recursive: true });
    const unfinished = await mkdtemp(join(cache, 'test-browser-'));
    await unpack(join(packageRoot, 'bin'), unfinished);
    await moveIntoPlace(unfinished, home);
  }
  await nameFonts(join(home, 'fonts.conf'), join(home, 'fonts'));
  return {
    executablePath: join(home, 'chromium'),
    environment: {
      LD_LIBRARY_PATH: [join(home, 'lib'), process.env.LD_LIBRARY_PATH ?? ''].filter(Boolean).join(':'),
      FONTCONFIG_FILE: join(home, 'fonts.conf'),
    },
  };
}

async function unpack(packed: string, folder: string): Promise<void> {
  const executable = join(folder, 'chromium');
  await Promise.all([
    pipeline(
      createReadStream(join(packed, 'chromium.br')),
      createBrotliDecompress(),
      createWriteStream(executable),
    ),
    ...['al2023.tar.br', 'fonts.tar.br'].map((archive) =>
      pipeline(
        createReadStream(join(packed, archive)),
        createBrotliDecompress(),
        extract({ cwd: folder, filter: (path) => path !== 'fonts.conf' }),
      ),
    ),
  ]);
  await chmod(executable, 0o755);
}

/** Two test runs may unpack at once: the first to finish wins, and the other throws its copy away. */
async function moveIntoPlace(unfinished: string, home: string): Promise<void> {
  try {
    await rename(unfinished, home);
  } catch (problem) {
    if (!existsSync(home)) throw problem;
    await rm(unfinished, { recursive: true });
  }
}

/** The settings hold the folder's whole path: a project that was moved since needs them anew. */
async function nameFonts(file: string, folder: string): Promise<void> {
  const settings = fontSettings(folder);
  const known = existsSync(file) ? await readFile(file, 'utf8') : '';
  if (known !== settings) await writeFile(file, settings);
}

/** Every machine sees the same fonts, its own or none: text has the same width everywhere. */
const fontSettings = (folder: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig>
  <dir>${folder}</dir>
  <cachedir>${folder}-cache</cachedir>
</fontconfig>
`;
