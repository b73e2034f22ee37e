import { describe, expect, test } from 'vitest';
import { explainLine } from '../../src/core/line';
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

  test('an unwritten line has none', () => {
    expect(explainLine(request('| C | F |'), [[], []])).toEqual([]);
  });
});
