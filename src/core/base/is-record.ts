/** Whether a value that came from anywhere has named fields: neither a list nor nothing. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
