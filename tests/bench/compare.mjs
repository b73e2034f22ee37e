/**
 * Two commits side by side: `npm run bench:compare -- BEFORE AFTER [benchmarks …]`. Each is checked out in a folder of
 * its own beside the packages of this one, and their benchmarks run in turns, so that what else the machine does meets both alike.
 * `ROUNDS` says how often (2 when left out). Prints a table of the least and the median time of each, in milliseconds.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { availableParallelism, cpus, loadavg, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** A time that differs by more than this share is marked: less is the machine's own doing. */
const MARKED = 0.1;

const [before, after, ...files] = process.argv.slice(2);
const rounds = Number(process.env.ROUNDS ?? 2);
if (before === undefined || after === undefined || !Number.isInteger(rounds) || rounds < 1) {
  process.stderr.write('Usage: npm run bench:compare -- BEFORE AFTER [benchmarks …]\n');
  process.exit(2);
}

const git = (...args) => execFileSync('git', args, { encoding: 'utf8' }).trim();
const shelter = mkdtempSync(join(tmpdir(), 'ground-bass-'));

/** A commit in a folder of its own. */
function checkOut(commit, name) {
  const id = git('rev-parse', '--verify', '--short', `${commit}^{commit}`);
  const folder = join(shelter, name);
  git('worktree', 'add', '--detach', '--quiet', folder, id);
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  return { id, folder, times: new Map() };
}

/** Runs the benchmarks of a commit once; the least of all rounds counts, and the least of their medians. */
function measure({ folder, times }) {
  const report = join(folder, 'bench.json');
  execFileSync(
    process.execPath,
    [
      join('node_modules', 'vitest', 'vitest.mjs'),
      ...['bench', '--run', '--outputJson', report, ...(files.length > 0 ? files : ['--project', 'unit'])],
    ],
    { cwd: folder, stdio: ['ignore', 'ignore', 'inherit'] },
  );
  for (const { groups } of JSON.parse(readFileSync(report, 'utf8')).files)
    for (const { fullName, benchmarks } of groups)
      for (const { name, min, median } of benchmarks) {
        const key = `${fullName.slice(fullName.indexOf(' > ') + 3)}: ${name}`;
        const known = times.get(key);
        times.set(key, {
          min: Math.min(min, known?.min ?? Number.POSITIVE_INFINITY),
          median: Math.min(median, known?.median ?? Number.POSITIVE_INFINITY),
        });
      }
}

const ms = (time) => (time === undefined ? '–' : time.toPrecision(3));
const ratio = (one, other) => {
  if (one === undefined || other === undefined) return '–';
  const times = other / one;
  const mark = times > 1 + MARKED ? ' slower' : times < 1 - MARKED ? ' faster' : '';
  return `${times.toFixed(2)}${mark}`;
};

// Stopped by hand, the benchmarks end and what was checked out is put away.
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(130));

const load = () => loadavg()[0]?.toFixed(1);
const loadBefore = load();
let folders = [];
try {
  folders = [checkOut(before, 'before'), checkOut(after, 'after')];
  for (let round = 0; round < rounds; round += 1) for (const one of folders) measure(one);
  const [one, other] = folders;
  const names = [...new Set([...one.times.keys(), ...other.times.keys()])];
  const rows = names.map((name) => {
    const [was, is] = [one.times.get(name), other.times.get(name)];
    const cells = [ms(was?.min), ms(is?.min), ratio(was?.min, is?.min)];
    return [name, ...cells, ms(was?.median), ms(is?.median), ratio(was?.median, is?.median)];
  });
  const day = new Date().toISOString().slice(0, 10);
  const machine = `${cpus()[0]?.model ?? 'a processor'}, ${availableParallelism()} cores, Node ${process.versions.node}`;
  const head = ['', `least ${one.id}`, other.id, 'ratio', `median ${one.id}`, other.id, 'ratio'];
  const line = (cells) => `| ${cells.join(' | ')} |\n`;
  const laden = `load ${loadBefore} before and ${load()} after`;
  process.stdout.write(`${machine}, ${day}; milliseconds, ${rounds} rounds in turns, ${laden}\n\n`);
  process.stdout.write(line(head) + line(head.map(() => '---')) + rows.map(line).join(''));
} finally {
  for (const { folder } of folders) {
    rmSync(join(folder, 'node_modules'), { force: true });
    git('worktree', 'remove', '--force', folder);
  }
  rmSync(shelter, { recursive: true, force: true });
}
