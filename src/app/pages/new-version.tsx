import '../styles/new-version.css';
import { useEffect, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { useStore } from 'zustand';
import { version as running } from '../../../package.json';
import { followVersions, type NewVersion, newsSince, type VersionNews } from '../offline';
import type { Session } from '../state';
import { openHandedFiles } from './handed';
import { NewsList } from './news';

/**
 * Keeps the app for the time without a network, opens what the system hands to an installed app, and says when a new
 * version is ready. It stands beside the page in an
 * element of its own, because it comes long after the first look.
 */
export async function keepOffline(session: Session): Promise<void> {
  openHandedFiles(session);
  const version = await followVersions();
  if (version === null) return;
  const place = document.createElement('div');
  document.body.append(place);
  createRoot(place).render(<NewVersionNote session={session} version={version} />);
}

interface NewVersionNoteProps {
  readonly session: Session;
  readonly version: NewVersion;
}

/** Shown only while nothing of the lesson is unsaved, so that nothing is lost by using the new version. */
function NewVersionNote({ session, version }: NewVersionNoteProps) {
  const ready = useStore(version, (state) => state.ready);
  const saved = useStore(
    session.editor,
    (state) => state.saving.kind === 'saved' || state.saving.kind === 'shown',
  );
  const news = useNews(version, ready);
  const [putAway, setPutAway] = useState(false);
  const use = async () => {
    if ((await session.saveNow()).ok) version.use();
  };
  const shown = ready && saved && !putAway;
  return (
    <aside className={shown ? 'new-version' : undefined} aria-label="New version">
      <p role="status">{shown && 'A new version is ready.'}</p>
      {shown && (
        <>
          <NewsList news={news} />
          <button type="button" className="button" onClick={() => void use()}>
            Use it now
          </button>
          <button type="button" className="button button--quiet" onClick={() => setPutAway(true)}>
            Later
          </button>
        </>
      )}
    </aside>
  );
}

/** What the version that waits brings over the one that runs; nothing until it has said so. */
function useNews(version: NewVersion, ready: boolean): readonly VersionNews[] {
  const [news, setNews] = useState<readonly VersionNews[]>([]);
  useEffect(() => {
    if (!ready) return;
    let gone = false;
    void version.news().then((all) => {
      if (!gone) setNews(newsSince(running, all));
    });
    return () => {
      gone = true;
    };
  }, [version, ready]);
  return news;
}
