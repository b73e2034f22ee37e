/**
 * Closes a test run: reads Vitest's JSON report, prints the count in one plain line, and fails when a suite of
 * published data was skipped although `REFERENCE_DATA` is there.
 */
import { readFileSync } from 'node:fs';

const report = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8'));
const tests = report.testResults.flatMap(({ name, status, assertionResults }) =>
  status === 'failed' && assertionResults.length === 0
    ? [{ file: name, title: 'the file itself', status }]
    : assertionResults.map((result) => ({ file: name, title: result.fullName, status: result.status })),
);
const passed = tests.filter(({ status }) => status === 'passed');
const failed = tests.filter(({ status }) => status === 'failed');
const skipped = tests.filter(({ status }) => status !== 'passed' && status !== 'failed');

const neglected = process.env.REFERENCE_DATA === undefined ? [] : skipped;
for (const { file, title } of neglected) {
  process.stdout.write(`Skipped although the reference data is there: ${title} (${file})\n`);
}

const counts = [`${passed.length} passed`, `${failed.length + neglected.length} failed`];
if (skipped.length > neglected.length) counts.push(`${skipped.length} skipped`);
process.stdout.write(`${counts.join(', ')}\n`);
if (failed.length + neglected.length > 0 || passed.length === 0) process.exitCode = 1;
