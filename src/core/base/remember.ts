/** What keeps answers: a map, or a weak map where what is asked about may go away. */
interface Answers<Asked, Answer> {
  get(asked: Asked): Answer | undefined;
  set(asked: Asked, answer: Answer): unknown;
}

/** The answer that is known, else the one that is made now and known from then on. */
export function remembered<Asked, Answer extends NonNullable<unknown> | null>(
  known: Answers<Asked, Answer>,
  asked: Asked,
  make: () => Answer,
): Answer {
  const before = known.get(asked);
  if (before !== undefined) return before;
  const made = make();
  known.set(asked, made);
  return made;
}

/**
 * {@link remembered} in a map that is emptied when it holds many: for what is asked again and again while someone types.
 * @param most how many answers are kept
 */
export function rememberedAmong<Answer extends NonNullable<unknown> | null>(
  known: Map<string, Answer>,
  most: number,
  asked: string,
  make: () => Answer,
): Answer {
  return remembered(known, asked, () => {
    if (known.size >= most) known.clear();
    return make();
  });
}

/** The same pure function of an object that never changes in place, worked out once for each as long as it is there. */
export function rememberedFor<Of extends object, Answer extends NonNullable<unknown> | null>(
  answer: (of: Of) => Answer,
): (of: Of) => Answer {
  const known = new WeakMap<Of, Answer>();
  return (of) => remembered(known, of, () => answer(of));
}

/**
 * The same pure function, which remembers its latest answers: a chart asks for the same few texts again and
 * again, at every keystroke.
 * @param most how many answers are kept
 */
export function remembering<Answer>(answer: (text: string) => Answer, most = 1000): (text: string) => Answer {
  const known = new Map<string, { readonly answer: Answer }>();
  return (text) => rememberedAmong(known, most, text, () => ({ answer: answer(text) })).answer;
}
