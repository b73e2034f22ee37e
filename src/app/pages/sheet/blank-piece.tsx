import '../../styles/blank.css';
import { useMemo } from 'react';
import { askedOfBlank, promptsFor, promptWords } from '../../../core/asking';
import {
  type BlankPiece,
  type BlankSheet,
  lineBeside,
  readPiece,
  setBlankBars,
  setBlankPrompt,
} from '../../../core/lesson';
import { NumberWord, SelectField } from '../../controls';
import { useAtWork, usePieceNow, useSettledLesson } from '../at-work';
import { ScoreFigure } from '../score';
import { PieceHead, type PlaceOnSheet } from './piece-head';

interface BlankPieceViewProps {
  readonly piece: BlankPiece;
  readonly sheet: BlankSheet;
  readonly place: PlaceOnSheet;
}

/** Empty staff and tab for the student's own line, over the chords of the line beside it where something is asked of it. */
export function BlankPieceView({ piece, sheet, place }: BlankPieceViewProps) {
  const { session } = useAtWork();
  const { bars } = usePieceNow(piece);
  const lesson = useSettledLesson();
  const asked = useMemo(() => askedOfBlank(lesson, piece), [lesson, piece]);
  const count = `${piece.bars} empty ${piece.bars === 1 ? 'bar' : 'bars'} of staff and tab`;
  return (
    <section className="piece">
      <PieceHead piece={piece} place={place}>
        <NumberWord
          label={`Number of blank bars, ${piece.name}`}
          value={bars}
          least={1}
          most={64}
          onChange={(count) =>
            session.lessons.change((lesson) => setBlankBars(lesson, piece.id, count), {
              label: 'change the blank bars',
              join: `blank ${piece.id}`,
            })
          }
        />{' '}
        blank {bars === 1 ? 'bar' : 'bars'}
      </PieceHead>
      <PromptChoice piece={piece} />
      {asked !== null && <p className="blank__prompt">{asked.words}</p>}
      <ScoreFigure
        sheet={asked?.sheet ?? sheet}
        name={`Blank bars, ${piece.name}`}
        description={asked === null ? `${count}.` : `${count}, over chords.`}
        rows={NO_ROWS}
        bars={null}
      />
    </section>
  );
}

const NO_ROWS = { degrees: false, fingers: false };

/** What the student is to keep to; nothing where no line with chords stands beside the bars. */
function PromptChoice({ piece }: { readonly piece: BlankPiece }) {
  const { session } = useAtWork();
  const lesson = useSettledLesson();
  const { prompt } = piece;
  const prompts = useMemo(() => promptsFor(lesson, piece), [lesson, piece]);
  const line = lineBeside(lesson, piece.id);
  if (line === null || (prompts.length === 0 && prompt === undefined)) return null;
  const reading = { key: readPiece(line).key, naming: lesson.noteNames ?? 'letters' } as const;
  const offered = new Map(prompts.map((each) => [promptWords(each, reading), each]));
  const chosen = prompt === undefined ? FREE : promptWords(prompt, reading);
  const words = [...new Set([...offered.keys(), ...(prompt === undefined ? [] : [chosen])])];
  return (
    <SelectField
      label="What the student’s line keeps to"
      where={`in ${piece.name}`}
      value={chosen}
      options={[
        { value: FREE, label: 'nothing, a line without chords' },
        ...words.map((each) => ({ value: each, label: each })),
      ]}
      onChange={(text) => {
        const next = text === FREE ? null : (offered.get(text) ?? prompt ?? null);
        session.lessons.change((before) => setBlankPrompt(before, piece.id, next), {
          label: 'choose what the blank bars ask for',
        });
      }}
    />
  );
}

/** No words of a prompt. */
const FREE = '';
