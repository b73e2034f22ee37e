/**
 * Starts the worker that computes sound from its own file.
 * @throws the browser's error where it lets the page start none.
 */
export const startWorker = (): Worker =>
  new Worker(new URL('./render-worker.ts', import.meta.url), { type: 'module' });
