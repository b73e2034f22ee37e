import type { InstrumentSettings, LinePiece, LineSheet } from '../../../core/lesson';
import type { Session } from '../../state';
import { LineExplained } from '../answers';
import { Later, laterPart, useEditor } from '../at-work';
import { ShapesFold } from '../neck';
import { attempt, saveMidi, saveMusicXml } from '../saving';
import { BuildUpOnSheet } from '../stages';
import { LineStudied } from '../study';

const ASKED = laterPart('The questions about a line', async () => (await import('../asking')).LineAsked);

const SAID = laterPart('What the pencil says', async () => (await import('../pencil')).PencilSaid);

const ANOTHER = laterPart(
  'The line for another student',
  async () => (await import('../regrade')).ForAnotherStudent,
);

interface BelowLineProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  readonly rows: { readonly degrees: boolean; readonly fingers: boolean; readonly numerals: boolean };
  readonly atHand: boolean;
}

/** Saves a stage of a build-up as a file of its own. */
const saveStage = (
  session: Session,
  kind: 'MusicXML' | 'MIDI',
  line: Pick<BelowLineProps, 'piece' | 'sheet'>,
): void =>
  void attempt(session, `The ${kind} file`, (lesson) =>
    kind === 'MIDI' ? saveMidi(session, lesson, line) : saveMusicXml(session, lesson, line),
  );

/** What stands under the score of a line: what it teaches, its build-up, what is in it, the shapes of its chords. */
export function BelowLine({ piece, sheet, instrument, rows, atHand }: BelowLineProps) {
  const writing = useEditor(({ pencil }) => pencil?.pieceId === piece.id);
  return (
    <>
      {writing && <Later part={SAID} given={{}} />}
      {sheet.bars.length > 0 && (
        <>
          <LineExplained sheet={sheet} />
          <BuildUpOnSheet
            piece={piece}
            sheet={sheet}
            instrument={instrument}
            rows={rows}
            onSave={saveStage}
          />
          <LineStudied piece={piece} sheet={sheet} instrument={instrument} />
          <Later part={ANOTHER} given={{ piece, sheet, instrument }} />
          <Later part={ASKED} given={{ piece, sheet }} />
        </>
      )}
      {atHand && <ShapesFold piece={piece} sheet={sheet} />}
    </>
  );
}
