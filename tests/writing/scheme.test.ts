import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  COMMANDS,
  commandFor,
  keysOf,
  keyText,
  readOwnKeys,
  whyNoKey,
  withKey,
} from '../../src/core/writing';

const guide = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** A sign that would end the table's cell is written as code. */
const cell = (key: string): string => `\`${keyText(key)}\``;

const press = (key: string) => ({ key, code: '', shift: false, alt: false, ctrl: false });

describe('the scheme of keys', () => {
  it('stands in the guide as it is', () => {
    const rows = COMMANDS.map(({ keys, words }) => `| ${keys.map(cell).join(' or ')} | ${words} |`);
    const table = guide.slice(guide.indexOf('| Key | What it does |'));
    expect(table.split('\n').slice(2, 2 + rows.length)).toEqual(rows);
  });

  it.each(['degrees', 'frets'] as const)('gives no key two meanings while digits are %s', (digits) => {
    const keys = COMMANDS.filter(({ when }) => when === undefined || when === digits).flatMap((command) =>
      keysOf(command, {}),
    );
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
  });

  it('lets a user change a key, and says which command lost it', () => {
    const [degree] = COMMANDS;
    if (degree === undefined) throw new Error('no command');
    const { own, lost } = withKey({}, degree, 'r');
    expect(lost?.id).toBe('repeat');
    expect(commandFor(press('r'), 'degrees', own)?.id).toBe('degree 1');
    expect(commandFor(press('1'), 'degrees', own)).toBeNull();
    expect(readOwnKeys(JSON.parse(JSON.stringify(own)))).toEqual(own);
    expect(readOwnKeys({ 'no such command': ['x'], repeat: 7 })).toEqual({});
  });

  it('leaves the keys to the page with which steps are taken back and brought back', () => {
    const own = COMMANDS.flatMap((command) => keysOf(command, {}));
    for (const [key, does] of [
      ['Ctrl+Z', 'Ctrl Z takes a step back'],
      ['Ctrl+Shift+Z', 'Ctrl Shift Z brings a step back'],
      ['Ctrl+Y', 'Ctrl Y brings a step back'],
    ] as const) {
      expect(own).not.toContain(key);
      expect(whyNoKey(key)).toBe(`${does} on the whole page: choose another key.`);
    }
    expect(own.filter((key) => whyNoKey(key) !== null)).toEqual([]);
  });

  it('finds digits and brackets by their place where a keyboard has them elsewhere', () => {
    expect(commandFor({ ...press('é'), code: 'Digit2' }, 'degrees', {})?.id).toBe('degree 2');
    expect(commandFor({ ...press('ü'), code: 'BracketLeft' }, 'degrees', {})?.id).toBe('shorter');
  });
});
