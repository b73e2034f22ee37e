import { useAtWork } from '../at-work';
import { changeListening, useIsListening } from './midi-input';

/** Writes what a keyboard or pad plays; asked for when it is first used. */
export function MidiWord() {
  const { session } = useAtWork();
  const listens = useIsListening();
  if (typeof navigator.requestMIDIAccess !== 'function')
    return (
      <p className="strip__without">This browser has no Web MIDI: no keyboard or pad can be played in.</p>
    );
  return (
    <button
      type="button"
      className="strip__key"
      aria-pressed={listens}
      onClick={() => void changeListening(session)}
    >
      <span>Play it in by MIDI</span>
    </button>
  );
}
