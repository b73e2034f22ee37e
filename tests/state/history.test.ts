import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type History, newHistory, record, redo, undo } from '../../src/app/state/history';

const types = (history: History<string>, text: string) => record(history, text, 'type', 'chart');

describe('history', () => {
  it('takes a step back and brings it again', () => {
    const changed = record(newHistory('one'), 'two', 'rename');
    expect(undo(changed).present).toBe('one');
    expect(redo(undo(changed)).present).toBe('two');
  });

  it('makes one step of a word being typed', () => {
    const typed = types(types(types(newHistory(''), 'D'), 'Dm'), 'Dm7');
    expect(typed.past).toHaveLength(1);
    expect(undo(typed).present).toBe('');
  });

  it('starts a new step after an undo, even in the same field', () => {
    const typed = types(undo(types(newHistory(''), 'D')), 'F');
    expect(typed.present).toBe('F');
    expect(undo(typed).present).toBe('');
  });

  it('does not record a change that changes nothing', () => {
    const start = newHistory('one');
    expect(record(start, 'one', 'nothing')).toBe(start);
  });

  it('gives everything back: as many undos as steps lead to the start, as many redos to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 40 }), (documents) => {
        let history = newHistory('start');
        for (const document of documents) {
          history = record(history, document, 'change');
        }
        const last = history.present;
        const steps = history.past.length;
        for (let step = 0; step < steps; step += 1) {
          history = undo(history);
        }
        expect(history.present).toBe('start');
        for (let step = 0; step < steps; step += 1) {
          history = redo(history);
        }
        expect(history.present).toBe(last);
        expect(redo(history)).toBe(history);
      }),
      { seed: 20260701 },
    );
  });
});
