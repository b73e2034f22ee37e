/** What a version brings, as `public/what-is-new.json` lists it, newest first. */
export interface VersionNews {
  /** As in `package.json`: three numbers with dots between them. */
  readonly version: string;
  /** Sentences in a teacher's words. */
  readonly news: readonly string[];
}

/** The file's address below the app's own. */
export const NEWS_FILE = 'what-is-new.json';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

function readEntry(entry: unknown): readonly VersionNews[] {
  if (!isRecord(entry) || typeof entry.version !== 'string' || !Array.isArray(entry.news)) return [];
  const news = entry.news.filter((line: unknown) => typeof line === 'string');
  return news.length === 0 ? [] : [{ version: entry.version, news }];
}

/**
 * Reads the text of the file. It may be a later version's, so what is not understood is passed over; a text that is
 * no such file at all has no news.
 */
export function readNews(text: string): readonly VersionNews[] {
  try {
    const list: unknown = JSON.parse(text);
    return Array.isArray(list) ? list.flatMap(readEntry) : [];
  } catch {
    return [];
  }
}

/** Compares two versions number by number: below zero when the first is the older one. */
function compareVersions(one: string, other: string): number {
  const [ones, others] = [one, other].map((version) => version.split('.').map(Number));
  const difference = ones?.map((part, at) => part - (others?.[at] ?? 0)).find((each) => each !== 0);
  return difference ?? 0;
}

/** The news of later versions than this one. */
export const newsSince = (version: string, all: readonly VersionNews[]): readonly VersionNews[] =>
  all.filter((each) => compareVersions(each.version, version) > 0);
