/**
 * The parts of Tone that play finished stems, and nothing else of it. They come from its modules because its
 * front door starts an audio device and a blob worker on import, which the page's security policy forbids.
 */
import 'tone/build/esm/core/context/Destination.js';

export { Channel } from 'tone/build/esm/component/channel/Channel.js';
export { Split } from 'tone/build/esm/component/channel/Split.js';
export { Context } from 'tone/build/esm/core/context/Context.js';
export { Gain } from 'tone/build/esm/core/context/Gain.js';
export { setContext } from 'tone/build/esm/core/context/GlobalContext.js';
export { Player as StemPlayer } from 'tone/build/esm/source/buffer/Player.js';
