import { rememberedFor } from '../../base';
import type { ComposeRequest } from '../types';
import { type Desk, openDesk } from './desk';

/** Data in text, sets and maps as lists; each object is put into text once. */
const textOf = rememberedFor((part: object): string =>
  JSON.stringify(part, (_, value) => (value instanceof Set || value instanceof Map ? [...value] : value)),
);

/** Everything about a request but its seed, in text. */
const withoutSeed = ({ seed: _, ...parts }: ComposeRequest): string =>
  Object.entries(parts)
    .filter(([, part]) => part !== undefined)
    .map(([name, part]) => `${name} ${typeof part === 'object' ? textOf(part) : part}`)
    .toSorted()
    .join('\n');

let latest: { readonly text: string; readonly desk: Desk } | null = null;

/**
 * The desk that a request is composed at. Takes are lines of one request from other seeds: as long as nothing else
 * changes, they are composed at the same desk, where most of what the search asks is known by then.
 */
export function deskFor(request: ComposeRequest): Desk {
  const text = withoutSeed(request);
  if (latest?.text !== text) latest = { text, desk: openDesk(request) };
  return latest.desk;
}
