/** What the windows of this device tell each other, and what a storage tells its own window. */

export type News =
  /** Another window has saved a lesson. */
  | { readonly kind: 'saved'; readonly id: string; readonly revision: string }
  /** Another window has taken a lesson off this device. */
  | { readonly kind: 'removed'; readonly id: string }
  /** The database was closed under the page, and what was in it may be gone. */
  | { readonly kind: 'lost' }
  /** A storage that was silent answers again. */
  | { readonly kind: 'back' };

/** News that goes from window to window. */
export type Told = Extract<News, { readonly id: string }>;

/** Carries news between windows. */
export interface Channel {
  tell(news: Told): void;
  /** Calls back with what other windows tell. */
  hear(listener: (news: Told) => void): void;
}

const isTold = (value: unknown): value is Told =>
  typeof value === 'object' &&
  value !== null &&
  'kind' in value &&
  'id' in value &&
  typeof value.id === 'string' &&
  (value.kind === 'removed' ||
    (value.kind === 'saved' && 'revision' in value && typeof value.revision === 'string'));

/** Windows without a channel learn of each other when one comes to the front, and at the latest when they save. */
const NO_CHANNEL: Channel = { tell: () => {}, hear: () => {} };

/** The channel between the windows of this browser that show the app. */
export function openChannel(name: string): Channel {
  if (typeof BroadcastChannel === 'undefined') return NO_CHANNEL;
  try {
    const channel = new BroadcastChannel(name);
    return {
      tell: (news) => channel.postMessage(news),
      hear: (listener) => {
        channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
          // An earlier or later copy of the app may say other things.
          if (isTold(data)) listener(data);
        });
      },
    };
  } catch {
    return NO_CHANNEL;
  }
}
