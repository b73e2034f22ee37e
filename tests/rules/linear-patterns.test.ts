import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { whyNotLinear } from './linear-patterns';

const projectRoot = fileURLToPath(new URL('../../', import.meta.url));

const sources = ['src', 'build'].flatMap((folder) =>
  readdirSync(join(projectRoot, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name)),
);

/** The faults among the patterns of a source, each with its line. */
function faultsIn(name: string, text: string): readonly string[] {
  const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const faults: string[] = [];
  const visit = (node: ts.Node): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    if (ts.isRegularExpressionLiteral(node)) {
      const why = whyNotLinear(node.text);
      if (why !== null) faults.push(`${name}:${line} ${node.text}: ${why}`);
    }
    if ((ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText() === 'RegExp')
      faults.push(`${name}:${line} a pattern that is put together cannot be checked: write it as a literal`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return faults;
}

describe('regular expressions', () => {
  test('of the whole project take time in proportion to their input', () => {
    const faults = sources.flatMap((path) =>
      faultsIn(relative(projectRoot, path), readFileSync(path, 'utf8')),
    );
    expect(faults).toEqual([]);
  });

  test('planted in a source are found', () => {
    expect(faultsIn('planted.ts', 'const sound = /a+/;\nexport const planted = /^(?:a+)+$/;\n')).toEqual([
      expect.stringContaining('planted.ts:2'),
    ]);
    expect(faultsIn('planted.ts', 'const made = new RegExp(text);')).toHaveLength(1);
  });

  test.each([
    [/^(a+)+$/, 'two ways'],
    [/^(?:a|a)*$/, 'two ways'],
    [/^(?:a|ab|b)*$/, 'two ways'],
    // Endings such as `1.-3.`, as they were once read: 64 digits never came to an end.
    [/^\d{1,2}\.?(?:[,-]?\d{1,2}\.?)*\.$/, 'two ways'],
    [/^(?:\d+,?)+$/, 'two ways'],
    [/^(?:x(?:y?|z?))*$/, 'loop in a loop'],
    [/^(?:a{1,40}){1,40}$/, 'two ways'],
    [/^(?:a*)*$/, 'empty'],
    [/^\s*,?\s*$/, 'share'],
    [/^key\s*:?\s*(.*)!$/i, 'share'],
    [/^a*[ab]*c/, 'share'],
    [/\s+$/, 'every place'],
    [/a.*b/, 'every place'],
    [/(\w+)\s*\(/, 'every place'],
    [/(?=(?:a+)+b)c/, 'look to the side'],
    [/^(a)\1$/, 'reference'],
  ])('%s is refused', (pattern, why) => {
    expect(whyNotLinear(String(pattern))).toContain(why);
  });

  test.each([
    /\s+/g,
    /^\s*[+-]?\d{1,12}(?:\.\d{0,12})?\s*$/,
    /^[^)]*\)/,
    /^(?:ab|cd)*$/,
    /^\d+(?:,\d+)*$/,
    /^"[^"]*"\s*=\s*"[^"]*"$/,
    /\p{M}/gu,
    /a{1,40}b/,
    /(?<=\d)dim5/,
  ])('%s is let through', (pattern) => {
    expect(whyNotLinear(String(pattern))).toBeNull();
  });
});
