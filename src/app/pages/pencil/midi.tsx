import { useEffect, useRef, useState } from 'react';
import { midiNumber } from '../../../core/base';
import { writeMidi } from '../../../core/writing';
import { useAtWork } from '../at-work';
import { perform } from './perform';

/** The first byte of a note-on message on any channel (MIDI 1.0, channel voice messages). */
const NOTE_ON = 0x90;

/** Writes what a keyboard or pad plays; asked for when it is first used, and only where the browser has Web MIDI. */
export function MidiWord() {
  const { session } = useAtWork();
  const [state, setState] = useState<'off' | 'on' | 'refused'>('off');
  const inputs = useRef<MIDIInput[]>([]);
  useEffect(
    () => () => {
      for (const input of inputs.current) input.onmidimessage = null;
    },
    [],
  );
  if (typeof navigator.requestMIDIAccess !== 'function') return null;
  const listen = async () => {
    try {
      const access = await navigator.requestMIDIAccess();
      inputs.current = [...access.inputs.values()];
      for (const input of inputs.current) {
        input.onmidimessage = ({ data }) => {
          const [status = 0, note = 0, velocity = 0] = data ?? [];
          if ((status & 0xf0) === NOTE_ON && velocity > 0) perform(session, writeMidi(midiNumber(note)));
        };
      }
      setState('on');
      session.editor.setState({
        said:
          inputs.current.length === 0
            ? 'No MIDI keyboard or pad is connected: connect one and ask again.'
            : `Listening to ${inputs.current.map(({ name }) => name ?? 'a MIDI input').join(', ')}.`,
      });
    } catch {
      setState('refused');
      session.editor.setState({
        said: 'The browser does not let the page listen to MIDI. Everything else goes on as before.',
      });
    }
  };
  return (
    <button type="button" className="strip__key" aria-pressed={state === 'on'} onClick={() => void listen()}>
      <span>Play it in by MIDI</span>
    </button>
  );
}
