import { useEffect } from 'react';

const ONE_AT_A_TIME = 'One file is opened at a time. Nothing was changed.';

/**
 * Takes a file that is dropped anywhere on the page, which a browser would else leave for what was dropped. While a
 * dialog stands over the page none is taken, and the pointer shows it. Both functions stay the same from one rendering
 * to the next.
 * @param onFile - null where the page takes none
 * @param refuse - is told why none of several is taken
 */
export function useDroppedFile(
  onFile: ((file: File) => Promise<void>) | null,
  refuse: (why: string) => void,
): void {
  useEffect(() => {
    const onDrag = (event: DragEvent) => {
      const { dataTransfer } = event;
      if (!dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      if (onFile === null || document.querySelector('dialog:modal') !== null)
        dataTransfer.dropEffect = 'none';
      else if (event.type === 'drop') {
        const [file, ...others] = dataTransfer.files;
        if (others.length > 0) refuse(ONE_AT_A_TIME);
        else if (file !== undefined) void onFile(file);
      }
    };
    window.addEventListener('dragover', onDrag);
    window.addEventListener('drop', onDrag);
    return () => {
      window.removeEventListener('dragover', onDrag);
      window.removeEventListener('drop', onDrag);
    };
  }, [onFile, refuse]);
}
