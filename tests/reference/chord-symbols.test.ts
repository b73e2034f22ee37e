import { expect, it, vi } from 'vitest';
import { pitchClassOf } from '../../src/core/base';
import { type Chord, formatName, parseChord, transposeName } from '../../src/core/theory';
import { describeWithReferenceData } from '../support/reference-data';
import { name } from '../theory/read';
import { DECISIONS, EXCEPTIONS, UNREAD } from './chord-decisions';
import { readHarte, symbolOfHarmony } from './chord-translations';

// Many cases in one test; a busy machine needs its time.
vi.setConfig({ testTimeout: 60_000 });

/*
 * Sources: the test tables of chord-symbol 4 (MIT; also the library that reads descriptors here, so its rows
 * show that nothing is lost on the way) and of tonal (MIT), music21 10.5 (BSD-3), OpenEWLD with the kind values
 * of MusicXML 4.0; recorded music in the syntax of Harte et al., ISMIR 2005 (McGill Billboard, RWC, uspop2002)
 * with pitch classes by mir_eval 0.8.2.
 */

interface Row {
  readonly symbol: string;
  readonly syntax: string;
  readonly root: string;
  readonly pitchClasses: string;
  readonly description: string;
}

const rowsOf = (text: string): readonly Row[] =>
  text
    .split('\n')
    .slice(1)
    .filter((line) => line !== '')
    .map((line) => {
      const [symbol = '', syntax = '', root = '', , pitchClasses = '', description = ''] = line.split('\t');
      return { symbol, syntax, root, pitchClasses, description };
    });

const sorted = (numbers: Iterable<number>): string => [...new Set(numbers)].sort((a, b) => a - b).join(' ');
const soundsOf = (chord: Chord): readonly number[] => chord.tones.map((tone) => pitchClassOf(tone.name));

/** The same notes, the bass of a slash chord counted or not. */
const agrees = (chord: Chord, pitchClasses: string): boolean =>
  sorted(soundsOf(chord)) === pitchClasses ||
  sorted([...soundsOf(chord), pitchClassOf(chord.bass)]) === pitchClasses;

/** A symbol without its root, so that `B♭13` and `C13` are the same. */
const suffixOf = (chord: Chord): string => chord.symbol.slice(formatName(chord.root).length);

const share = (part: number, whole: number): string =>
  `${part} of ${whole} (${((100 * part) / whole).toFixed(1)} %)`;
const report = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

type Verdict = 'same' | 'contradicted' | 'excepted' | 'wrong';

/** What a row says, as a lead-sheet symbol; null for a MusicXML kind that the standard does not define. */
const symbolOf = (row: Row): string | null =>
  row.syntax === 'musicxml-harmony' ? symbolOfHarmony(row.root, row.description) : row.symbol;

const isAsPublished = (row: Row): boolean => {
  const symbol = symbolOf(row);
  const chord = parseChord(symbol ?? row.symbol);
  // A kind that the standard does not define has no published notes: it is only read.
  return chord.ok && (symbol === null || agrees(chord.value, row.pitchClasses));
};

/**
 * One verdict a row. A row is contradicted where the sources leave no reading that has the notes of all:
 * another row, of the same chord on whatever root, has other notes, and they are those read here.
 */
function judge(rows: readonly Row[]): ReadonlyMap<Row, Verdict> {
  const published = new Set(
    rows.filter(isAsPublished).flatMap((row) => {
      const chord = parseChord(symbolOf(row) ?? row.symbol);
      return chord.ok ? [suffixOf(chord.value)] : [];
    }),
  );
  const verdictOf = (row: Row): Verdict => {
    if (isAsPublished(row)) return 'same';
    if (row.symbol in EXCEPTIONS) return 'excepted';
    const chord = parseChord(symbolOf(row) ?? row.symbol);
    return chord.ok && published.has(suffixOf(chord.value)) ? 'contradicted' : 'wrong';
  };
  return new Map(rows.map((row) => [row, verdictOf(row)]));
}

describeWithReferenceData('chord symbols as published', 40_375, (read) => {
  const rows = rowsOf(read('chords/chords.tsv'));

  it('lead-sheet symbols have the notes of their sources', () => {
    const symbols = rows.filter((row) => row.syntax !== 'harte');
    const verdicts = judge(symbols);
    const having = (verdict: Verdict) => symbols.filter((row) => verdicts.get(row) === verdict);
    const [same, contradicted, excepted, wrong] = (
      ['same', 'contradicted', 'excepted', 'wrong'] as const
    ).map(having) as [Row[], Row[], Row[], Row[]];
    report(
      `Lead-sheet symbols: ${share(same.length + contradicted.length, symbols.length)} understood, with the notes of a published source:`,
    );
    report(`  ${share(same.length, symbols.length)} with those of the very source the row is from;`);
    report(
      `  ${share(contradicted.length, symbols.length)} with those of another source, which contradicts it on the same chord;`,
    );
    report(`  ${share(excepted.length, symbols.length)} exceptions by hand.`);
    expect(wrong.map((row) => `${row.symbol}: ${row.pitchClasses}`)).toEqual([]);
    expect(symbols.length).toBe(1167);
    expect(excepted.length / symbols.length).toBeLessThan(0.02);
    expect(
      Object.keys(EXCEPTIONS).filter((symbol) => !excepted.some((row) => row.symbol === symbol)),
    ).toEqual([]);
  });

  it('known conflicts between the sources are decided one by one', () => {
    const conflicts = read('chords/source_conflicts.tsv').split('\n').slice(1).filter(Boolean);
    report('Known conflicts between the sources:');
    for (const conflict of conflicts) {
      const [symbol = '', published = ''] = conflict.split('\t');
      const decision = DECISIONS[symbol];
      report(`  ${symbol}: ${decision?.reason}.`);
      const chord = parseChord(symbol);
      expect(chord.ok && sorted(soundsOf(chord.value)), symbol).toBe(decision?.pitchClasses);
      const followed = published
        .split(' | ')
        .some((source) => source.endsWith(`: ${decision?.pitchClasses}`));
      expect(followed || symbol in EXCEPTIONS, symbol).toBe(true);
    }
    expect(conflicts.map((conflict) => conflict.split('\t')[0]).sort()).toEqual(
      Object.keys(DECISIONS).sort(),
    );
  });

  it('machine-combined spellings are read, and drawn so that they read back', () => {
    const spellings = read('chords/chord-symbol-allTestedSymbols.txt')
      .split('\n')
      .filter((line) => line !== '');
    const unread: string[] = [];
    const changed: string[] = [];
    for (const spelling of spellings) {
      const chord = parseChord(spelling);
      if (!chord.ok) {
        unread.push(spelling);
        continue;
      }
      const again = parseChord(chord.value.symbol);
      if (!again.ok || JSON.stringify(again.value) !== JSON.stringify(chord.value)) changed.push(spelling);
    }
    report(
      `Machine-combined spellings: ${share(spellings.length - unread.length, spellings.length)} understood.`,
    );
    for (const spelling of unread) report(`  ${spelling} is not: ${UNREAD[spelling]}.`);
    expect(unread).toEqual(Object.keys(UNREAD));
    expect(changed).toEqual([]);
  }, 120_000);

  it('labels of recorded music have the notes of mir_eval', () => {
    const labels = rows.filter((row) => row.syntax === 'harte');
    const wrong: string[] = [];
    let withForm = 0;
    for (const row of labels) {
      const label = readHarte(row.symbol);
      if (!label) continue;
      withForm += 1;
      const bass = label.bass ? `/${formatName(transposeName(name(label.root), label.bass))}` : '';
      const symbol = label.root + label.descriptor + bass;
      const chord = parseChord(symbol);
      if (!chord.ok || !agrees(chord.value, row.pitchClasses))
        wrong.push(`${row.symbol}: ${symbol}, ${row.pitchClasses}`);
    }
    report(
      `Recorded-music labels: ${share(withForm, labels.length)} have a lead-sheet form; ${share(withForm - wrong.length, withForm)} of those as published.`,
    );
    expect(wrong).toEqual([]);
    expect(withForm / labels.length).toBeGreaterThan(0.85);
  });
});
