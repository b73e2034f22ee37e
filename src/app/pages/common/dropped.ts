import { useEffect } from 'react';

type OnFiles = (files: readonly File[]) => void;

/**
 * Takes files that are dropped anywhere on the page, which a browser would else leave for what was dropped. While a
 * dialog stands over the page none are taken, and the pointer shows it.
 * @param onFiles - stays the same from one rendering to the next; null where the page takes none
 */
export function useDroppedFiles(onFiles: OnFiles | null): void {
  useEffect(() => {
    const onDrag = (event: DragEvent) => {
      const { dataTransfer } = event;
      if (!dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      if (onFiles === null || document.querySelector('dialog:modal') !== null)
        dataTransfer.dropEffect = 'none';
      else if (event.type === 'drop') onFiles([...dataTransfer.files]);
    };
    window.addEventListener('dragover', onDrag);
    window.addEventListener('drop', onDrag);
    return () => {
      window.removeEventListener('dragover', onDrag);
      window.removeEventListener('drop', onDrag);
    };
  }, [onFiles]);
}

export const ONE_AT_A_TIME = 'One file is opened at a time. Nothing was changed.';
