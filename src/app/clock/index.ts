/** Time as the page waits with it; a test holds it in its hand. */
export interface Clock {
  /** Milliseconds that only grow. */
  now(): number;
  /** Calls back once after a time in milliseconds, unless the returned function is called before. */
  after(delay: number, work: () => void): () => void;
}

export const pageClock: Clock = {
  now: () => performance.now(),
  after: (delay, work) => {
    const timer = setTimeout(work, delay);
    return () => clearTimeout(timer);
  },
};
