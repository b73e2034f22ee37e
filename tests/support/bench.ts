/**
 * The bench: the rooms that need a browser, without the app around them. It is built like the app and stands
 * under the same Content-Security-Policy. A test opens it and uses a room in the page:
 *
 *     const { page, expectClean } = await openBench();
 *     const width = await page.evaluate(async () => {
 *       const score = await window.rooms.score();
 *       return score.someFunction(document.querySelector('#bench'));
 *     });
 *
 * The function given to `evaluate` runs in the page: it sees nothing of the test file but the JSON values
 * passed as its second argument, and gives back JSON values.
 */
const rooms = {
  base: () => import('../../src/core/base'),
  theory: () => import('../../src/core/theory'),
  chart: () => import('../../src/core/chart'),
  fretboard: () => import('../../src/core/fretboard'),
  feel: () => import('../../src/core/feel'),
  notation: () => import('../../src/core/notation'),
  line: () => import('../../src/core/line'),
  lesson: () => import('../../src/core/lesson'),
  writing: () => import('../../src/core/writing'),
  composing: () => import('../../src/core/composing'),
  performance: () => import('../../src/core/performance'),
  score: () => import('../../src/score'),
  sound: () => import('../../src/sound'),
  tracks: () => import('../../src/tracks'),
  handout: () => import('../../src/handout'),
};

/** The address of the audio worklet that listens to what a page plays (see `tap.js`). */
const tapAddress = new URL('./tap.js', import.meta.url).href;

/** A run of samples of the left channel from a frame of the device's time on; null where nothing is connected. */
interface HeardBlock {
  readonly frame: number;
  readonly left: Float32Array | null;
}

/**
 * Listens to everything that goes to the loudspeakers from now on, whoever plays it.
 * @param onBlock - is called with every block, in order; `rate` is the device's, in Hz
 */
function listen(onBlock: (block: HeardBlock, rate: number) => void): void {
  const connect = AudioNode.prototype.connect;
  let tap: Promise<AudioWorkletNode> | null = null;
  const open = async (context: BaseAudioContext): Promise<AudioWorkletNode> => {
    await context.audioWorklet.addModule(tapAddress);
    const node = new AudioWorkletNode(context, 'tap');
    node.port.onmessage = ({ data }: MessageEvent<HeardBlock>) => onBlock(data, context.sampleRate);
    Reflect.apply(connect, node, [context.destination]);
    return node;
  };
  Reflect.set(AudioNode.prototype, 'connect', function (this: AudioNode, to: unknown, ...rest: unknown[]) {
    if (to instanceof AudioDestinationNode) {
      tap ??= open(this.context);
      void tap.then((node) => Reflect.apply(connect, this, [node]));
    }
    return Reflect.apply(connect, this, [to, ...rest]);
  });
}

declare global {
  interface Window {
    rooms: typeof rooms;
    listen: typeof listen;
  }
}

window.rooms = rooms;
window.listen = listen;

export {};
