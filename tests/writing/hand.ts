import { type Lesson, linePiece, newLesson, setChartText, setKey } from '../../src/core/lesson';
import { formatPitch, parseKey } from '../../src/core/theory';
import { commandById, commandFor, type Done, newPencil, type Pencil } from '../../src/core/writing';

/** A lesson with a chart in a key, a pencil at its beginning, and what its keys do. */
export class Hand {
  lesson: Lesson;
  pencil: Pencil;
  last: Done | null = null;

  constructor(chart: string, key = 'F major') {
    const empty = newLesson('lesson-1', 'By hand');
    const pieceId = empty.pieces[0]?.id ?? '';
    const read = parseKey(key);
    if (!read.ok) throw new Error(key);
    this.lesson = setKey(setChartText(empty, pieceId, chart), pieceId, read.value);
    this.pencil = newPencil(pieceId, 0);
  }

  take(done: Done): this {
    this.last = done;
    this.lesson = done.lesson;
    this.pencil = done.pencil;
    return this;
  }

  /** Presses keys by their names, a blank between them: `1 3 5 [ Shift+ArrowUp`. */
  press(keys: string): this {
    for (const name of keys.split(' ')) {
      const parts = name === '+' ? ['+'] : name.split(/\+(?=.)/);
      const press = {
        key: parts.at(-1) ?? '',
        code: '',
        shift: parts.includes('Shift'),
        alt: parts.includes('Alt'),
        ctrl: parts.includes('Ctrl'),
      };
      const command = commandFor(press, this.pencil.digits, {});
      if (command === null) throw new Error(`No command on ${name}`);
      this.take(commandById(command.id).gesture(this.lesson, this.pencil));
    }
    return this;
  }

  /** A bar's notes: `F1@0+960`, `~` where it is tied on, `|` before what is too much. */
  bar(index: number): string {
    const bar = linePiece(this.lesson, this.pencil.pieceId)?.bars[index];
    const text = (notes: NonNullable<typeof bar>['notes']) =>
      notes
        .map(
          ({ start, duration, pitch, tiedOn }) =>
            `${formatPitch(pitch)}@${start}+${duration}${tiedOn === true ? '~' : ''}`,
        )
        .join(' ');
    if (bar === undefined) return '';
    return bar.over === undefined ? text(bar.notes) : `${text(bar.notes)} | ${text(bar.over)}`;
  }

  get refusal(): string | null {
    return this.last?.did.kind === 'refused' ? this.last.did.why : null;
  }
}
