/**
 * Runs every check of the project, two at once, and tells what each of them said when it is through: `npm run check`.
 * Each is a script of `package.json`, so that it can be run alone; the longest stands first.
 */
import { spawn } from 'node:child_process';

const CHECKS = ['check:types', 'check:lint', 'check:arrows', 'check:unused'];

const run = (script) =>
  new Promise((resolve) => {
    const child = spawn('npm', ['run', '--silent', script], {
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    const said = [];
    child.stdout.on('data', (part) => said.push(part));
    child.stderr.on('data', (part) => said.push(part));
    child.on('error', (problem) => resolve({ passed: false, said: String(problem) }));
    child.on('close', (code) => resolve({ passed: code === 0, said: Buffer.concat(said).toString() }));
  });

const waiting = [...CHECKS];
const failed = [];

async function runInTurn() {
  for (let script = waiting.shift(); script !== undefined; script = waiting.shift()) {
    const { passed, said } = await run(script);
    process.stdout.write(`\n> ${script}: ${passed ? 'passed' : 'FAILED'}\n${said}`);
    if (!passed) failed.push(script);
  }
}

await Promise.all([runInTurn(), runInTurn()]);
if (failed.length > 0) {
  process.stdout.write(`\nFailed: ${failed.join(', ')}\n`);
  process.exitCode = 1;
}
