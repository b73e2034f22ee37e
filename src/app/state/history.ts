/** A step that can be taken back: what stood before it, and what the step is called. */
export interface Step<Document> {
  readonly document: Document;
  /** `Undo` names the step: “Undo: compose line”. */
  readonly label: string;
}

export interface History<Document> {
  readonly past: readonly Step<Document>[];
  readonly present: Document;
  readonly future: readonly Step<Document>[];
  /** While the next change carries the same key it joins the last step (typing, dragging); null joins nothing. */
  readonly joinKey: string | null;
}

/** More steps than anyone takes back, few enough to stay small in memory (unchanged parts are shared). */
const MOST_STEPS = 300;

export const newHistory = <Document>(document: Document): History<Document> => ({
  past: [],
  present: document,
  future: [],
  joinKey: null,
});

/**
 * The history after a change. A document that is the very same object is no change. Changes in a row with the
 * same `joinKey` are one step.
 */
export function record<Document>(
  history: History<Document>,
  next: Document,
  label: string,
  joinKey: string | null = null,
): History<Document> {
  if (next === history.present) {
    return history;
  }
  if (joinKey !== null && joinKey === history.joinKey && history.future.length === 0) {
    return { ...history, present: next };
  }
  return {
    past: [...history.past, { document: history.present, label }].slice(-MOST_STEPS),
    present: next,
    future: [],
    joinKey,
  };
}

export function undo<Document>(history: History<Document>): History<Document> {
  const step = history.past.at(-1);
  return step === undefined
    ? history
    : {
        past: history.past.slice(0, -1),
        present: step.document,
        future: [{ document: history.present, label: step.label }, ...history.future],
        joinKey: null,
      };
}

export function redo<Document>(history: History<Document>): History<Document> {
  const step = history.future[0];
  return step === undefined
    ? history
    : {
        past: [...history.past, { document: history.present, label: step.label }],
        present: step.document,
        future: history.future.slice(1),
        joinKey: null,
      };
}

/** The history with every document in it as `change` makes it: what holds of all of them is no step. */
export const mapDocuments = <Document>(
  { past, present, future, joinKey }: History<Document>,
  change: (document: Document) => Document,
): History<Document> => {
  const changed = (step: Step<Document>): Step<Document> => ({ ...step, document: change(step.document) });
  return { past: past.map(changed), present: change(present), future: future.map(changed), joinKey };
};
