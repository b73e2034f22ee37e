import type { ReactNode } from 'react';

interface FoldProps {
  readonly name: ReactNode;
  /** On a large screen, and on one that stands upright, it stands below the foot and takes room from the music, instead of standing over it. */
  readonly flows?: boolean;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly children: ReactNode;
}

/** Words that wait folded at the foot of the large view: the music has the room. Escape folds them again. */
export function Fold({ name, flows = false, open, onOpen, children }: FoldProps) {
  return (
    <details
      className={`show__fold${flows ? ' show__fold--flows' : ''}`}
      open={open}
      onToggle={(event) => onOpen(event.currentTarget.open)}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open) return;
        // It would close the whole view.
        event.preventDefault();
        event.currentTarget.querySelector('summary')?.focus();
        onOpen(false);
      }}
    >
      <summary>{name}</summary>
      <div className="show__unfolded">{children}</div>
    </details>
  );
}
