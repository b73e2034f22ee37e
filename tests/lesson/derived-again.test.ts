import { expect, it } from 'vitest';
import { createRandom } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import {
  deriveSheet,
  type Lesson,
  linePiece,
  newLesson,
  setChartText,
  setLevel,
} from '../../src/core/lesson';
import { COMMANDS, newPencil, type Pencil } from '../../src/core/writing';

const CHART = 'A:\n|: F | Dm | Gm7 | C7 :|\nB:\n| B♭ | F/A | Gm7 C7 | F |';

/** A lesson that shares no object with another one, so that nothing remembered about that one helps. */
const strange = (lesson: Lesson): Lesson => JSON.parse(JSON.stringify(lesson));

it('derives after any edit what it would derive from nothing', () => {
  const empty = newLesson('lesson-1', 'Again');
  const id = empty.pieces[0]?.id ?? '';
  const random = createRandom(15);
  let lesson = composePiece(setChartText(empty, id, CHART), id).lesson;
  let pencil: Pencil = newPencil(id, 2);
  for (let step = 0; step < 120; step += 1) {
    const command = COMMANDS[random.below(COMMANDS.length)];
    if (command === undefined) throw new Error('no command');
    ({ lesson, pencil } = command.gesture(lesson, pencil));
    if (step === 60) lesson = setLevel(lesson, id, 5);
    const piece = linePiece(lesson, id);
    const other = strange(lesson);
    const otherPiece = linePiece({ ...other, title: 'Another' }, id);
    if (piece === null || otherPiece === null) throw new Error('no line');
    // Another chart text is parsed anew: a comment changes no music.
    const afresh = deriveSheet(
      { ...otherPiece, chartText: `${CHART} ; ${step}` },
      other.instrument,
      undefined,
    );
    const again = deriveSheet(piece, lesson.instrument, undefined);
    if (again.kind !== 'line' || afresh.kind !== 'line') throw new Error('no line');
    expect(again.bars.map(({ analysis, notes }) => ({ analysis, notes }))).toEqual(
      afresh.bars.map(({ analysis, notes }) => ({ analysis, notes })),
    );
  }
});
