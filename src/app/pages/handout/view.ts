import { type ComponentType, useState } from 'react';
import type { Lesson } from '../../../core/lesson';
import { useAtWork } from '../at-work';

/** The two halves of the desk while the handout is designed. */
interface DesignerView {
  readonly Panel: ComponentType<{ readonly settled: Lesson; readonly onClose: () => void }>;
  readonly Preview: ComponentType<{ readonly lesson: Lesson }>;
}

/** The handout's designer, which is fetched when it is first asked for; `View` is null while it is closed. */
export function useDesigner() {
  const { session } = useAtWork();
  const [View, setView] = useState<DesignerView | null>(null);
  const open = async () => {
    try {
      const [{ HandoutPanel }, { HandoutPreview }] = await Promise.all([
        import('./panel'),
        import('./preview'),
      ]);
      window.scrollTo({ top: 0, behavior: 'instant' });
      setView({ Panel: HandoutPanel, Preview: HandoutPreview });
    } catch {
      session.editor.setState({
        notice: 'The handout could not be opened. Check that the page is still reachable and load it again.',
      });
    }
  };
  const close = () => {
    setView(null);
    requestAnimationFrame(() => document.querySelector<HTMLElement>('.header__handout')?.focus());
  };
  return { View, close, toggle: () => (View === null ? void open() : close()) };
}
