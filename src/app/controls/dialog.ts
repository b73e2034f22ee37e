import { type RefObject, useEffect, useLayoutEffect, useRef } from 'react';

/**
 * For a `dialog` that stands over the page, which waits for as long as it is there. It is closed while it still stands
 * on the page, so that the focus is back where it was before anyone goes on, and is taken from nobody afterwards.
 */
export function useModal(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  useLayoutEffect(() => {
    const shown = dialog.current;
    return () => shown?.close();
  }, []);
  return dialog;
}
