import '../../styles/regrade.css';
import { useState } from 'react';
import { AnotherLine, type LineToRegrade } from './another-line';

/** The same line for another student, folded away under one line. */
export function ForAnotherStudent(given: LineToRegrade) {
  const [open, setOpen] = useState(false);
  if (given.sheet.bars.every(({ notes }) => notes.length === 0)) return null;
  return (
    <details className="shapes" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="shapes__title">{given.piece.name} for another student</span>{' '}
        <span className="shapes__chords">easier · harder · another key, tuning or hand</span>
      </summary>
      {open && <AnotherLine key={given.piece.id} {...given} />}
    </details>
  );
}
