import { describe, expect, test } from 'vitest';
import {
  analyseLine,
  type ComposeRequest,
  composeLine,
  type Level,
  type LineNotes,
  TECHNIQUES,
  type Technique,
} from '../../src/core/line';
import { functionsIn } from '../../src/core/line/functions';
import { hearLine, silenceOf } from '../../src/core/line/hearing';
import { modelOf } from '../../src/core/line/read-request';
import { TECHNIQUE_ROWS, TECHNIQUE_TABLE } from '../../src/core/line/techniques/table';
import type { Drawn, Seen } from '../../src/core/line/techniques/types';
import { line, request } from './notation';

/** A chart with a bar that shows a technique, and the same bar without it. */
interface Example {
  readonly chart: string;
  readonly shown: string;
  readonly without: string;
  /** It is told of whole bars alone. */
  readonly wholeBars?: boolean;
}

/** One for each technique: the compiler asks for that of a new one. */
const EXAMPLES: Readonly<Record<Technique, Example>> = {
  'chord tones': {
    chart: '| C | F |',
    shown: 'C2 . E2 . G2 . E2 . | F1 . - - - - - -',
    without: 'D2 . F2 . A2 . B1 . | F1 . - - - - - -',
  },
  'scale steps': {
    chart: '| C | C |',
    shown: 'C2 . D2 . E2 . E2 . | C2 . - - - - - -',
    without: 'C2 . E2 . E2 . E2 . | C2 . - - - - - -',
  },
  'beat one silent': {
    chart: '| F | C |',
    shown: '- - F1 . A1 . C2 . | C2 . - - - - - -',
    without: 'F1 . F1 . A1 . C2 . | C2 . - - - - - -',
  },
  'long silences': {
    chart: '| F | C |',
    shown: 'F1 . A1 . - - - - | C2 . - - - - - -',
    without: 'F1 . F1 . A1 . - - | C2 . - - - - - -',
    wholeBars: true,
  },
  octave: {
    chart: '| F | C |',
    shown: 'F1 . F2 . F1 . A1 . | C2 . - - - - - -',
    without: 'F1 . C2 . F1 . A1 . | C2 . - - - - - -',
  },
  'approach note': {
    chart: '| C | F |',
    shown: 'C2 . E2 . C2 . G♭1 . | F1 . - - - - - -',
    without: 'C2 . E2 . C2 . E1 . | F1 . - - - - - -',
  },
  anticipation: {
    chart: '| C | D |',
    shown: 'C2 . E2 . G2 . . D2~ | D2 . - - - - - -',
    without: 'C2 . E2 . G2 . . E2 | D2 . - - - - - -',
  },
};

/** The first bar of a line as the analysis sees it. */
function seenOf(chart: string, notes: string): Seen {
  const model = modelOf(request(chart));
  const heard = hearLine(model, line(notes));
  const [bar] = model.bars;
  if (!bar) throw new Error('A chart has a bar.');
  const tones = heard[0] ?? [];
  const around = {
    before: [],
    ahead: [{ stretch: model.bars[1]?.stretches[0], first: heard[1]?.[0] ?? null }],
  };
  return { bar, tones, functions: functionsIn(bar, tones, around) };
}

/** The same bar as a contour, as the search draws it. */
function drawnOf(chart: string, notes: string): Drawn {
  const { bar, tones } = seenOf(chart, notes);
  const anchor = tones.find(({ interval }) => interval === 0)?.midi ?? tones[0]?.midi ?? 0;
  return {
    offsets: tones.map(({ midi }) => midi - anchor),
    classes: tones.map(({ midi }) => midi % 12),
    members: tones.map(({ member }) => member),
    silentOne: tones[0]?.start !== 0,
    longestSilence: silenceOf(tones, bar.ticks).longest / bar.ticks,
  };
}

const CHART = '| F | C7 | F | C7 | B♭ | F | C7 | F |';
const FEELS = ['early-ska', 'one-drop', 'disco', 'walking-swing'] as const;

const takes = (level: Level, techniques: readonly Technique[]) =>
  FEELS.map((feel, seed) => request(CHART, { feel, level, seed, techniques, key: 'F' }));

describe.each(TECHNIQUE_ROWS.map((row) => ({ row, technique: row.technique })))('$technique', ({ row }) => {
  const { technique } = row;

  test('has its row, with a source and a few words', () => {
    expect(TECHNIQUE_TABLE[technique]).toBe(row);
    expect(row.source).not.toBe('');
    expect(row.hint).not.toBe('');
  });

  test('is recognised where it is shown, and only there', () => {
    const { chart, shown, without } = EXAMPLES[technique];
    const first = (notes: string) => analyseLine(request(chart), line(notes))[0]?.techniques ?? [];
    expect(first(shown)).toContain(technique);
    expect(first(without)).not.toContain(technique);
  });

  test('is foreseen where its notes have a pitch, or brought by the leads', () => {
    const { chart, shown, without } = EXAMPLES[technique];
    expect(row.mayShow(drawnOf(chart, shown)) || row.lead !== null).toBe(true);
    expect(row.mayShow(drawnOf(chart, without))).toBe(false);
  });

  test('is seen in part of a bar as in the whole, unless it is told of whole bars', () => {
    const { chart, shown, without, wholeBars = false } = EXAMPLES[technique];
    expect(row.recognisePart({ ...seenOf(chart, shown), opens: true, next: null })).toBe(!wholeBars);
    expect(row.recognisePart({ ...seenOf(chart, without), opens: true, next: null })).toBe(false);
  });

  test('can be shown at its level', () => {
    const wanted = [{ where: { kind: 'line' }, wanted: [technique] }] as const;
    const shown = takes(row.from, ['chord tones']).flatMap((asked) => {
      const { bars } = composeLine({ ...asked, aims: wanted });
      return analyseLine(asked, bars).flatMap((bar) => bar.techniques);
    });
    expect(shown).toContain(technique);
  });

  test('is shown by no line of which it is ruled out', () => {
    const forbidden = [{ where: { kind: 'line' }, forbidden: [technique] }] as const;
    for (const asked of takes(5, TECHNIQUES)) {
      const { bars, misses } = composeLine({ ...asked, aims: forbidden });
      const showing = analyseLine(asked, bars).filter((bar) => bar.techniques.includes(technique));
      // What belongs to every line is not left out in silence.
      if (row.always) expect(misses.length).toBeGreaterThan(0);
      else expect(showing).toEqual([]);
    }
  });

  test('is shown by no line that does not teach it', () => {
    if (row.always) return;
    const others = TECHNIQUES.filter((other) => other !== technique);
    for (const asked of takes(5, others)) {
      const shown = analyseLine(asked, composeLine(asked).bars).flatMap((bar) => bar.techniques);
      expect(shown).not.toContain(technique);
    }
  });
});

const TICKED_CHARTS = [
  '| F | C7 | F | C7 | B♭ | F | C7 | F |',
  '| Am | Dm | Am | E7 | Am | Dm | E7 | Am |',
  '| G | Em | C | D7 |',
];

/** Whether a beat one is silent only where a chord goes on, which no feel minds. */
function startsAgain({ chart }: ComposeRequest, bars: LineNotes): boolean {
  const symbolOf = (index: number): string => {
    const span = chart.bars[(index + chart.bars.length) % chart.bars.length]?.spans[0];
    return span?.harmony.kind === 'chord' ? span.harmony.chord.symbol : '';
  };
  return bars.every((notes, index) => notes[0]?.start === 0 || symbolOf(index) === symbolOf(index - 1));
}

describe('the techniques', () => {
  test('have each a place of its own in a reason', () => {
    expect(new Set(TECHNIQUE_ROWS.map(({ telling }) => telling)).size).toBe(TECHNIQUE_ROWS.length);
  });

  test('allow something each, unless they belong to every line: else they could not be ruled out', () => {
    for (const { always, allows } of TECHNIQUE_ROWS) expect(always || allows.length > 0).toBe(true);
  });

  test.each(['early-ska', 'rocksteady', 'revival-ska'] as const)(
    'that are ticked are shown by every line of %s, or it says which are not',
    (feel) => {
      const ticked = ['chord tones', 'scale steps', 'beat one silent', 'long silences'] as const;
      for (const [index, chart] of TICKED_CHARTS.entries()) {
        for (const seed of [index + 7]) {
          const asked = request(chart, { feel, level: index % 2 === 0 ? 3 : 4, seed, techniques: ticked });
          const { bars, remarks } = composeLine(asked);
          const shown = new Set(analyseLine(asked, bars).flatMap(({ techniques }) => techniques));
          for (const one of ticked)
            expect(shown.has(one) || remarks.some((remark) => remark.startsWith(`No bar shows ${one}`))).toBe(
              true,
            );
          const early = shown.has('beat one silent') && !asked.feel.bassRole.mayRestOnOne;
          const changed = remarks.some((remark) => remark.includes('as it is asked for'));
          expect(early && !changed && !startsAgain(asked, bars)).toBe(false);
        }
      }
    },
  );

  test('above the level of the line say with which level they come', () => {
    for (const { technique, from } of TECHNIQUE_ROWS) {
      const asked = request(CHART, { level: 0, techniques: ['chord tones', technique] });
      if (from === 0) continue;
      expect(composeLine(asked).remarks).toContain(
        `No bar shows ${technique}: that comes with level ${from}.`,
      );
    }
  });
});
