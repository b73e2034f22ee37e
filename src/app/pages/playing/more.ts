import { type FunctionComponent, useEffect, useState } from 'react';
import type { SentenceProps } from './props';

type MoreState =
  | { readonly kind: 'folded' }
  | { readonly kind: 'here'; readonly More: FunctionComponent<SentenceProps> }
  | { readonly kind: 'missing' };

let fetched: MoreState = { kind: 'folded' };

/** The rest of the sentence, which the first look does without: fetched when it is first unfolded. */
export function useMore(open: boolean): MoreState {
  const [state, setState] = useState(fetched);
  useEffect(() => {
    if (!open || fetched.kind === 'here') return;
    let gone = false;
    import('./details').then(
      ({ Details }) => {
        fetched = { kind: 'here', More: Details };
        if (!gone) setState(fetched);
      },
      () => {
        if (!gone) setState({ kind: 'missing' });
      },
    );
    return () => {
      gone = true;
    };
  }, [open]);
  return state;
}
