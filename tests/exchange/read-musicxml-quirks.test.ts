/** Small MusicXML documents, one thing at a time, and what a teacher gets of them. */
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { harmonyText, playOrder } from '../../src/core/chart';
import type { LineSheet } from '../../src/core/lesson';
import { describeKey, formatPitch } from '../../src/core/theory';
import { lineSheetOf, readBack, refusal } from './read-back';

const BASS =
  '<divisions>2</divisions><key><fifths>0</fifths><mode>major</mode></key><time><beats>4</beats><beat-type>4</beat-type></time>' +
  '<clef><sign>F</sign><line>4</line></clef><transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>';

/** A score of one part in 4/4, two divisions a quarter, written an octave above its sound. */
const score = (...measures: readonly string[]): string =>
  document([
    [
      'P1',
      'Bass',
      measures.map((measure, index) =>
        index === 0 ? `<attributes>${BASS}</attributes>${measure}` : measure,
      ),
    ],
  ]);

type Part = readonly [id: string, name: string, measures: readonly string[]];

const measureElement = (content: string, index: number): string =>
  content.startsWith('<measure') ? content : `<measure number="${index + 1}">${content}</measure>`;

const document = (parts: readonly Part[]): string =>
  `<?xml version="1.0"?><!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd"><score-partwise version="4.0"><part-list>${parts
    .map(([id, name]) => `<score-part id="${id}"><part-name>${name}</part-name></score-part>`)
    .join('')}</part-list>${parts
    .map(([id, , measures]) => `<part id="${id}">${measures.map(measureElement).join('')}</part>`)
    .join('')}</score-partwise>`;

/** `F2` (written) for two divisions, a quarter, unless said otherwise; what stands in `more` follows the duration. */
function note(pitch: string, duration = 2, more = '', before = ''): string {
  const [, step = '', sign = '', octave = ''] = /^([A-G])([b#]?)(\d)$/.exec(pitch) ?? [];
  const alter = sign === '' ? '' : `<alter>${sign === 'b' ? -1 : 1}</alter>`;
  return `<note>${before}<pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch><duration>${duration}</duration>${more}</note>`;
}

const tie = (...types: readonly string[]): string => types.map((type) => `<tie type="${type}"/>`).join('');
const rest = (duration: number): string => `<note><rest/><duration>${duration}</duration></note>`;

/** Bar by bar `pitch@start+duration`, in quarters, `~` where the note goes on. */
const lineOf = (sheet: LineSheet): readonly string[] =>
  sheet.bars.map(({ notes }) =>
    notes
      .map(
        ({ note: { pitch, start, duration, tiedOn } }) =>
          `${formatPitch(pitch)}@${start / 960}+${duration / 960}${tiedOn ? '~' : ''}`,
      )
      .join(' '),
  );

const chordsOf = (sheet: LineSheet): readonly string[] =>
  sheet.bars.map(({ written }) => written.spans.map(({ harmony }) => harmonyText(harmony)).join(' '));

const read = (xml: string, part: string | null = null) => {
  const { lesson, sentences, parts } = readBack(xml, part);
  return { sheet: lineSheetOf(lesson), said: sentences.join('\n'), parts };
};

describe('the notes of a file', () => {
  it('sound where the transposition puts them and keep their spelling', () => {
    const { sheet } = read(score(note('Eb3') + note('D#3') + note('B2') + note('C3')));
    expect(lineOf(sheet)).toEqual(['E♭2@0+1 D♯2@1+1 B1@2+1 C2@3+1']);
  });

  it('are triplets where the divisions make them so, and ties make one note of two', () => {
    const third = (pitch: string) =>
      note(
        pitch,
        1,
        '<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>',
      );
    const first = `<attributes>${BASS.replace('<divisions>2', '<divisions>3')}</attributes>${third('C3')}${third('D3')}${third('E3')}${note('F3', 3, tie('start'))}${note('F3', 3, tie('stop'))}${note('G3', 3, tie('start'))}`;
    const { sheet } = read(document([['P1', 'Bass', [first, note('G3', 12, tie('stop'))]]]));
    expect(lineOf(sheet)).toEqual([
      `C2@0+${1 / 3} D2@${1 / 3}+${1 / 3} E2@${2 / 3}+${1 / 3} F2@1+2 G2@3+1~`,
      'G2@0+4',
    ]);
  });

  it('that sound together leave the lowest, and what else there is is said with its bar', () => {
    const chord = note('E3') + note('C3', 2, '', '<chord/>');
    const grace = note('A2', 2, '', '<grace/>').replace('<duration>2</duration>', '');
    const second = `<backup><duration>8</duration></backup>${note('G3', 8, '<voice>2</voice>')}`;
    const { sheet, said } = read(score(rest(8), chord + grace + note('D3') + rest(4) + second));
    expect(lineOf(sheet)).toEqual(['', 'C2@0+1 D2@1+1']);
    expect(said).toContain('Of notes that sound together only the lowest is kept (bar 2).');
    expect(said).toContain('Left out: grace notes (bar 2).');
    expect(said).toContain('One voice is read; there are others (bar 2).');
  });

  it('that go over the end of their bar or off the neck are said', () => {
    const { sheet, said } = read(score(note('C3', 6) + note('D3', 6), note('C2', 8), note('C7', 8)));
    expect(lineOf(sheet)).toEqual(['C2@0+3 D2@3+1', 'C1@0+4', 'C6@0+4']);
    expect(said).toContain('A note that is longer than its bar is cut off at its end (bar 1).');
    expect(said).toContain(
      '1 note lies below the lowest string and cannot be fingered in this tuning: the first is C1 (bar 2).',
    );
    expect(said).toContain(
      '1 note lies above the last fret and cannot be fingered in this tuning: the first is C6 (bar 3).',
    );
  });

  it('finer than a sheet writes are kept, and said', () => {
    const fifths = `<attributes>${BASS.replace('<divisions>2', '<divisions>5')}</attributes>${['C3', 'D3', 'E3', 'F3', 'G3'].map((pitch) => note(pitch, 1)).join('')}${rest(15)}`;
    const { sheet, said } = read(document([['P1', 'Bass', [fifths]]]));
    expect(sheet.bars[0]?.notes.map(({ note: { start } }) => start)).toEqual([0, 192, 384, 576, 768]);
    expect(said).toContain(
      'A rhythm finer than 32nds or triplets is played as it is, but drawn at the nearest 32nd (bar 1).',
    );
  });

  it('keep string, fret and finger where these sound the note, in whatever octave the tab is written', () => {
    const tab = (octave: number, fret: number) =>
      `<attributes><divisions>2</divisions><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>TAB</sign></clef><staff-details><staff-lines>4</staff-lines>${['E', 'A', 'D', 'G'].map((step, index) => `<staff-tuning line="${index + 1}"><tuning-step>${step}</tuning-step><tuning-octave>${octave + (index > 1 ? 1 : 0)}</tuning-octave></staff-tuning>`).join('')}</staff-details><transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose></attributes>` +
      note(
        'C3',
        8,
        `<notations><technical><string>4</string><fret>${fret}</fret><fingering>3</fingering></technical></notations>`,
      );
    for (const octave of [1, 2]) {
      const { sheet, said } = read(document([['P1', 'E-Bass', [tab(octave, 8)]]]));
      expect(sheet.instrument.openStrings.map(formatPitch)).toEqual(['G2', 'D2', 'A1', 'E1']);
      expect(sheet.bars[0]?.notes[0]?.fingered).toMatchObject({ string: 4, fret: 8, finger: 3 });
      expect(said).not.toContain('string and fret');
    }
    expect(read(document([['P1', 'E-Bass', [tab(1, 7)]]])).said).toContain(
      'A string and fret that do not sound the written note are left out (bar 1).',
    );
  });
});

/** Kind, degrees and bass of a chord on C, and how it is written (kinds and degrees: MusicXML 4.0, kind-value). */
const SYMBOLS: readonly (readonly [symbol: string, kind: string, rest?: string])[] = [
  ['C', 'major'],
  ['Cm', 'minor'],
  ['C7', 'dominant'],
  ['Cmaj7', 'major-seventh'],
  ['Cm7', 'minor-seventh'],
  ['Cm7♭5', 'half-diminished'],
  ['Cdim', 'diminished'],
  ['Cdim7', 'diminished-seventh'],
  ['Caug', 'augmented'],
  ['C7♯5', 'augmented-seventh'],
  ['Cm(maj7)', 'major-minor'],
  ['C6', 'major-sixth'],
  ['Cm6', 'minor-sixth'],
  ['Csus2', 'suspended-second'],
  ['Csus4', 'suspended-fourth'],
  ['C5', 'power'],
  ['C9', 'dominant-ninth'],
  ['Cmaj9', 'major-ninth'],
  ['Cm9', 'minor-ninth'],
  ['C11', 'dominant-11th'],
  ['Cmaj9add11', 'major-11th'],
  ['Cm11', 'minor-11th'],
  ['C13', 'dominant-13th'],
  ['Cmaj13', 'major-13th'],
  ['Cm13', 'minor-13th'],
  ['N.C.', 'none'],
  ['C7♭9', 'dominant', degree(9, -1, 'add')],
  ['C7♯5', 'dominant', degree(5, 1, 'alter')],
  ['Cadd9', 'major', degree(9, 0, 'add')],
  ['C7/B♭', 'dominant', '<bass><bass-step>B</bass-step><bass-alter>-1</bass-alter></bass>'],
];

function degree(value: number, alter: number, type: string): string {
  return `<degree><degree-value>${value}</degree-value><degree-alter>${alter}</degree-alter><degree-type>${type}</degree-type></degree>`;
}

const harmony = (kind: string, rest = '', text: string | null = null, offset = ''): string =>
  `<harmony><root><root-step>C</root-step></root><kind${text === null ? '' : ` text="${text}"`}>${kind}</kind>${rest}${offset}</harmony>`;

describe('chord symbols', () => {
  it.each(SYMBOLS.map(([symbol, kind, rest = '']) => [symbol, kind, rest] as const))(
    '%s is kind %s %s',
    (symbol, kind, rest) => {
      const { sheet, said } = read(score(harmony(kind, rest) + note('C3', 8)));
      expect(chordsOf(sheet)).toEqual([symbol]);
      expect(said).not.toMatch(/nearest|not known/);
    },
  );

  it('of a kind without notes of its own are read by their text, or are no chord and said', () => {
    const { sheet, said } = read(
      score(harmony('other', '', 'm7(add11)') + note('C3', 8), harmony('Neapolitan') + note('C3', 8)),
    );
    expect(chordsOf(sheet)).toEqual(['Cm7add11', 'N.C.']);
    expect(said).toContain('The chord C “Neapolitan” is not known here and written as N.C. (bar 2).');
  });

  it('stand on their beats, go on until the next, and share a place where several have none of their own', () => {
    const late = harmony('minor', '', null, '<offset>6</offset>');
    const { sheet, said } = read(
      score(
        harmony('major') + late + note('C3', 8),
        note('C3', 8),
        harmony('dominant') + harmony('minor') + note('C3', 8),
      ),
    );
    expect(sheet.bars.map(({ written }) => written.spans.map(({ start }) => start / 960))).toEqual([
      [0, 3],
      [0],
      [0, 2],
    ]);
    expect(chordsOf(sheet)).toEqual(['C Cm', 'Cm', 'C7 Cm']);
    expect(said).toContain('Chords that stand at one place share the time until the next one (bar 3).');
  });
});

describe('the form of a piece', () => {
  const bar = note('C3', 8);
  const left = (content: string) => `<barline location="left">${content}</barline>`;
  const right = (content: string) => `<barline location="right">${content}</barline>`;
  const ending = (number: string, type: string) => `<ending number="${number}" type="${type}"/>`;
  const back = '<repeat direction="backward"/>';

  it('is played with its repeats and endings', () => {
    const { sheet } = read(
      score(
        bar,
        left('<repeat direction="forward"/>') + bar,
        left(ending('1', 'start')) + bar + right(ending('1', 'stop') + back),
        left(ending('2', 'start')) + bar + right(ending('2', 'discontinue')),
        bar,
      ),
    );
    expect(playOrder(sheet.chart)).toEqual([0, 1, 2, 1, 3, 4]);
  });

  it('goes back to the first bar over a section where the file has no sign for the beginning', () => {
    const mark =
      '<direction><direction-type><rehearsal>B: next | part</rehearsal></direction-type></direction>';
    const { sheet } = read(score(bar, mark + bar + right('<repeat direction="backward" times="3"/>'), bar));
    expect(playOrder(sheet.chart)).toEqual([0, 1, 0, 1, 0, 1, 2]);
    expect(sheet.chart.sections.map(({ name }) => name)).toEqual([null, 'B next part']);
  });

  it('says jumps that lead nowhere, and repeats that never end', () => {
    const jump =
      '<direction><direction-type><words>D.C. al Fine</words></direction-type><sound dacapo="yes"/></direction>';
    const { sheet, said } = read(score(bar, left('<repeat direction="forward"/>') + bar + jump));
    expect(playOrder(sheet.chart)).toEqual([0, 1]);
    expect(said).toContain(
      'Its jumps (da capo, dal segno, coda, fine) cannot be followed as they stand in the file, and are left out.',
    );
    expect(said).toContain('A repeat that never ends is left out (bar 2).');
  });

  it('follows jumps, by their words, by what players are told, and by what is drawn', () => {
    const direction = (type: string, sound = ''): string =>
      `<direction><direction-type>${type}</direction-type>${sound}</direction>`;
    const words = (text: string) => direction(`<words>${text}</words>`);
    const alCoda = [
      bar,
      direction('<segno/>') + bar,
      bar + words('To Coda'),
      bar + words('D.S. al Coda'),
      direction('<coda/>') + bar,
    ];
    const drawn = [...alCoda];
    drawn[2] = bar + direction('<coda/>');
    const told = [...alCoda];
    told[3] = bar + direction('<words>ritornello</words>', '<sound dalsegno="1"/>');
    for (const file of [alCoda, drawn, told]) {
      const { sheet } = read(score(...file));
      expect(playOrder(sheet.chart)).toEqual([0, 1, 2, 3, 1, 2, 4]);
    }
    const { sheet } = read(score(bar, bar + words('Fine'), bar + words('Da Capo al Fine')));
    expect(playOrder(sheet.chart)).toEqual([0, 1, 2, 0, 1]);
  });

  it('begins with an upbeat where the first measure is shorter', () => {
    const upbeat = `<measure number="0" implicit="yes"><attributes>${BASS}</attributes>${note('G2')}</measure>`;
    const { sheet } = read(document([['P1', 'Bass', [upbeat, bar]]]));
    expect(sheet.bars.map(({ written }) => [written.number, written.pickup, written.metre.count])).toEqual([
      [0, true, 1],
      [1, false, 4],
    ]);
  });

  it('changes key and metre in the next bar where the signatures stand at the end of one', () => {
    const warned = `${bar}<attributes><key><fifths>2</fifths><mode>major</mode></key><time><beats>3</beats><beat-type>4</beat-type></time></attributes>`;
    const { sheet } = read(score(warned, note('C3', 6)));
    expect(sheet.bars.map(({ written }) => written.metre.count)).toEqual([4, 3]);
    expect(sheet.bars.map(({ written }) => written.key && describeKey(written.key))).toEqual([
      null,
      'D major',
    ]);
  });

  it('in 5/8 becomes 5/4 in doubled values, as fast as it was; a single odd bar gets silence and a sentence', () => {
    const five = BASS.replace('<beats>4', '<beats>5').replace('<beat-type>4', '<beat-type>8');
    const tempo =
      '<direction><direction-type><words>Allegro</words></direction-type><sound tempo="96"/></direction>';
    const doubled = read(
      document([['P1', 'Bass', [`<attributes>${five}</attributes>${tempo}${note('C3')}${note('D3', 3)}`]]]),
    );
    expect(lineOf(doubled.sheet)).toEqual(['C2@0+2 D2@2+3']);
    expect([doubled.sheet.metre, doubled.sheet.tempo]).toEqual([{ count: 5, unit: 4 }, 192]);
    expect(doubled.said).toContain(
      'The metre 5/8 is written as 5/4 with every value doubled; it sounds the same.',
    );
    const odd = '<attributes><time><beats>5</beats><beat-type>8</beat-type></time></attributes>';
    const mixed = read(score(bar, bar, odd + note('C3', 5)));
    expect(mixed.said).toContain(
      'A chart has no metre 5/8: it is written as 3/4, with silence at the end (bar 3).',
    );
  });

  it.each([
    ['2/4', '2', '4', 4],
    ['5/4', '5', '4', 10],
    ['7/8', '7', '8', 7],
    ['9/8', '9', '8', 9],
  ])('in %s stays in its metre, whole or in passing', (name, beats, unit, eighths) => {
    const attributes = `<attributes><time><beats>${beats}</beats><beat-type>${unit}</beat-type></time></attributes>`;
    const { sheet, said } = read(
      score(bar, attributes + note('C3', eighths), attributes + note('D3', eighths)),
    );
    const metres = sheet.bars.map(({ written }) => `${written.metre.count}/${written.metre.unit}`);
    expect(metres).toEqual(['4/4', name, name]);
    expect(said).not.toMatch(/no metre|is written as/);
  });
});

describe('the level of what is read', () => {
  it.each([
    ['C3', 'level 0 (roots)'],
    ['G3', 'level 1 (root, fifth, octave)'],
    ['E3', 'level 2 (with thirds, one shift)'],
  ])('is measured by its notes: %s over C', (pitch, level) => {
    const { said } = read(score(harmony('major') + note('C3', 4) + note(pitch, 4)));
    expect(said).toContain(`By its notes the line is of ${level}; its busiest bar has`);
  });
});

describe('the part that is read', () => {
  const attributes = (clef: string, transpose = '') =>
    `<attributes><divisions>2</divisions><clef><sign>${clef}</sign></clef>${transpose}</attributes>`;
  const band = document([
    ['P1', 'Melody', [attributes('G') + harmony('minor') + note('C5', 8)]],
    ['P2', 'Cello', [attributes('F') + note('C2', 8)]],
    [
      'P3',
      'Bass Guitar',
      [
        attributes('F', '<transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>') +
          note('E3', 8),
      ],
    ],
  ]);

  it('is the bass, with the chords of the score; the others can be asked for', () => {
    const { sheet, parts, said } = read(band);
    expect(lineOf(sheet)).toEqual(['E2@0+4']);
    expect(chordsOf(sheet)).toEqual(['Cm']);
    expect(said).toContain('The line is the part “Bass Guitar”, one of 3 that could be read.');
    expect(said).toContain('The chords are those over the part “Melody”.');
    expect(parts.all.map(({ name }) => name)).toEqual(['Melody', 'Cello', 'Bass Guitar']);
    expect(lineOf(read(band, parts.all[1]?.id).sheet)).toEqual(['C2@0+4']);
  });
});

describe('a file that is no score is refused with a sentence that says why', () => {
  const bomb = zipSync({ 'score.musicxml': new Uint8Array(60_000_000) }, { level: 9 });
  const cases: readonly (readonly [string, string | Uint8Array, RegExp])[] = [
    ['broken', score(note('C3', 8)).replace('</measure>', ''), /not well-formed XML: see line 1, column \d+/],
    ['listed by measures', '<score-timewise version="4.0"/>', /measure by measure \(score-timewise\)/],
    [
      'another kind of XML',
      '<svg xmlns="http://www.w3.org/2000/svg"/>',
      /begins with “svg” instead of “score-partwise”/,
    ],
    ['without notes', score(rest(8)), /no part with notes of a pitch/],
    ['empty', '', /neither MusicXML nor MIDI/],
    ['a zip of something else', zipSync({ 'notes.txt': strToU8('C') }), /holds no MusicXML score/],
    [
      'a zip cut short',
      zipSync({ 'score.xml': strToU8(score(note('C3', 8))) }).subarray(0, 90),
      /damaged|holds no MusicXML score/,
    ],
    ['a zip that swells', bomb, /unpacks to more than a score can be/],
    [
      'mostly in a metre of its own',
      score(note('C3', 8)).replace('<beats>4', '<beats>11'),
      /begins in 11\/4; a lesson can be in 4\/4, 3\/4/,
    ],
    [
      'with an entity from outside',
      '<!DOCTYPE score-partwise [<!ENTITY x SYSTEM "file:///etc/hostname">]><score-partwise>&x;</score-partwise>',
      /not well-formed XML/,
    ],
    ['nested without end', '<a>'.repeat(100_000), /too deep/],
  ];
  it.each(cases)('%s', (_, file, sentence) => {
    expect(refusal(file)).toMatch(sentence);
    expect(refusal(file)).toMatch(/Nothing was changed\.$/);
  });
});

describe('signs that stress a note', () => {
  const direction = (sign: string) =>
    `<direction><direction-type><dynamics><${sign}/></dynamics></direction-type></direction>`;
  const read = (...measures: readonly string[]) => {
    const { lesson, sentences } = readBack(score(...measures));
    const bars = lineSheetOf(lesson).bars.map(({ dynamics = [], notes }) => ({
      levels: dynamics.map(({ at, level }) => `${level}@${at / 960}`),
      stress: notes.map(({ note }) => note.marks?.stress ?? ''),
    }));
    return { bars, said: sentences.join(' ') };
  };
  const line = (sign: string) => `${note('F2')}${direction(sign)}${note('A2')}${note('C3', 4)}`;

  it.each([
    ['sf', 'accent', null],
    ['rfz', 'accent', null],
    ['sfz', 'strong accent', null],
    ['fp', 'accent', 'p'],
    ['sfpp', 'accent', 'pp'],
    ['sfzp', 'strong accent', 'p'],
  ] as const)('%s becomes an accent, and the level that follows is kept', (sign, mark, level) => {
    const { bars, said } = read(line(sign));
    expect(bars[0]).toEqual({
      levels: level === null ? [] : [`${level}@1`],
      stress: ['', mark, ''],
    });
    expect(said).toContain('Signs like sf are read as accents');
    expect(said).toContain('(bar 1).');
  });

  it('is said where it has no note, or is no such sign', () => {
    expect(read(`${note('F2', 8)}${direction('sf')}`).said).toContain('accents where no note begins');
    const { bars, said } = read(line('n'));
    expect(bars[0]?.stress).toEqual(['', '', '']);
    expect(said).toContain('dynamics other than ppp to fff');
  });
});
