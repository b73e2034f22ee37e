import type { Command } from './command';
import { COMMANDS } from './commands';
import type { Digits } from './types';

/** A key press as a browser tells it: the sign on the key, its place on the keyboard, what is held with it. */
export interface KeyPress {
  readonly key: string;
  readonly code: string;
  readonly shift: boolean;
  readonly alt: boolean;
  /** Control, or Command where that is the key for shortcuts. */
  readonly ctrl: boolean;
}

/** The keys that a user chose in place of the usual ones, by the id of the command. */
export type OwnKeys = Readonly<Record<string, readonly string[]>>;

const isLetter = (key: string): boolean => /^\p{L}$/u.test(key);

/**
 * The names under which a press is looked up, the likelier first: `Shift+ArrowUp`, `Shift+E`, `[`. A sign is what the
 * keyboard writes, however it is reached; where a layout has it elsewhere, the key's place on the keyboard counts.
 */
export function namesOfPress({ key, code, shift, alt, ctrl }: KeyPress): readonly string[] {
  const held = `${ctrl ? 'Ctrl+' : ''}${shift ? 'Shift+' : ''}${alt ? 'Alt+' : ''}`;
  const loose = ctrl ? 'Ctrl+' : '';
  if (key.length > 1) return [held + key];
  if (isLetter(key))
    return [held + (shift || ctrl ? key.toUpperCase() : key.toLowerCase()), ...placed(code, held)];
  return [loose + key, ...placed(code, held)];
}

const PLACES: Readonly<Record<string, string>> = {
  BracketLeft: '[',
  BracketRight: ']',
  Period: '.',
  Comma: ',',
  Minus: '-',
  Equal: '=',
  Slash: '/',
  Semicolon: ';',
  Quote: "'",
};

/** The sign at a place of the keyboard as an American layout has it: digits and brackets are elsewhere on others. */
function placed(code: string, held: string): readonly string[] {
  const digit = /^Digit(\d)$/.exec(code)?.[1];
  const sign = digit ?? PLACES[code];
  return sign === undefined || held !== '' ? [] : [sign];
}

/** The keys of a command under a user's choice. */
export const keysOf = (command: Command, own: OwnKeys): readonly string[] => own[command.id] ?? command.keys;

/** The command that a press means while digits mean degrees or frets; null where it means none. */
export function commandFor(press: KeyPress, digits: Digits, own: OwnKeys): Command | null {
  const open = COMMANDS.filter(({ when }) => when === undefined || when === digits);
  for (const name of namesOfPress(press)) {
    const found = open.find((command) => keysOf(command, own).includes(name));
    if (found !== undefined) return found;
  }
  return null;
}

const clash = (one: Command, other: Command): boolean =>
  one.when === undefined || other.when === undefined || one.when === other.when;

/** What the page does with a key wherever someone writes, by the key's name. */
const OF_THE_PAGE: Readonly<Record<string, string>> = {
  'Ctrl+Z': 'takes a step back',
  'Ctrl+Shift+Z': 'brings a step back',
  'Ctrl+Y': 'brings a step back',
};

/** Why a key cannot be given to a command, in a sentence; null where it can. */
export function whyNoKey(key: string): string | null {
  const does = OF_THE_PAGE[key];
  return does === undefined ? null : `${keyText(key)} ${does} on the whole page: choose another key.`;
}

/**
 * A user's choice with another key for a command. The key is taken from the command that had it, which is named, so
 * that it can be said.
 */
export function withKey(
  own: OwnKeys,
  command: Command,
  key: string,
): { readonly own: OwnKeys; readonly lost: Command | null } {
  const holder = COMMANDS.find(
    (each) => each !== command && clash(each, command) && keysOf(each, own).includes(key),
  );
  const freed =
    holder === undefined ? {} : { [holder.id]: keysOf(holder, own).filter((each) => each !== key) };
  return { own: { ...own, ...freed, [command.id]: [key] }, lost: holder ?? null };
}

/** Reads a stored choice; what is not understood is left out, so that every command keeps a way to it. */
export function readOwnKeys(value: unknown): OwnKeys {
  if (typeof value !== 'object' || value === null) return {};
  return Object.fromEntries(
    Object.entries(value).filter(
      (entry): entry is [string, string[]] =>
        COMMANDS.some(({ id }) => id === entry[0]) &&
        Array.isArray(entry[1]) &&
        entry[1].length <= 4 &&
        entry[1].every((key) => typeof key === 'string' && key.length > 0 && key.length < 32),
    ),
  );
}

const SIGNS: Readonly<Record<string, string>> = {
  ArrowUp: 'Up',
  ArrowDown: 'Down',
  ArrowLeft: 'Left',
  ArrowRight: 'Right',
  Backspace: 'Backspace',
  PageUp: 'Page up',
  PageDown: 'Page down',
};

/** A key as it is written beside its command: `Shift Up`, `Alt Right`, `[`. */
export const keyText = (key: string): string =>
  key === '+'
    ? '+'
    : key
        .split(/\+(?=.)/)
        .map((part) => SIGNS[part] ?? part)
        .join(' ');
