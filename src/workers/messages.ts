/** What the page sends to a worker. */
export type WorkerCall<Job> =
  | { readonly id: number; readonly job: Job }
  /** Nobody waits for the answer any more. */
  | { readonly id: number; readonly calledOff: true };

/** Memory that a worker may use again: it came with an answer, and is read no more. */
export interface GivenBack {
  readonly givenBack: readonly ArrayBuffer[];
}

/** What a worker sends to the page. */
export type WorkerReply<Answer> =
  | { readonly id: number; readonly answer: Answer }
  /** The worker is still at it: work in many steps says so now and then, and how much of it is done (0 to 1) if it knows. */
  | { readonly id: number; readonly alive: true; readonly share?: number };
