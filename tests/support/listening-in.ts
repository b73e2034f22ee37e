import type { Page } from 'playwright-core';

interface Ear {
  /** Samples that are looked at each time; at 48,000 Hz 256 are five milliseconds. */
  readonly samples: number;
  /** Milliseconds from one look to the next. */
  readonly every: number;
}

/**
 * Listens to what an audio device of the page plays from now on: at each look the window hears an event `heard` whose
 * detail is the loudest of the latest samples, from 0 to 1.
 */
export async function listenIn(page: Page, ear: Ear): Promise<void> {
  await page.addInitScript(({ samples, every }) => {
    const connect = AudioNode.prototype.connect;
    Reflect.set(AudioNode.prototype, 'connect', function (this: AudioNode, ...to: unknown[]) {
      if (to[0] instanceof AudioDestinationNode) {
        const analyser = new AnalyserNode(this.context, { fftSize: samples });
        Reflect.apply(connect, this, [analyser]);
        const latest = new Float32Array(samples);
        setInterval(() => {
          analyser.getFloatTimeDomainData(latest);
          const loudest = latest.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
          window.dispatchEvent(new CustomEvent('heard', { detail: loudest }));
        }, every);
      }
      return Reflect.apply(connect, this, to);
    });
  }, ear);
}
