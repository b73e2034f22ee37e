import { useState } from 'react';
import { barName } from '../../../core/base';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { SelectField } from '../../controls';
import { Later } from '../at-work';
import { numberOf, type SeveralBars } from './edited-place';
import { EDITOR } from './later-editor';

interface SeveralBarsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

const EVERY = [
  { value: '1', label: 'every bar' },
  { value: '2', label: 'every second bar' },
  { value: '4', label: 'every fourth bar' },
] as const;

/** An aim for several bars at once, folded away. */
export function SeveralBarsAims({ piece, sheet }: SeveralBarsProps) {
  const [open, setOpen] = useState(false);
  const [wish, setWish] = useState({ first: 0, last: 3, every: 1 });
  const most = Math.min(piece.bars.length, sheet.bars.length) - 1;
  if (most < 1) return null;
  const first = Math.min(wish.first, most);
  const last = Math.max(first, Math.min(wish.last, most));
  const place: SeveralBars = { kind: 'bars', first, last, every: wish.every };
  const bars = Array.from({ length: most + 1 }, (_, bar) => ({
    value: String(bar),
    label: barName(numberOf(sheet, bar)),
  }));
  return (
    <details className="hand-pad" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="fingering__title">Aims for several bars at once</span>
      </summary>
      {open && (
        <>
          <div className="aims aims__place">
            <SelectField
              label="From"
              where="for several bars"
              value={String(first)}
              options={bars}
              onChange={(bar) => setWish({ ...wish, first: Number(bar) })}
            />
            <SelectField
              label="To"
              where="for several bars"
              value={String(last)}
              options={bars.slice(first)}
              onChange={(bar) => setWish({ ...wish, last: Number(bar) })}
            />
            <SelectField<'1' | '2' | '4'>
              label="Which of them"
              wide
              value={wish.every === 4 ? '4' : wish.every === 2 ? '2' : '1'}
              options={EVERY}
              onChange={(every) => setWish({ ...wish, every: Number(every) })}
            />
          </div>
          <Later part={EDITOR} given={{ piece, sheet, place }} />
        </>
      )}
    </details>
  );
}
