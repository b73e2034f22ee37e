import { useState } from 'react';
import { AT_SIGHT } from '../../../core/asking';
import { shareParts } from '../../../core/base';
import type { LinePiece } from '../../../core/lesson';
import { useAtWork } from '../at-work';

const CHANGED = 'The lesson was changed meanwhile, so nothing was added. Ask once more.';
const FAILED = 'They could not be made just now. The lesson is as it was; try again.';

interface AtSightProps {
  readonly piece: LinePiece;
}

/** Bars that the student has not seen, made of what the line teaches. */
export function AtSight({ piece }: AtSightProps) {
  const { session } = useAtWork();
  const { lessons, composer } = session;
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState('');
  const add = async (bars: (typeof AT_SIGHT)[number]) => {
    const { lesson: asked } = lessons.getState();
    const deed = `add ${bars} bars to read at sight` as const;
    setBusy(true);
    const answer = await composer.compose(deed, asked, piece.id, new AbortController().signal);
    setBusy(false);
    if (!answer.ok) return setSaid(FAILED);
    if (lessons.getState().lesson !== asked) return setSaid(CHANGED);
    const { lesson: made, remarks } = answer.value;
    const isAdded = made.pieces.length > asked.pieces.length;
    if (isAdded) lessons.change(() => shareParts(asked, made), { label: deed });
    setSaid([...(isAdded ? [`${bars} bars stand behind ${piece.name} now.`] : []), ...remarks].join(' '));
  };
  return (
    <>
      <p className="asking__sight">
        Bars to read at sight, of the same level, techniques, chords and reach:{' '}
        {AT_SIGHT.map((bars) => (
          <button
            key={bars}
            type="button"
            className="button button--quiet"
            aria-label={`Add ${bars} bars to read at sight behind ${piece.name}`}
            disabled={busy}
            onClick={() => void add(bars)}
          >
            Add {bars} bars
          </button>
        ))}
      </p>
      <p role="status" aria-label={`Bars to read at sight, ${piece.name}`}>
        {busy ? 'In the making …' : said}
      </p>
      <p className="hint">
        For the student’s own line, add blank bars below the sheet and choose what it keeps to: the chords of{' '}
        {piece.name} stand over them.
      </p>
    </>
  );
}
