import { useMemo, useState } from 'react';
import { chartInLetters, typedChartIn } from '../../../core/chart';
import type { Naming } from '../../../core/theory';

/** Beside a field for chords, what is typed there; null for letters, which every chart is expected in. */
export const NAMING_HINTS: Readonly<Record<Naming, string | null>> = {
  letters: null,
  german: 'Typed in German names: H, B, Es, Fis. B is a half step below H.',
  'fixed do': 'Typed in fixed do: Do, Lam, Si♭, Fa♯. Letters are understood, too.',
};

interface Typed {
  readonly text: string;
  readonly stored: string;
  readonly naming: Naming;
}

/**
 * A chart that is stored in letters, as it is typed with the lesson's note names. What was typed last stays as it
 * was typed, so that the cursor does; anything that changes the chart from elsewhere is shown anew.
 */
export function useTypedChart(stored: string, naming: Naming, store: (text: string) => void) {
  const [typed, setTyped] = useState<Typed | null>(null);
  const written = useMemo(() => typedChartIn(naming, stored), [naming, stored]);
  return {
    text: typed?.stored === stored && typed.naming === naming ? typed.text : written,
    type: (text: string) => {
      const letters = chartInLetters(naming, text);
      setTyped({ text, stored: letters, naming });
      store(letters);
    },
  };
}
