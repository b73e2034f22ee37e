import { joinRows, paragraphRows, type Row, textRow } from '../layout/rows';
import type { BlockContext } from './context';

/** A caution as it is printed, with where it comes from. */
interface Caution {
  readonly text: string;
  readonly source: string;
}

const CAUTIONS: readonly Caution[] = [
  {
    text: 'Warm up for three to five minutes before you play, and keep the wrist straight.',
    source: 'bassplayer.com, "Bassists, save your hands"; whitt.ca, bass lesson, technique',
  },
  {
    text: 'Pain means stop. If pain, numbness or ringing in the ears comes back or stays, ask a doctor: this sheet is no medical advice.',
    source: 'bassplayer.com, "Bassists, save your hands"; common practice, no source, for the doctor',
  },
  {
    text: 'Rest five to ten minutes in every hour.',
    source: 'newswise.com, "Five tips music students should guard against injury"',
  },
  {
    text: 'Keep headphones low: 80 dB for 40 hours a week is the safe limit for adults, 75 dB for children.',
    source: 'WHO and ITU, Recommendation H.870, safe listening',
  },
];

const INSET = 7;

/** The cautions for hands and ears in a thin box that is never cut. */
export function cautionRows(context: BlockContext): readonly Row[] {
  const { sizes } = context;
  const width = context.width - 2 * INSET;
  const text = CAUTIONS.map((caution) => caution.text).join(' ');
  const inside = joinRows([
    textRow('Hands and ears', sizes.smallBold, { x: INSET }),
    ...paragraphRows(text, sizes.small, width, context.measure, { x: INSET }),
  ]);
  const height = inside.height + 2 * INSET;
  return [
    {
      height,
      gap: context.spacing.blockGap,
      keepWithNext: false,
      marks: [
        { kind: 'box', x: 0, y: 0, width: context.width, height },
        ...inside.marks.map((mark) => ({ ...mark, y: mark.y + INSET })),
      ],
    },
  ];
}
