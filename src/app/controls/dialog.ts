import { type RefObject, useEffect, useRef } from 'react';

/** For a `dialog` that stands over the page, which waits for as long as it is there. */
export function useModal(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return dialog;
}
