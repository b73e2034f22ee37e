import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { deriveSheets, type Lesson } from '../../../core/lesson';
import { buildWhileWanted, type Handout, type HandoutPage } from '../../../handout';
import { practiceAddress } from '../common';

/** Quiet time after a change before the pages are drawn again, in milliseconds. */
const PAUSE = 60;

type Preview =
  | { readonly kind: 'first' }
  | { readonly kind: 'drawn'; readonly handout: Handout; readonly lesson: Lesson }
  | { readonly kind: 'failed' };

/** The handout of a lesson, drawn again shortly after every change; until then the one before stays. */
function usePreview(lesson: Lesson): Preview {
  const [preview, setPreview] = useState<Preview>({ kind: 'first' });
  useEffect(() => {
    let gone = false;
    const draw = async () => {
      try {
        const address = practiceAddress(window.location.href);
        const handout = await buildWhileWanted(lesson, deriveSheets(lesson), address, () => !gone);
        if (handout !== null && !gone) setPreview({ kind: 'drawn', handout, lesson });
      } catch {
        if (!gone) setPreview({ kind: 'failed' });
      }
    };
    const timer = window.setTimeout(() => void draw(), PAUSE);
    return () => {
      gone = true;
      window.clearTimeout(timer);
    };
  }, [lesson]);
  return preview;
}

/** The pages as they will be printed. */
export function HandoutPreview({ lesson }: { readonly lesson: Lesson }) {
  const preview = usePreview(lesson);
  const { paper } = preview.kind === 'drawn' ? preview.handout : lesson.handout;
  const busy = preview.kind === 'first' || (preview.kind === 'drawn' && preview.lesson !== lesson);
  return (
    // The pages scroll in a box of their own on narrow screens, so the keys must reach it.
    <section
      className="preview"
      aria-label="Preview of the handout"
      aria-busy={busy}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region is reached by the keys
      tabIndex={0}
    >
      <div className="preview__facts" role="status" aria-label="Size of the handout">
        {preview.kind === 'drawn' && (
          <>
            <p>
              {preview.handout.pages.length === 1 ? 'One page' : `${preview.handout.pages.length} pages`},{' '}
              {paper}
            </p>
            {preview.handout.remarks.map((remark) => (
              <p key={remark} className="preview__remark">
                {remark}
              </p>
            ))}
          </>
        )}
        {preview.kind === 'failed' && (
          <p className="preview__remark">
            The page’s type could not be loaded, so the handout is not drawn. Reload the page when it is
            reachable again; nothing of the lesson is lost.
          </p>
        )}
      </div>
      {preview.kind === 'drawn'
        ? preview.handout.pages.map((page) => <PageView key={page.number} page={page} paper={paper} />)
        : preview.kind === 'first' && <div className={`preview__page preview__page--${paper}`} />}
    </section>
  );
}

interface PageViewProps {
  readonly page: HandoutPage;
  readonly paper: Handout['paper'];
}

function PageView({ page, paper }: PageViewProps) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    box.current?.replaceChildren(page.svg);
  }, [page]);
  return <div ref={box} className={`preview__page preview__page--${paper}`} />;
}
