import { type KeyboardEvent, type ReactNode, useCallback, useLayoutEffect, useRef, useState } from 'react';

interface WindowListProps<Item extends { readonly id: string }> {
  readonly label: string;
  readonly items: readonly Item[];
  /** What the items were found by: where it changes, the list begins at its top again. */
  readonly foundBy: unknown;
  /** Id of the chosen item. */
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
  /** Enter on the chosen item, or a double click. */
  readonly onOpen: (item: Item) => void;
  readonly children: (item: Item) => ReactNode;
}

/** Height of a row in rem: the same for all, so that a place in the list is known without drawing what is above it. */
const ROW_REM = 4.25;

/** Rows drawn above and below what is in view, so that a quick turn of the wheel meets no empty place. */
const AROUND = 6;

const STEPS: Readonly<Record<string, (page: number) => number>> = {
  ArrowDown: () => 1,
  ArrowUp: () => -1,
  PageDown: (page) => page,
  PageUp: (page) => -page,
  Home: () => Number.NEGATIVE_INFINITY,
  End: () => Number.POSITIVE_INFINITY,
};

/**
 * A list of which only the rows in view are in the page, however long it is: one stop of the Tab key, arrows, Page Up
 * and Down, Home and End move and choose (WAI-ARIA Authoring Practices, listbox). A screen reader is told the place
 * of each row and the length of the whole.
 */
export function WindowList<Item extends { readonly id: string }>(props: WindowListProps<Item>) {
  const { items, chosen, foundBy } = props;
  const box = useRef<HTMLDivElement>(null);
  const [view, setView] = useState({ top: 0, height: 600, row: ROW_REM * 16 });
  const measure = useCallback(() => {
    const element = box.current;
    if (element === null) return;
    const row = ROW_REM * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    setView({ top: element.scrollTop, height: element.clientHeight, row });
  }, []);
  useLayoutEffect(() => {
    measure();
    const element = box.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [measure]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another search is read from its beginning
  useLayoutEffect(() => {
    box.current?.scrollTo({ top: 0 });
  }, [foundBy]);

  const at = items.findIndex(({ id }) => id === chosen);
  const first = Math.max(0, Math.floor(view.top / view.row) - AROUND);
  const last = Math.min(items.length, Math.ceil((view.top + view.height) / view.row) + AROUND);
  const shown = items.slice(first, last).map((item, index) => ({ item, index: first + index }));
  const active = items[at];
  // The chosen row stays in the page: the list names it to whoever hears the page.
  if (active !== undefined && (at < first || at >= last)) shown.push({ item: active, index: at });

  const goTo = (index: number) => {
    const item = items[index];
    const element = box.current;
    if (item === undefined || element === null) return;
    const top = index * view.row;
    if (top < element.scrollTop) element.scrollTop = top;
    else if (top + view.row > element.scrollTop + element.clientHeight)
      element.scrollTop = top + view.row - element.clientHeight;
    props.onChoose(item.id);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Enter' && active !== undefined) {
      event.preventDefault();
      props.onOpen(active);
      return;
    }
    const step = STEPS[event.key];
    if (step === undefined || items.length === 0) return;
    event.preventDefault();
    const page = Math.max(1, Math.floor(view.height / view.row) - 1);
    const from = at === -1 ? (step(page) > 0 ? -1 : 0) : at;
    goTo(Math.min(items.length - 1, Math.max(0, from + step(page))));
  };
  return (
    <div
      ref={box}
      className="shelf__list"
      role="listbox"
      aria-label={props.label}
      aria-activedescendant={active === undefined ? undefined : `on-shelf-${active.id}`}
      tabIndex={0}
      onScroll={measure}
      onKeyDown={onKeyDown}
    >
      <div className="shelf__length" role="presentation" style={{ height: `${items.length * ROW_REM}rem` }}>
        {shown.map(({ item, index }) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the list itself hears the keys
          <div
            key={item.id}
            id={`on-shelf-${item.id}`}
            className="shelf__row"
            role="option"
            tabIndex={-1}
            aria-selected={item.id === chosen}
            aria-posinset={index + 1}
            aria-setsize={items.length}
            style={{ top: `${index * ROW_REM}rem`, height: `${ROW_REM}rem` }}
            onClick={() => props.onChoose(item.id)}
            onDoubleClick={() => props.onOpen(item)}
          >
            {props.children(item)}
          </div>
        ))}
      </div>
    </div>
  );
}
