import { describe, expect, it } from 'vitest';
import { engrave } from '../../src/score/engrave';
import type { Ink, InkBox, InkRole, ScoreOptions, SystemLayout } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';

/** Texts stand clear of everything but the lines behind them. */
const TEXTS: ReadonlySet<InkRole> = new Set([
  'chord',
  'section',
  'bar-number',
  'repeat-count',
  'feel',
  'swing',
  'degree',
  'numeral',
  'finger',
  'counting',
  'row-name',
  'tuplet',
  'ending',
  'position',
  'fermata',
  'dynamic',
  'hairpin',
  'playing-sign',
  'words',
]);
/** Signs on the staff that must not touch each other. */
const SIGNS: ReadonlySet<InkRole> = new Set([
  'note',
  'rest',
  'accidental',
  'dot',
  'flag',
  'clef',
  'key-signature',
  'time-signature',
]);
const LINES: ReadonlySet<InkRole> = new Set(['staff-line', 'tab-line']);
/** A flag and a dot belong to their own note, and a whole-bar rest to no place of its own. */
const TOUCH = 0.35;

const overlap = (one: InkBox, other: InkBox): boolean =>
  one.left + TOUCH < other.right &&
  other.left + TOUCH < one.right &&
  one.top + TOUCH < other.bottom &&
  other.top + TOUCH < one.bottom;

/** Signs of several marks that may touch: a name and its box, a bracket and its number. */
const OWN_PARTS: ReadonlySet<InkRole> = new Set([
  'section',
  'ending',
  'tuplet',
  'time-signature',
  'hairpin',
  'playing-sign',
  'swing',
]);

/** Parts of one sign, and a note with its own flag. */
function belongTogether(one: Ink, other: Ink): boolean {
  if (one.role === other.role) return OWN_PARTS.has(one.role);
  const roles = new Set([one.role, other.role]);
  return roles.has('flag') && roles.has('note') && Math.abs(one.box.left - other.box.left) < 14;
}

/** The rectangle of a line that slants is not its ink; a hairpin may lie across a bar line. */
function mayOverlap(one: Ink, other: Ink): boolean {
  const roles = new Set([one.role, other.role]);
  const tall = [one, other].some(({ role, box }) => LINKS.has(role) && box.bottom - box.top > SLANTED);
  return (roles.has('hairpin') && roles.has('bar-line')) || (tall && roles.has('fret'));
}

const LINKS: ReadonlySet<InkRole> = new Set(['slur', 'slide']);
const SLANTED = 12;

function mustStandClear(one: Ink, other: Ink): boolean {
  if (mayOverlap(one, other)) return false;
  if (TEXTS.has(one.role) || TEXTS.has(other.role)) return true;
  if (one.role === 'fret' || other.role === 'fret') return true;
  if (SIGNS.has(one.role) && SIGNS.has(other.role)) return true;
  const roles = new Set([one.role, other.role]);
  return roles.has('accidental') && (roles.has('stem') || roles.has('ledger-line') || roles.has('bar-line'));
}

function collisions(system: SystemLayout): readonly string[] {
  const found: string[] = [];
  const ink = system.ink
    .filter(({ role }) => !LINES.has(role))
    .sort((one, other) => one.box.left - other.box.left);
  ink.forEach((one, index) => {
    for (let next = index + 1; next < ink.length; next += 1) {
      const other = ink[next];
      if (!other || other.box.left >= one.box.right) break;
      if (!overlap(one.box, other.box) || !mustStandClear(one, other) || belongTogether(one, other)) continue;
      const name = (mark: Ink) => `${mark.role} ${mark.kind === 'text' ? mark.text : ''}`.trim();
      found.push(`system ${system.index}: ${name(one)} on ${name(other)} at ${Math.round(one.box.left)}`);
    }
  });
  return found;
}

function clipped(system: SystemLayout): readonly string[] {
  const width = system.width / system.scale;
  const height = system.height / system.scale;
  return system.ink
    .filter(({ box }) => box.left < -0.1 || box.top < 0 || box.right > width + 0.5 || box.bottom > height)
    .map((ink) => `${ink.role} ${ink.kind === 'text' ? ink.text : ''} outside system ${system.index}`);
}

const WIDTHS = [230, 340, 700, 1000];
const ALL_ROWS = { degrees: true, fingers: true, counting: true, numerals: true, positions: true };
const ROWS: readonly Partial<ScoreOptions>[] = [
  ALL_ROWS,
  { degrees: false, fingers: false, counting: false, numerals: false },
  { ...ALL_ROWS, parts: 'tab' },
];

describe.each(Object.entries(SCORE_FIXTURES))('%s', (_, make) => {
  const sheet = make();
  it.each(WIDTHS)('has no ink on other ink, and none cut off, at %i px', (width) => {
    for (const rows of ROWS) {
      const layout = engrave(sheet, { ...ALL_ROWS, ...rows, width, barsPerSystem: 4, measureNumbers: true });
      expect(layout.systems.flatMap((system) => [...collisions(system), ...clipped(system)])).toEqual([]);
    }
  });
});
