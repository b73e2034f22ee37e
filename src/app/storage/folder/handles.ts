/**
 * The File System Access API as far as it is used and TypeScript does not know it (WICG, *File System Access*,
 * `showDirectoryPicker`, `queryPermission`, `requestPermission`).
 */
type Permission = 'granted' | 'denied' | 'prompt';

interface PermissionAsking {
  queryPermission?(descriptor: { readonly mode: 'readwrite' }): Promise<Permission>;
  requestPermission?(descriptor: { readonly mode: 'readwrite' }): Promise<Permission>;
}

type Picker = (options: {
  readonly id: string;
  readonly mode: 'readwrite';
}) => Promise<FileSystemDirectoryHandle>;

const MODE = { mode: 'readwrite' } as const;

const picker = (): Picker | null => {
  const found: unknown = Reflect.get(globalThis, 'showDirectoryPicker');
  return typeof found === 'function' ? (found as Picker) : null;
};

/** Whether this browser lets a page keep files in a folder. */
export const canKeepFolder = (): boolean => picker() !== null;

/** Asks the user for a folder; null where they think better of it. Call it from a click. */
export async function askForFolder(): Promise<FileSystemDirectoryHandle | null> {
  try {
    return (await picker()?.({ id: 'lessons', ...MODE })) ?? null;
  } catch (fault) {
    if (fault instanceof DOMException && fault.name === 'AbortError') return null;
    throw fault;
  }
}

/**
 * Whether the page may read and write in a folder that was chosen before.
 * @param ask - asks the user where the browser wants that; only from a click
 */
export async function mayUse(
  folder: FileSystemDirectoryHandle & PermissionAsking,
  ask: boolean,
): Promise<boolean> {
  const answer = (await folder.queryPermission?.(MODE)) ?? 'granted';
  if (answer === 'granted' || !ask) return answer === 'granted';
  return (await folder.requestPermission?.(MODE)) === 'granted';
}

/**
 * The text of each file in a folder whose name asks for it; files that cannot be read at this moment are left out.
 * `unfinished` are empty: another page, or what brings files from elsewhere, has made them and not written them yet.
 */
export async function textsIn(
  folder: FileSystemDirectoryHandle,
  wanted: (name: string) => boolean,
): Promise<{
  readonly texts: ReadonlyMap<string, string>;
  readonly names: readonly string[];
  readonly unread: readonly string[];
  readonly unfinished: readonly string[];
}> {
  const texts = new Map<string, string>();
  const names: string[] = [];
  const unread: string[] = [];
  const unfinished: string[] = [];
  for await (const [name, handle] of folder.entries()) {
    names.push(name);
    if (handle.kind !== 'file' || !wanted(name)) continue;
    try {
      const file = await (handle as FileSystemFileHandle).getFile();
      if (file.size === 0) unfinished.push(name);
      else if (file.size > LARGEST) unread.push(name);
      else texts.set(name, await file.text());
    } catch {
      unread.push(name);
    }
  }
  return { texts, names, unread, unfinished };
}

/** Far above any lesson, in bytes. */
const LARGEST = 6_000_000;

/** What a file is called until it is whole: no lesson file to any page. */
const UNFINISHED = '.unfinished';

/** A file that can be renamed (`move`, proposed for the File System Standard): some browsers do so in some folders only. */
interface Movable {
  move?(name: string): Promise<void>;
}

/**
 * Writes a file as a whole: until it is closed, the old one stands (File System Standard, `createWritable`). A new one
 * is made under another name and renamed, because the browser makes it empty; where it renames nothing, it is empty
 * for a moment.
 */
export async function writeText(
  folder: FileSystemDirectoryHandle,
  name: string,
  text: string,
): Promise<void> {
  if (!(await isThere(folder, name)) && (await writeAndRename(folder, name, text))) return;
  await fill(await folder.getFileHandle(name, { create: true }), text);
}

const isThere = (folder: FileSystemDirectoryHandle, name: string): Promise<boolean> =>
  folder.getFileHandle(name).then(
    () => true,
    () => false,
  );

async function fill(handle: FileSystemFileHandle, text: string): Promise<void> {
  const writable = await handle.createWritable();
  await writable.write(text);
  await writable.close();
}

/** Folders in which this browser renames no file: it is not tried again. */
const fixed = new WeakSet<FileSystemDirectoryHandle>();

async function writeAndRename(
  folder: FileSystemDirectoryHandle,
  name: string,
  text: string,
): Promise<boolean> {
  if (fixed.has(folder)) return false;
  const handle: FileSystemFileHandle & Movable = await folder.getFileHandle(name + UNFINISHED, {
    create: true,
  });
  try {
    if (handle.move !== undefined) {
      await fill(handle, text);
      await handle.move(name);
      return true;
    }
  } catch {
    // Written under its own name below, where a full disk or a folder that is gone is told.
  }
  fixed.add(folder);
  await removeFile(folder, name + UNFINISHED);
  return false;
}

/** Removes a file; one that is gone already is no fault. */
export async function removeFile(folder: FileSystemDirectoryHandle, name: string): Promise<void> {
  try {
    await folder.removeEntry(name);
  } catch (fault) {
    if (!(fault instanceof DOMException && fault.name === 'NotFoundError')) throw fault;
  }
}
