/** Something that a page may find missing in a browser. */
export interface Feature {
  /** As the first column of the guide's table of browsers has it. */
  readonly name: string;
  /** An expression that is true where it is there. */
  readonly there: string;
  /** All three browsers have it, so that the guide says nothing of it. */
  readonly everywhere?: true;
}

/** Asks what can be encoded; the answers are there a moment later. */
export const ASK_ENCODERS = `(() => {
  const encodes = {};
  window.encodes = encodes;
  const ask = (name, encoder, config) =>
    encoder?.isConfigSupported(config).then(({ supported }) => { encodes[name] = supported; }, () => {});
  ask('aac', window.AudioEncoder, { codec: 'mp4a.40.2', sampleRate: 44100, numberOfChannels: 2, bitrate: 192000 });
  ask('opus', window.AudioEncoder, { codec: 'opus', sampleRate: 48000, numberOfChannels: 2, bitrate: 128000 });
  const picture = { width: 1280, height: 720, bitrate: 3000000, framerate: 30 };
  ask('avc', window.VideoEncoder, { codec: 'avc1.640028', ...picture });
  ask('vp9', window.VideoEncoder, { codec: 'vp09.00.40.08', ...picture });
  return true;
})()`;

/** What the app uses where a browser has it. */
export const FEATURES: readonly Feature[] = [
  { name: 'Web MIDI', there: `'requestMIDIAccess' in navigator` },
  { name: 'sharing', there: `'share' in navigator` },
  { name: 'opening lesson files from the system', there: `'launchQueue' in window` },
  { name: 'lessons in a folder', there: `'showDirectoryPicker' in window` },
  { name: 'lasting storage', there: `typeof navigator.storage?.persist === 'function'` },
  { name: 'AAC', there: `window.encodes?.aac === true` },
  { name: 'H.264', there: `window.encodes?.avc === true` },
  { name: 'VP9', there: `window.encodes?.vp9 === true`, everywhere: true },
  { name: 'Opus', there: `window.encodes?.opus === true`, everywhere: true },
  { name: 'requestIdleCallback', there: `'requestIdleCallback' in window` },
  { name: 'field-sizing', there: `CSS.supports('field-sizing', 'content')` },
  { name: 'content-visibility', there: `CSS.supports('content-visibility', 'auto')`, everywhere: true },
  { name: 'output latency', there: `'outputLatency' in AudioContext.prototype`, everywhere: true },
  { name: 'screen wake lock', there: `'wakeLock' in navigator` },
  { name: 'Media Session', there: `'mediaSession' in navigator` },
  { name: 'service worker', there: `'serviceWorker' in navigator` },
  { name: 'microphone', there: `navigator.mediaDevices !== undefined` },
  { name: 'full screen', there: `'requestFullscreen' in document.documentElement` },
];

/**
 * Reads the guide's table of browsers.
 * @returns each feature's words with the browsers that lack it, as they stand there
 */
export function lackedIn(guide: string): readonly { readonly words: string; readonly browsers: string }[] {
  const [, table = ''] = guide.split(
    '| feature | lacking in | what happens there instead |\n|---|---|---|\n',
  );
  return (table.split('\n\n')[0] ?? '').split('\n').flatMap((row) => {
    const [, words, browsers, instead] = row.split('|').map((cell) => cell.trim());
    return words === undefined || browsers === undefined || !instead ? [] : [{ words, browsers }];
  });
}
