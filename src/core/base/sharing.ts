import { isRecord } from './is-record';

function shareValue(before: unknown, after: unknown): unknown {
  if (Array.isArray(before) && Array.isArray(after)) {
    const shared = after.map((part, index) => shareValue(before[index], part));
    return shared.length === before.length && shared.every((part, index) => part === before[index])
      ? before
      : shared;
  }
  if (!isRecord(before) || !isRecord(after)) return after;
  const names = Object.keys(after);
  const shared = Object.fromEntries(names.map((name) => [name, shareValue(before[name], after[name])]));
  const isSame =
    names.length === Object.keys(before).length &&
    names.every((name) => name in before && shared[name] === before[name]);
  return isSame ? before : shared;
}

/**
 * A plain document that came back from elsewhere as a copy, with every part that did not change as the very object
 * it was before: what was derived from such a part stays known, and *Undo* does not keep it twice. In lists, parts
 * are compared by their place.
 */
export function shareParts<Document extends object>(before: Document, after: Document): Document {
  // Equal in every part, it has the type of what it was made from.
  return shareValue(before, after) as Document;
}

/** Whether two plain documents hold the same, wherever each came from. */
export function alike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) || Array.isArray(other)) {
    return (
      Array.isArray(one) &&
      Array.isArray(other) &&
      one.length === other.length &&
      one.every((part, index) => alike(part, other[index]))
    );
  }
  if (!isRecord(one) || !isRecord(other)) return false;
  const names = Object.keys(other);
  return (
    names.length === Object.keys(one).length &&
    names.every((name) => name in one && alike(one[name], other[name]))
  );
}
