import type { Random } from '../../src/core/base';

/** So many bytes of chance. */
export const bytesOf = (draw: Random, length: number): Uint8Array =>
  Uint8Array.from({ length }, () => draw.below(256));

/** Bytes with some of them changed, or cut off. */
export function damaged(bytes: Uint8Array, draw: Random): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const times = 1 + draw.below(6);
  for (let time = 0; time < times; time += 1) copy[draw.below(copy.length)] = draw.below(256);
  return draw.below(4) === 0 ? copy.subarray(0, draw.below(copy.length)) : copy;
}

/** Numbers and words that a careless or an evil program writes. */
const VALUES = [
  '0',
  '-1',
  '1e99',
  '99999999999999999999',
  '0.0001',
  'NaN',
  '',
  '-7',
  '1000000',
  'C',
  '64',
  '256',
  '__proto__',
];

/** A document that stays well-formed, with some of its values changed and some of its elements gone or doubled. */
export function changed(document: string, draw: Random): string {
  const pieces = document.split(/(?<=>)(?=[^<]*<\/)|(?=<\/)/);
  const times = 1 + draw.below(8);
  for (let time = 0; time < times; time += 1) {
    const place = draw.below(pieces.length);
    const piece = pieces[place] ?? '';
    if (!piece.includes('<')) pieces[place] = VALUES[draw.below(VALUES.length)] ?? '';
  }
  const whole = pieces.join('');
  const elements = [
    ...whole.matchAll(/<(note|attributes|backup|barline|harmony|measure|direction)\b[\s\S]*?<\/\1>\n?/g),
  ];
  const chosen = elements[draw.below(Math.max(1, elements.length))];
  if (chosen === undefined) return whole;
  const after = chosen.index + chosen[0].length;
  return (
    whole.slice(0, chosen.index) + (draw.below(2) === 0 ? chosen[0] + chosen[0] : '') + whole.slice(after)
  );
}

/** Signs that stand in tabs, and some that do not. */
const TAB_SIGNS = [
  '-',
  '|',
  '0',
  '7',
  '12',
  '99',
  'h',
  'p',
  '/',
  'x',
  '(',
  ')',
  '~',
  ' ',
  ':',
  '*',
  'G',
  '\t',
  '—',
];

/** A tab with signs changed, doubled or gone, lines doubled, dropped or moved, and now and then a long run. */
export function scribbled(tab: string, draw: Random): string {
  const lines = tab.split('\n');
  const times = 1 + draw.below(8);
  for (let time = 0; time < times; time += 1) {
    const row = draw.below(lines.length);
    const line = lines[row] ?? '';
    const at = draw.below(line.length + 1);
    const sign = TAB_SIGNS[draw.below(TAB_SIGNS.length)] ?? '-';
    const way = draw.below(8);
    if (way === 0) lines.splice(row, 1);
    else if (way === 1) lines.splice(draw.below(lines.length + 1), 0, line);
    else if (way === 2) lines[row] = line.slice(0, at);
    else if (way === 3) lines[row] = line.slice(0, at) + sign.repeat(draw.below(400)) + line.slice(at);
    else lines[row] = line.slice(0, at) + sign + line.slice(at + draw.below(3));
  }
  return lines.join('\n');
}
