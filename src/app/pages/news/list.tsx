import '../../styles/news.css';
import type { VersionNews } from '../../offline';

/** What versions bring, the newest first. */
export function NewsList({ news }: { readonly news: readonly VersionNews[] }) {
  return news.map(({ version, news: lines }) => (
    <section key={version} className="news">
      <h2 className="news__version">New in {version}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  ));
}
