/** A value with its fields in one order. */
function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, part]) => [name, ordered(part)]),
  );
}

/** A value of plain data as JSON with its fields in one order: equal values have equal texts. */
export const orderedText = (value: unknown): string => JSON.stringify(ordered(value));
