/**
 * The end of an exhaustive `switch`: the compiler refuses the call while a case is missing.
 * @throws Error when reached at run time, which a validated document cannot do.
 */
export function unreachable(value: never): never {
  throw new Error(`Unexpected value: ${JSON.stringify(value)}`);
}
