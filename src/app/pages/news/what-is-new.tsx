import { useEffect, useState } from 'react';
import { version as running } from '../../../../package.json';
import { NEWS_FILE, newsSince, readNews, type VersionNews } from '../../offline';
import { NewsList } from './list';

/** The file as this version has it. */
async function fetchNews(): Promise<readonly VersionNews[] | null> {
  const response = await fetch(`./${NEWS_FILE}`).catch(() => null);
  return response?.ok ? readNews(await response.text()) : null;
}

/** Which version runs, and what it and those before it brought. */
export function WhatIsNew() {
  const [news, setNews] = useState<readonly VersionNews[] | null | undefined>(undefined);
  useEffect(() => {
    let gone = false;
    void fetchNews().then((fetched) => {
      if (!gone) setNews(fetched);
    });
    return () => {
      gone = true;
    };
  }, []);
  if (news === undefined) return null;
  if (news === null)
    return (
      <p>
        This is version {running}. What is new in it could not be loaded. Check that the page is still
        reachable and load it again.
      </p>
    );
  // While a later version waits or has taken over in another window, this page is still its own version.
  const later = newsSince(running, news);
  return (
    <>
      <p>This is version {running}.</p>
      <NewsList news={news.filter((each) => !later.includes(each))} />
    </>
  );
}
