import { describe, expect, test } from 'vitest';
import { explainLine, explainToStudent } from '../../src/core/line';
import { line, request } from './notation';

describe('the explanation of a whole line', () => {
  test('says what is taught where, which figure is carried, where the line leads and what to listen for', () => {
    const notes = line('F1 . A1 . C2 . - - | - - C2 . E2 . G1 . | F1 . A1 . C2 . - - | C2 . D2 . E2 . G1 .');
    expect(explainLine(request('| F | C7 | F | C7 |', { level: 4 }), notes)).toEqual([
      'The line teaches three things: chord tones in every bar; scale steps in bar 4; beat one silent in bar 2.',
      'Bars 1 and 3 share one rhythm and one figure, R–3–5.',
      'Bar 2 answers it after a silent beat one.',
      'Bar 4 turns away from it to end the phrase.',
      'Bar 4 leads back to bar 1: G on beat four steps down to F.',
      'Listen for beat one of bar 2: nothing is struck there.',
    ]);
  });

  test('calls no note a root that the chord has over another bass', () => {
    const notes = line('F1 . A1 . C2 . - - | A1 . C2 . F2 . - - | C2 . E2 . G1 . - - | A1 . C2 . F2 . A1 .');
    const said = explainLine(request('| F | F/A | C | F/A |', { level: 4 }), notes);
    expect(said).toContain('Listen for the root on beat one of bars 1 and 3.');
    expect(said.join(' ')).not.toContain('closes on its root');
  });

  test('a pickup ends no phrase, and its first beat is not called beat one', () => {
    const asked = request('(1) F7 | Bb | Gm | Eb | F | Bb | Gm | Eb | Bb |');
    const round = 'Bb1 - Bb1 - D2 - C2 - | G1 - G1 - D2 - C2 - | Eb2 - Eb2 - G2 - F2 - |'.replaceAll(
      /([BE])b/g,
      '$1♭',
    );
    const notes = line(`F2 . | ${round} F2 . . . C2 . . . | ${round} B♭1 . . . D2 . . .`);
    const said = explainLine(asked, notes);
    expect(said).toContain('Bars 4 and 8 turn away from it to end the phrase.');
    expect(said).toContain('The pickup leads on to bar 1: F is the fifth of B♭ and moves down to it.');
  });

  test('an unwritten line has none', () => {
    expect(explainLine(request('| C | F |'), [[], []])).toEqual([]);
  });

  test('says “every bar” only of every bar of the chart, and names bars instead of counting them', () => {
    const notes = line('F1 . - - - - - - |  | F1 . - - - - - - | F1 . - - - - - -');
    const said = explainLine(request('| F | F | F | F |'), notes);
    expect(said).toContain('Listen for the root on beat one of bars 1, 3 and 4.');
    expect(said.join(' ')).not.toMatch(/every bar/i);
    const sixteen = Array.from({ length: 16 }, (_, bar) => (bar % 2 === 0 ? 'F1 . - - - - - -' : '')).join(
      '|',
    );
    const chart = `${'| F '.repeat(16)}|`;
    const long = explainLine(request(chart), line(sixteen)).join(' ');
    expect(long).toContain('Listen for the root on beat one of every second bar from bar 1 to bar 15.');
    expect(long).not.toMatch(/bars of \d/);
  });

  test('tells no figure of bars without a chord', () => {
    const notes = line('F1 . A1 . C2 . - - | F1 . A1 . C2 . - -');
    const said = explainLine(request('| N.C. | N.C. |'), notes).join(' ');
    expect(said).toMatch(/rhythm/);
    expect(said).not.toMatch(/figure|––/);
  });

  test('tells a student the same in a beginner’s words, and why there is silence', () => {
    const notes = line('F1 . A1 . C2 . - - | - - C2 . E2 . G1 . | F1 . A1 . C2 . - - | C2 . D2 . E2 . G1 .');
    const said = explainToStudent(request('| F | C7 | F | C7 |', { level: 4 }), notes).map(
      ({ sentence }) => sentence,
    );
    expect(said).toContain(
      'No note on beat one in bar 2: the drums carry the beat through the gap. Count the one, and come in after it.',
    );
    expect(said).toContain('Bars 1 and 3 have the same rhythm: learn it once, clap it, then play it.');
    expect(said).toContain(
      'The end of bar 4 leads back to the beginning, so the line can go round and round.',
    );
    expect(explainToStudent(request('| C | F |'), [[], []])).toEqual([]);
  });
});
