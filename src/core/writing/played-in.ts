/** What a MIDI keyboard or pad sends, read as keys that go down and up. */
import { type MidiNumber, midiNumber } from '../base';

/** A key that went down or was let go. */
export interface Struck {
  readonly midi: MidiNumber;
  readonly down: boolean;
}

/** Bytes after the status byte, by its upper half for channel messages, else by the whole of it (MIDI 1.0). */
function dataBytes(status: number): number {
  if (status >= 0xf8) return 0;
  if (status >= 0xf0) return status === 0xf2 ? 2 : status === 0xf1 || status === 0xf3 ? 1 : 0;
  return status >= 0xc0 && status < 0xe0 ? 1 : 2;
}

/**
 * Reads bytes as they come from an input: note-on and note-off of any channel, note-on of velocity 0 as note-off,
 * messages without their status byte where the last one still runs (running status). Web MIDI sends one whole message
 * at a time; some inputs are bridged from elsewhere.
 * @param running - the status byte that runs on from what came before; 0 where none does
 */
export function struckIn(
  data: Iterable<number>,
  running: number,
): { readonly struck: readonly Struck[]; readonly running: number } {
  const struck: Struck[] = [];
  let status = running;
  let held: number[] = [];
  for (const byte of data) {
    // Clock and sensing come in between anything, and end nothing.
    if (byte >= 0xf8) continue;
    if (byte >= 0x80) {
      status = byte;
      held = [];
      continue;
    }
    held.push(byte);
    if (status < 0x80 || held.length < dataBytes(status)) continue;
    const [note = 0, velocity = 0] = held;
    const kind = status & 0xf0;
    if (kind === 0x90 || kind === 0x80)
      struck.push({ midi: midiNumber(note), down: kind === 0x90 && velocity > 0 });
    held = [];
  }
  return { struck, running: status >= 0xf0 ? 0 : status };
}
