/**
 * Checks the import arrows of `src` below the current folder by the rules of `.dependency-cruiser.cjs`, and that
 * the check checks something: with a compiler it does not know, the cruiser sees no module and finds no fault.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { cruise } from 'dependency-cruiser';
import extractOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';

const files = readdirSync('src', { recursive: true })
  .map((name) => join('src', String(name)).replaceAll('\\', '/'))
  .filter((name) => /\.tsx?$/.test(name));

const options = await extractOptions(resolve('.dependency-cruiser.cjs'));
const { output, exitCode } = await cruise(['src'], {
  ...options,
  validate: true,
  outputType: 'json',
});
const { modules, summary } = JSON.parse(String(output));

const faults = summary.violations.map(
  ({ rule, from, to, cycle }) =>
    `${rule.name}: ${from} → ${cycle === undefined ? to : cycle.map(({ name }) => name).join(' → ')}`,
);

const cruised = new Set(modules.map(({ source }) => source));
const unseen = files.filter((file) => !cruised.has(file));
if (files.length === 0 || unseen.length === files.length) faults.push('nothing-cruised: no module was seen');
else faults.push(...unseen.map((file) => `not-cruised: ${file}`));

/** A worker is started by address, an arrow that the cruiser does not see: it may point into the own room only. */
const addressed = /new URL\(\s*(['"`])(?<target>.*?)\1\s*,\s*import\.meta\.url/g;
for (const file of files) {
  for (const { groups } of readFileSync(file, 'utf8').matchAll(addressed)) {
    const target = join(dirname(file), groups?.target ?? '').replaceAll('\\', '/');
    if (!target.startsWith(`${dirname(file)}/`))
      faults.push(`address-leaves-its-folder: ${file} → ${target}`);
    else if (!cruised.has(target)) faults.push(`address-of-nothing: ${file} → ${target}`);
  }
}

if (faults.length > 0 || exitCode !== 0) {
  process.stderr.write(`${faults.join('\n')}\n${faults.length} faults in the arrows between rooms.\n`);
  process.exitCode = 1;
} else {
  process.stdout.write(
    `The arrows of ${files.length} files hold (${summary.totalDependenciesCruised} imports).\n`,
  );
}
