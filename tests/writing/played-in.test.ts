import { describe, expect, it } from 'vitest';
import { type MidiNumber, midiNumber } from '../../src/core/base';
import { announce, struckIn, writeMidi } from '../../src/core/writing';
import { Hand } from './hand';

/** Keys as they go down (`38`) and up (`-38`), message by message. */
function keys(...messages: readonly (readonly number[])[]): readonly number[] {
  let running = 0;
  return messages.flatMap((message) => {
    const read = struckIn(message, running);
    running = read.running;
    return read.struck.map(({ midi, down }) => (down ? midi : -midi));
  });
}

describe('what a MIDI keyboard sends', () => {
  it('is keys that go down and up, on any channel', () => {
    expect(keys([0x90, 38, 100], [0x80, 38, 64], [0x9f, 40, 1], [0x9f, 40, 0])).toEqual([38, -38, 40, -40]);
  });

  it('runs on without its status byte, through the clock, and not through a message of the system', () => {
    expect(keys([0x90, 38, 100, 41, 90], [0xf8], [38, 0], [43, 80])).toEqual([38, 41, -38, 43]);
    expect(keys([0x90, 0xfe, 38, 0xf8, 100])).toEqual([38]);
    expect(keys([0x90, 38, 100], [0xf0, 1, 2, 3, 0xf7], [41, 90])).toEqual([38]);
  });

  it('is nothing where wheels and pedals move', () => {
    expect(keys([0xb0, 64, 127], [0xe0, 0, 64], [0xd0, 90], [0xc0, 5], [0x90], [])).toEqual([]);
  });
});

describe('keys that are struck together', () => {
  const strike = (...midis: readonly [number, ...number[]]) => {
    const [first, ...others] = midis.map(midiNumber);
    const hand = new Hand('| Fm | Bb7 |', 'F minor');
    return hand.take(writeMidi(first as MidiNumber, ...others)(hand.lesson, hand.pencil));
  };

  it('write the lowest that the neck has, and say so', () => {
    const hand = strike(48, 44, 53);
    expect(hand.bar(0)).toBe('A♭2@0+960');
    expect(hand.last && announce(hand.last)).toMatch(/^The lowest of what was struck together\. A♭2, ♭3, /);
    expect(strike(20, 41).bar(0)).toBe('F2@0+960');
  });

  it('are refused where the neck has none of them, on the side where they lie', () => {
    expect(strike(90).refusal).toBe('above the neck');
    expect(strike(90, 96).refusal).toBe('above the neck');
    expect(strike(20).refusal).toBe('below the neck');
  });
});
