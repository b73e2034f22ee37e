import { Component, type ReactNode } from 'react';

interface ProblemBoundaryProps {
  /** Hands the lesson out as a file. */
  readonly onSave: () => void;
  /** Is called when the page fails. */
  readonly onFail: () => void;
  /** Whether the lesson stands on this device; what is not saved is in the file only. */
  readonly isSaved: () => boolean;
  readonly children: ReactNode;
}

/** Never a blank page: when the page fails, the lesson can still be taken away. */
export class ProblemBoundary extends Component<ProblemBoundaryProps, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch() {
    this.props.onFail();
  }

  override render() {
    if (!this.state.failed) return this.props.children;
    return (
      <main className="problem-page">
        <h1>Something on this page failed</h1>
        <p>
          {this.props.isSaved()
            ? 'Your lesson is saved on this device as it was a moment ago. Save it as a file too, then reload the page; '
            : 'Your lesson could not be saved on this device. Save it as a file now, before you reload the page; '}
          if it fails again, that file is what a mender needs to see.
        </p>
        <p className="problem-page__actions">
          <button type="button" className="button button--main" onClick={this.props.onSave}>
            Save the lesson file
          </button>
          <button type="button" className="button" onClick={() => window.location.reload()}>
            Reload the page
          </button>
        </p>
      </main>
    );
  }
}

/** Shown when not even a lesson could be opened. */
export function StartFailed() {
  return (
    <main className="problem-page">
      <h1>Ground Bass could not start</h1>
      <p>Nothing on this device was changed. Reload the page; if it fails again, try another browser.</p>
      <p className="problem-page__actions">
        <button type="button" className="button button--main" onClick={() => window.location.reload()}>
          Reload the page
        </button>
      </p>
    </main>
  );
}
