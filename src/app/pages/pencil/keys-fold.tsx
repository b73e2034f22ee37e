import { useRef, useState } from 'react';
import {
  COMMANDS,
  type Command,
  keysOf,
  keyText,
  namesOfPress,
  type OwnKeys,
  whyNoKey,
  withKey,
} from '../../../core/writing';
import { rememberKeys } from './own-keys';

/** Keys that only lead somewhere, or are held with another. */
const NO_KEYS = new Set(['Shift', 'Control', 'Alt', 'Meta', 'Tab', 'Escape', 'Dead', 'Process']);

const UNTIL_CLOSED = ' It holds until the page is closed: this device keeps nothing.';

/** The whole scheme of keys in one table; each can be changed, and all put back. */
export function KeysFold({ own }: { readonly own: OwnKeys }) {
  const [asked, setAsked] = useState<Command | null>(null);
  const [said, setSaid] = useState('');
  const summary = useRef<HTMLElement>(null);
  const refuse = (why: string) => {
    setAsked(null);
    setSaid(why);
  };
  const takeUsual = () => {
    const kept = rememberKeys({});
    setAsked(null);
    setSaid(`The usual keys are back.${kept ? '' : UNTIL_CLOSED}`);
    // The button goes with the last key of one's own; whoever came by the keyboard stands where it was.
    summary.current?.focus();
  };
  const choose = (command: Command, key: string) => {
    const next = withKey(own, command, key);
    const kept = rememberKeys(next.own);
    setAsked(null);
    setSaid(
      `${keyText(key)}: ${command.words}.${next.lost === null ? '' : ` “${next.lost.words}” has no such key any more.`}${kept ? '' : UNTIL_CLOSED}`,
    );
  };
  return (
    <details className="strip__fold">
      <summary ref={summary}>All keys, and how to change them</summary>
      <p role="status" aria-label="Keys">
        {asked === null ? said : `Press the key for “${asked.words}”.`}
      </p>
      {Object.keys(own).length > 0 && (
        <button type="button" className="button button--quiet" onClick={takeUsual}>
          Take the usual keys again
        </button>
      )}
      <table className="strip__table">
        <caption className="visually-hidden">The keys of the pencil</caption>
        <thead>
          <tr>
            <th scope="col">Key</th>
            <th scope="col">What it does</th>
          </tr>
        </thead>
        <tbody>
          {COMMANDS.map((command) => (
            <tr key={command.id}>
              <td>
                <button
                  type="button"
                  className="word"
                  aria-label={`Key for: ${command.words}`}
                  onClick={(event) => {
                    event.currentTarget.focus();
                    setAsked(command);
                  }}
                  onBlur={() => setAsked(null)}
                  onKeyDown={(event) => {
                    if (asked !== command || NO_KEYS.has(event.key)) return;
                    event.preventDefault();
                    event.stopPropagation();
                    const [name] = namesOfPress({
                      key: event.key,
                      code: event.code,
                      shift: event.shiftKey,
                      alt: event.altKey,
                      ctrl: event.ctrlKey || event.metaKey,
                    });
                    const why = name === undefined ? null : whyNoKey(name);
                    if (why !== null) refuse(why);
                    else if (name !== undefined) choose(command, name);
                  }}
                >
                  {asked === command ? '…' : keysOf(command, own).map(keyText).join(' or ') || 'none'}
                </button>
              </td>
              <td>{command.words}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
