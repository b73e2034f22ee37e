import RenderWorker from './render-worker?worker&inline';

/**
 * Starts the worker from the page's own text: it takes the place of `start-worker.ts` in the practice page that is a
 * single file, which has no other file to fetch.
 * @throws the browser's error where it lets the page start none.
 */
export const startWorker = (): Worker => new RenderWorker();
