/**
 * Runs every test, in three runs of Vitest, and tells of them as of one: `npm test`. What listens in real time keeps a
 * core and more idle, so what only computes goes on beside it; it gives way wherever both want a core, so that the
 * listening has the time it has alone. The other browser tests keep both cores busy and come after that. The arguments
 * are those of the report.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { constants, getPriority, setPriority, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));

/** The projects of each run. */
const LISTENING = ['sounding'];
const COMPUTING = ['unit', 'rules'];
const LOOKING = ['browser'];

/**
 * @param givesWay - whether it is behind the other run where both want a core
 * @returns whether it ended well
 */
const runVitest = (given, givesWay = false) =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [vitest, ...given], { stdio: ['ignore', 'inherit', 'inherit'] });
    child.on('error', (problem) => {
      process.stderr.write(`${problem}\n`);
      resolve(false);
    });
    child.on('spawn', () => {
      // Whoever is behind others already is not let before them.
      if (givesWay) setPriority(child.pid, Math.max(getPriority(), constants.priority.PRIORITY_BELOW_NORMAL));
    });
    child.on('close', (code) => resolve(code === 0));
  });

const reports = await mkdtemp(join(tmpdir(), 'ground-bass-reports-'));
const run = (projects, givesWay = false) =>
  runVitest(
    [
      'run',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=dot',
      '--reporter=blob',
      `--outputFile.blob=${join(reports, `${projects[0]}.json`)}`,
    ],
    givesWay,
  );

const passed = await Promise.all([run(LISTENING), run(COMPUTING, true)]);
passed.push(await run(LOOKING));
const told = await runVitest(['run', `--merge-reports=${reports}`, ...process.argv.slice(2)]);
await rm(reports, { recursive: true });
if (!told || passed.includes(false)) process.exitCode = 1;
