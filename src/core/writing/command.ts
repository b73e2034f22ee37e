import type { Letter } from '../base';
import type { Digits, Gesture } from './types';

/** Under which heading a command stands where all of them are shown. */
export const COMMAND_GROUPS = [
  'Write',
  'Pitch',
  'Length and place',
  'Marks',
  'Loudness and words',
  'Go and select',
  'Copy and repeat',
  'The bar becomes',
  'The way of writing',
] as const;
export type CommandGroup = (typeof COMMAND_GROUPS)[number];

/** A row of the scheme of keys: what is done, its words, and the keys that do it unless the user chose others. */
export interface Command {
  readonly id: string;
  readonly group: CommandGroup;
  /** On the page and in the guide. */
  readonly words: string;
  /** Short, for a key of the strip. */
  readonly short: string;
  readonly keys: readonly string[];
  /** Only while the digits mean this; always when left out. */
  readonly when?: Digits;
  /** The letter of the note that it writes, where it writes one by name. */
  readonly name?: Letter;
  /** What it asks for on the page before there is a gesture to make: a word, or a rhythm that is tapped. */
  readonly asks?: 'word' | 'taps';
  readonly gesture: Gesture;
}

export type Row = Omit<Command, 'group'>;

export const row = (
  id: string,
  keys: readonly string[],
  short: string,
  words: string,
  gesture: Gesture,
): Row => ({
  id,
  keys,
  short,
  words,
  gesture,
});
