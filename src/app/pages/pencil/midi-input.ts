import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { listed, type MidiNumber } from '../../../core/base';
import { struckIn, writeMidi } from '../../../core/writing';
import type { Session } from '../../state';
import { type Origin, perform, tell, workNow } from './perform';
import { padNow } from './tapping';

/** Keys that go down within this time are struck together, in milliseconds (common practice, no source). */
const TOGETHER_MS = 40;

/**
 * What the browser lets the page listen to. It stands apart from the word that asks for it, which is made anew in each
 * system and goes with its row of keys: what is listened to, is so for as long as someone writes.
 */
const granted = createStore<{ readonly access: MIDIAccess | null; readonly asking: boolean }>(() => ({
  access: null,
  asking: false,
}));

export const useIsListening = (): boolean => useStore(granted, ({ access }) => access !== null);

const nameOf = ({ name }: MIDIInput): string => name ?? 'a MIDI input';

const inputsOf = ({ inputs }: MIDIAccess): readonly MIDIInput[] =>
  [...inputs.values()].filter(({ state }) => state !== 'disconnected');

/** What is said of the inputs that are listened to, and of those that went. */
function listening(inputs: readonly MIDIInput[], gone: readonly string[]): string {
  const names = listed(inputs.map(nameOf));
  if (gone.length > 0) {
    const left = `${listed(gone)} ${gone.length === 1 ? 'is' : 'are'} no longer connected`;
    return inputs.length === 0
      ? `${left}. What was written stays; connect it again, and it is listened to at once.`
      : `${left}. Still listening to ${names}.`;
  }
  return inputs.length === 0
    ? 'No MIDI keyboard or pad is connected. Connect one, and it is listened to at once.'
    : `Listening to ${names}.`;
}

/** Begins to listen, for which the browser may ask, or ends it. */
export async function changeListening(session: Session): Promise<void> {
  const { access, asking } = granted.getState();
  if (access !== null) {
    granted.setState({ access: null });
    tell(session, 'No longer listening to MIDI.');
    return;
  }
  tell(session, 'The browser is asked whether the page may listen to MIDI: answer it there.');
  if (asking) return;
  granted.setState({ asking: true });
  try {
    const given = await navigator.requestMIDIAccess();
    granted.setState({ access: given });
    tell(session, listening(inputsOf(given), []));
  } catch {
    tell(
      session,
      'The browser does not let the page listen to MIDI. Everything else goes on as before; allow it there, and ask again.',
    );
  } finally {
    granted.setState({ asking: false });
  }
}

/** Keys that were struck together so far, and what the line was before the first of them. */
interface Chord {
  readonly at: number;
  readonly keys: readonly [MidiNumber, ...MidiNumber[]];
  readonly origin: Origin;
}

let times = 0;

/** Writes the keys that go down; while a rhythm is tapped, they tap it. */
function writer(session: Session) {
  let chord: Chord | null = null;
  let running = 0;
  const strike = (midi: MidiNumber, at: number) => {
    const work = workNow(session);
    if (work === null) return;
    times += 1;
    chord =
      chord !== null && at - chord.at < TOGETHER_MS
        ? { ...chord, keys: [...chord.keys, midi] }
        : { at, keys: [midi], origin: { ...work, join: `played in ${times}` } };
    perform(session, writeMidi(...chord.keys), chord.origin);
  };
  return ({ data, timeStamp }: MIDIMessageEvent) => {
    const read = struckIn(data ?? [], running);
    running = read.running;
    for (const { midi, down } of read.struck) {
      const pad = padNow(session);
      if (pad !== null) (down ? pad.down : pad.up)(`MIDI ${midi}`, timeStamp);
      else if (down) strike(midi, timeStamp);
    }
  };
}

/** Listens to what is connected, now and later, for as long as its part is on the page. */
export function useMidiInput(session: Session): void {
  const access = useStore(granted, (state) => state.access);
  useEffect(() => {
    if (access === null) return;
    let heard = inputsOf(access);
    const listen = () => {
      for (const input of access.inputs.values()) input.onmidimessage = null;
      for (const input of inputsOf(access)) input.onmidimessage = writer(session);
    };
    listen();
    access.onstatechange = () => {
      const now = inputsOf(access);
      const gone = heard.filter(({ id }) => !now.some((input) => input.id === id));
      const isNew = now.some(({ id }) => !heard.some((input) => input.id === id));
      heard = now;
      if (gone.length === 0 && !isNew) return;
      listen();
      tell(session, listening(now, gone.map(nameOf)));
    };
    return () => {
      access.onstatechange = null;
      for (const input of access.inputs.values()) input.onmidimessage = null;
    };
  }, [access, session]);
}
