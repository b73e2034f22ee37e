import type { Session } from '../../../state';
import { type FolderDoor, loadFolder } from '../../../storage';

/** Milliseconds after a change, or after the last look, before the next one; a long look is followed by a longer rest. */
const REST = 4000;
const REST_FOR_LOOK = 20;

let opened: { readonly session: Session; readonly door: Promise<FolderDoor> } | null = null;

/** The folder of this session; the first call takes up the one that was chosen before, and watches from then on. */
export function folderOf(session: Session): Promise<FolderDoor> {
  if (opened?.session !== session) opened = { session, door: open(session) };
  return opened.door;
}

async function open(session: Session): Promise<FolderDoor> {
  const { openFolder } = await loadFolder();
  const door = openFolder({
    storage: session.storage,
    saveNow: session.saveNow,
    onChanged: async (ids) => {
      const { id } = session.lessons.getState().document;
      if (!ids.includes(id)) return;
      // What was typed meanwhile goes on as a lesson of its own, which is said.
      await session.saveNow();
      if (session.lessons.getState().document.id === id) await session.openSaved(id);
    },
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  let rest = REST;
  const look = async () => {
    const from = performance.now();
    await door.look();
    rest = Math.max(REST, REST_FOR_LOOK * (performance.now() - from));
  };
  const lookSoon = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void look(), rest);
  };
  session.lessons.subscribe(lookSoon);
  // What is changed on the shelf, in another window or by forgetting a student reaches the files, too.
  session.storage.watch(lookSoon);
  // A synchroniser works while the teacher is elsewhere: what it brought is looked for when they come back.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void look();
  });
  window.addEventListener('focus', () => void look());
  await door.begin();
  return door;
}
