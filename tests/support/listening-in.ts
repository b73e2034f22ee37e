import type { Page } from 'playwright-core';

/**
 * Lets the page tell what it plays: from its next load on `window.loudestNow()` is the loudest of the latest samples of
 * its audio devices, from 0 to 1. Nothing is done until it is asked.
 * @param samples - that are looked at, a power of two from 32 on; at 48,000 Hz 256 are five milliseconds
 */
export async function listenIn(page: Page, samples: number): Promise<void> {
  await page.addInitScript((count) => {
    const ears: AnalyserNode[] = [];
    const latest = new Float32Array(count);
    Object.assign(window, {
      loudestNow: () =>
        ears.reduce((most, ear) => {
          ear.getFloatTimeDomainData(latest);
          return latest.reduce((loudest, sample) => Math.max(loudest, Math.abs(sample)), most);
        }, 0),
    });
    const connect = AudioNode.prototype.connect;
    Reflect.set(AudioNode.prototype, 'connect', function (this: AudioNode, ...to: unknown[]) {
      if (to[0] instanceof AudioDestinationNode) {
        const ear = new AnalyserNode(this.context, { fftSize: count });
        Reflect.apply(connect, this, [ear]);
        ears.push(ear);
      }
      return Reflect.apply(connect, this, to);
    });
  }, samples);
}
