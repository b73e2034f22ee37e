const NAME = 'ground-bass keys';

/** The keys that the user chose on this device, as text; null where none were, or where the browser keeps nothing. */
export function readKeys(): string | null {
  try {
    return localStorage.getItem(NAME);
  } catch {
    return null;
  }
}

/** Keeps the user's keys on this device; says whether that worked. */
export function writeKeys(text: string): boolean {
  try {
    localStorage.setItem(NAME, text);
    return true;
  } catch {
    return false;
  }
}
