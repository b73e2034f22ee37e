/** What a function gives back that can fail for reasons a person must be told. */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

export const success = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});

export const failure = <Problem>(problem: Problem): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem,
});
