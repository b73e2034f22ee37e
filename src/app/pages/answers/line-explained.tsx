import { useCallback } from 'react';
import type { LineSheet } from '../../../core/lesson';
import { useAtWork } from '../at-work';
import { useAnswer } from './answer';

/** The line is explained when it has been at rest for this long, in milliseconds. */
const REST = 400;

/** What the whole line teaches, where it leads and what to listen for. */
export function LineExplained({ sheet }: { readonly sheet: LineSheet }) {
  const { session } = useAtWork();
  const ask = useCallback(
    ({ id }: LineSheet) => session.composer.explain(session.lessons.getState().lesson, id),
    [session],
  );
  const told = useAnswer(sheet, ask, REST);
  return (
    <p className="piece__explained" aria-busy={told?.of !== sheet}>
      {told?.answer?.join(' ')}
    </p>
  );
}
