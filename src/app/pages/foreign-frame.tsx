/** Stands in place of the writing page inside a page of another site: it opens nothing there but itself. */
export function ForeignFrame() {
  return (
    <main className="problem-page">
      <h1>Ground Bass</h1>
      <p>
        This page is shown inside a page of another site. Lessons are written on a page of their own: here
        none is opened, and nothing is kept.
      </p>
      <p className="problem-page__actions">
        <a className="button button--main" href={window.location.href} target="_blank" rel="noopener">
          Open Ground Bass
        </a>
      </p>
    </main>
  );
}
