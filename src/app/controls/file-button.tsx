import { type ReactNode, useRef } from 'react';

interface FileButtonProps {
  /** What the chooser offers, as MIME types or endings. */
  readonly accept: string;
  readonly onChoose: (file: File) => Promise<void>;
  readonly children: ReactNode;
}

/** A button that lets a file be chosen; the same file can be chosen again. */
export function FileButton({ accept, onChoose, children }: FileButtonProps) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="button" onClick={() => chooser.current?.click()}>
        {children}
      </button>
      <input
        ref={chooser}
        type="file"
        hidden
        accept={accept}
        onChange={async (event) => {
          const field = event.currentTarget;
          const file = field.files?.[0];
          if (file) await onChoose(file);
          field.value = '';
        }}
      />
    </>
  );
}
