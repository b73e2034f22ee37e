/** Ways of writing chords that are not lead-sheet symbols, brought into lead-sheet form for the tests. */

/** MusicXML 4.0 kind values (W3C Music Notation Community Group, 2021) as lead-sheet descriptors. */
const KINDS: Readonly<Record<string, string>> = {
  major: '',
  minor: 'm',
  augmented: 'aug',
  diminished: 'dim',
  dominant: '7',
  'major-seventh': 'maj7',
  'minor-seventh': 'm7',
  'diminished-seventh': 'dim7',
  'augmented-seventh': '7#5',
  'half-diminished': 'm7b5',
  'major-minor': 'm(maj7)',
  'major-sixth': '6',
  'minor-sixth': 'm6',
  'dominant-ninth': '9',
  'major-ninth': 'maj9',
  'minor-ninth': 'm9',
  'dominant-11th': '11',
  'major-11th': 'maj11',
  'minor-11th': 'm11',
  'dominant-13th': '13',
  'major-13th': 'maj13',
  'minor-13th': 'm13',
  'suspended-second': 'sus2',
  'suspended-fourth': 'sus4',
  power: '5',
};

/**
 * A MusicXML harmony as `kind=…; text=…; degrees=[('5', '-1', 'alter')]; bass=…` describes it; null for a kind
 * that the standard does not define.
 */
export function symbolOfHarmony(root: string, description: string): string | null {
  const kind = /kind=([^;]*)/.exec(description)?.[1] ?? '';
  const descriptor = KINDS[kind];
  if (descriptor === undefined) return null;
  const degrees = [...description.matchAll(/\('(\d+)', '(-?\d)', '(\w+)'\)/g)].map(
    ([, step = '', alter = '', type]) => {
      const sign = { '-1': 'b', '1': '#' }[alter] ?? '';
      if (type === 'subtract') return `no${step}`;
      return type === 'alter' || sign !== '' ? sign + step : `add${step}`;
    },
  );
  const bass = /bass=([A-G][b#]*)/.exec(description)?.[1];
  const suspended = kind === 'suspended-fourth' && degrees[0] === 'add7';
  if (suspended) return `${root}${degrees[1] === 'add9' ? '9' : '7'}sus4${bass ? `/${bass}` : ''}`;
  const changes = degrees.length > 0 ? `(${degrees.join(',')})` : '';
  return `${root}${descriptor}${changes}${bass ? `/${bass}` : ''}`;
}

/**
 * Shorthands of Harte, Sandler, Abdallah and Gómez, ISMIR 2005, 66–71, as lead-sheet descriptors with the same
 * notes: their elevenths and thirteenths are stacks of thirds, which a chart must say.
 */
const SHORTHANDS: Readonly<Record<string, string>> = {
  '': '',
  maj: '',
  min: 'm',
  dim: 'dim',
  aug: 'aug',
  maj7: 'maj7',
  min7: 'm7',
  '7': '7',
  dim7: 'dim7',
  hdim7: 'm7b5',
  minmaj7: 'm(maj7)',
  maj6: '6',
  min6: 'm6',
  '9': '9',
  maj9: 'maj9',
  min9: 'm9',
  '11': '9(add11)',
  maj11: 'maj9(add11)',
  min11: 'm11',
  '13': '13(add11)',
  maj13: 'maj13(add11)',
  min13: 'm13',
  sus2: 'sus2',
  sus4: 'sus4',
  '5': '5',
};

/** Steps of the staff and half steps above the root of a degree such as `b7` or `#11`. */
function interval(degree: string): { steps: number; halfSteps: number } {
  const step = Number(/\d+/.exec(degree)?.[0]);
  const flats = degree.split('b').length - 1;
  const sharps = degree.split('#').length - 1;
  const octave = Math.floor((step - 1) / 7);
  return {
    steps: step - 1,
    halfSteps: ([0, 2, 4, 5, 7, 9, 11][(step - 1) % 7] ?? 0) + 12 * octave - flats + sharps,
  };
}

/**
 * Bare lists of intervals that make a chord with a symbol. The others are a single note, two notes other than a
 * fifth or a third, or fourths.
 */
const LISTS: Readonly<Record<string, string>> = {
  '1,5': '5',
  '1,3,b5': '(b5)',
  '1,b3,b5,6': 'dim7',
  '1,2,4,5': 'sus4(add9)',
  '3': '(no5)',
  b3: 'm(no5)',
  '3,7': 'maj7(no5)',
  'b3,b7': 'm7(no5)',
  'b3,b7,11,9': 'm11(no5)',
  'b5,b7,3': '7(b5)',
};

export interface HarteLabel {
  readonly root: string;
  readonly descriptor: string;
  readonly bass: { steps: number; halfSteps: number } | null;
}

/**
 * A label such as `Bb:min7(9)/b3` in lead-sheet form, or null where there is none: a single note, a chord
 * without its root, without third and fifth, or other bare intervals.
 */
export function readHarte(label: string): HarteLabel | null {
  const match = /^([A-G][b#]*)(?::([a-z]*\d*)?(?:\(([^)]*)\))?)?(?:\/([b#]*\d+))?$/.exec(label);
  const root = match?.[1];
  if (!match || root === undefined) return null;
  const list = match[3] ?? '';
  const shorthand = match[2] ?? (match[3] === undefined ? '' : undefined);
  const written = shorthand === undefined ? LISTS[list] : withChanges(shorthand, list);
  return written == null ? null : { root, descriptor: written, bass: match[4] ? interval(match[4]) : null };
}

/** Changes that make another everyday chord of a shorthand. */
const TOGETHER: Readonly<Record<string, string>> = {
  'sus4(b7)': '7sus4',
  'sus4(b7,9)': '9sus4',
  'sus4(b7,9,13)': '13sus4',
  'sus2(b7)': '7sus2',
  'aug(b7)': '7#5',
  'aug(7)': 'maj7(#5)',
  'maj(*3)': '5',
  '5(b7)': '7(no3)',
  '5(13)': '6(no3)',
  '5(b13)': '(b6,no3)',
  'min(*b3)': '5',
  'aug(b7,9)': '9(#5)',
  'aug(b7,b9)': '7(#5,b9)',
  'maj6(b7)': '7(add13)',
  'maj6(b7,11)': '7(add11,add13)',
  'maj6(b2)': '6(b9)',
  'min6(b7)': 'm7(add13)',
  'sus4(b13,b7)': '7sus4(b6)',
  'sus4(b7,9,#11)': '9sus4(#11)',
  '7(b2)': '7(b9)',
  '7(b5,*5)': '7(b5)',
  'maj6(9)': '69',
  'min6(9)': 'm69',
};

/**
 * Both sevenths, both elevenths, a sixth and a seventh over a second, alterations of what is left out: no
 * symbol says so.
 */
const WITHOUT_FORM = new Set([
  '11(b9,b13)',
  '13(#11)',
  '7(4,b5)',
  'maj7(b7)',
  'sus2(6,b7)',
  'maj(*3,b5)',
  'maj(*3,b6)',
]);

/** What these labels list is heard beside the fifth, where the same sign in a chart takes the fifth away. */
const BESIDE_THE_FIFTH: Readonly<Record<string, string>> = { b5: '#11', '#5': 'b6', b13: 'b6' };

/** `list` are the changes behind the shorthand, `9,*5`; null where no symbol says so. */
function withChanges(shorthand: string, list: string): string | null {
  const descriptor = SHORTHANDS[shorthand];
  if (descriptor === undefined || WITHOUT_FORM.has(`${shorthand}(${list})`)) return null;
  const together = TOGETHER[`${shorthand}(${list})`];
  if (together !== undefined) return together;
  const changes = list.split(',').filter((change) => change !== '');
  const written = changes.map((change) => {
    const omitted = /^\*[b#]*(\d)$/.exec(change)?.[1];
    if (omitted !== undefined) return omitted === '3' || omitted === '5' ? `no${omitted}` : null;
    if (/^[b#]\d+$/.test(change)) return BESIDE_THE_FIFTH[change] ?? change;
    return change === '7' ? 'addmaj7' : `add${change}`;
  });
  if (written.includes(null)) return null;
  const omissions = written.filter((change) => change?.startsWith('no'));
  if (omissions.length > 1 || (shorthand === '5' && written.length > 0)) return null;
  return written.length === 0 ? descriptor : `${descriptor}(${written.join(',')})`;
}
