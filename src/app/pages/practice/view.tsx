import type { Lesson } from '../../../core/lesson';
import { layOut } from './desk';
import { PracticePage } from './practice-page';

/** Lays a lesson out as the page that its student will see, with the way back to the lesson's own page. */
export async function practiceView(lesson: Lesson, onBack: () => void) {
  const desk = await layOut(lesson);
  const back = (
    <button
      type="button"
      className="button"
      // What had the focus has gone with the lesson's own page.
      ref={(element) => element?.focus({ preventScroll: true })}
      onClick={onBack}
    >
      Back to the lesson
    </button>
  );
  return { end: desk.end, page: <PracticePage desk={desk} actions={back} store={null} notice={null} /> };
}
