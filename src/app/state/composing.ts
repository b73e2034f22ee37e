import { shareParts } from '../../core/base';
import type { Composer, Deed } from '../composer';
import type { EditorStore } from './editor-store';
import type { LessonStore } from './lesson-store';

const NO_COMPOSER =
  'The composer could not be loaded, so the line is as it was. Check that the page is still reachable and try again.';

const SILENT_COMPOSER =
  'The composer no longer answered, so it was ended and the line is as it was. Ask once more: it starts afresh. If that happens again, compose a shorter part of the chart.';

interface ComposingParts {
  readonly lessons: LessonStore;
  readonly editor: EditorStore;
  readonly composer: Composer;
}

/** Has the piece at hand composed beside the page, and puts what comes of it into the lesson as one step. */
export function startComposing({ lessons, editor, composer }: ComposingParts) {
  /**
   * Composes beside the page. A lesson that is changed meanwhile is composed anew as it is then; when another lesson
   * was opened or `stop` called it off, nothing happens.
   */
  const composeAnew = async (deed: Deed, pieceId: string, stop: AbortSignal | null): Promise<void> => {
    const { lesson: asked, opening } = lessons.getState();
    const given = new AbortController();
    const giveUp = () => given.abort();
    stop?.addEventListener('abort', giveUp);
    const unfollow = lessons.subscribe(giveUp);
    const answer = await composer.compose(deed, asked, pieceId, given.signal);
    unfollow();
    stop?.removeEventListener('abort', giveUp);
    const { lesson, opening: openingNow } = lessons.getState();
    if (stop?.aborted === true || openingNow !== opening) return;
    // A change that was undone meanwhile called it off all the same.
    if (lesson !== asked || (!answer.ok && answer.problem === 'called off')) {
      await composeAnew(deed, pieceId, stop);
      return;
    }
    if (!answer.ok) {
      editor.setState({ notice: answer.problem === 'silent' ? SILENT_COMPOSER : NO_COMPOSER });
      return;
    }
    const { lesson: composed, remarks } = answer.value;
    lessons.change(() => shareParts(asked, composed), { label: deed });
    if (editor.getState().pieceId === pieceId) editor.setState({ remarks });
  };

  let composing = 0;
  const compose = async (deed: Deed, stop: AbortSignal | null = null): Promise<void> => {
    const { pieceId } = editor.getState();
    composing += 1;
    editor.setState({ composing: pieceId });
    await composeAnew(deed, pieceId, stop);
    composing -= 1;
    if (composing === 0) editor.setState({ composing: null });
  };

  return compose;
}
