/** Work that can be paused between its steps, by whoever takes them; its value comes with the last. */
export type Steps<Value> = Generator<undefined, Value, undefined>;

/** Takes all steps at once. */
export function finish<Value>(steps: Steps<Value>): Value {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
