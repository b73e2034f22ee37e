import { useEffect, useState } from 'react';
import { listed, midiNumber } from '../../../core/base';
import { writeMidi } from '../../../core/writing';
import { useAtWork } from '../at-work';
import { perform } from './perform';

/** The first byte of a note-on message on any channel (MIDI 1.0, channel voice messages). */
const NOTE_ON = 0x90;

/** What is said of the inputs that are listened to. */
const listening = (inputs: readonly MIDIInput[]): string =>
  inputs.length === 0
    ? 'No MIDI keyboard or pad is connected. Connect one, and it is listened to at once.'
    : `Listening to ${listed(inputs.map(({ name }) => name ?? 'a MIDI input'))}.`;

const letGo = ({ inputs }: MIDIAccess): void => {
  for (const input of inputs.values()) input.onmidimessage = null;
};

/**
 * Writes what a keyboard or pad plays; asked for when it is first used, and only where the browser has Web MIDI. What is
 * connected later is listened to as well.
 */
export function MidiWord() {
  const { session } = useAtWork();
  const [access, setAccess] = useState<MIDIAccess | null>(null);
  useEffect(() => {
    if (access === null) return;
    const say = (said: string) => session.editor.setState({ said });
    let heard: readonly string[] | null = null;
    const listen = () => {
      const inputs = [...access.inputs.values()].filter(({ state }) => state !== 'disconnected');
      for (const input of inputs) {
        input.onmidimessage = ({ data }) => {
          const [status = 0, note = 0, velocity = 0] = data ?? [];
          if ((status & 0xf0) === NOTE_ON && velocity > 0) perform(session, writeMidi(midiNumber(note)));
        };
      }
      const ids = inputs.map(({ id }) => id);
      if (heard === null || ids.join() !== heard.join()) say(listening(inputs));
      heard = ids;
    };
    listen();
    access.onstatechange = listen;
    return () => {
      access.onstatechange = null;
      letGo(access);
    };
  }, [access, session]);
  if (typeof navigator.requestMIDIAccess !== 'function') return null;
  const change = async () => {
    if (access !== null) {
      setAccess(null);
      session.editor.setState({ said: 'No longer listening to MIDI.' });
      return;
    }
    try {
      setAccess(await navigator.requestMIDIAccess());
    } catch {
      session.editor.setState({
        said: 'The browser does not let the page listen to MIDI. Everything else goes on as before.',
      });
    }
  };
  return (
    <button type="button" className="strip__key" aria-pressed={access !== null} onClick={() => void change()}>
      <span>Play it in by MIDI</span>
    </button>
  );
}
