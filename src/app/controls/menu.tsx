import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';

interface MenuItem {
  /** Tells items apart that may have the same label. */
  readonly id?: string;
  readonly label: string;
  /** A short remark under the label, read as the item's description. */
  readonly note?: string;
  readonly onChoose: () => void;
}

export interface MenuGroup {
  /** Heard and seen above its items; a group without one is only set off by a rule. */
  readonly heading?: string;
  /** What is to be said about the group as a whole. */
  readonly sentence?: string;
  readonly items: readonly MenuItem[];
}

interface MenuButtonProps {
  readonly label: string;
  /** Its accessible name where the word alone would not be unique on the page; it contains the word. */
  readonly name?: string;
  readonly className: string;
  readonly groups: readonly MenuGroup[];
  readonly onOpen?: () => void;
}

/** A button that opens a menu: arrows, Home, End and first letters move, Escape and Tab close. */
export function MenuButton({ label, name, className, groups, onOpen }: MenuButtonProps) {
  const [open, setOpen] = useState(false);
  const root = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();

  useEffect(() => {
    if (!open) return;
    itemsOf(list.current)[0]?.focus();
    const closeOutside = (event: PointerEvent) => {
      if (event.target instanceof Node && !root.current?.contains(event.target)) setOpen(false);
    };
    document.addEventListener('pointerdown', closeOutside);
    return () => document.removeEventListener('pointerdown', closeOutside);
  }, [open]);

  const toggle = () => {
    if (!open) onOpen?.();
    setOpen(!open);
  };
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      event.stopPropagation();
      close();
    } else if (event.key === 'Tab') {
      setOpen(false);
    } else if (moveInMenu(itemsOf(list.current), event.key)) {
      event.preventDefault();
    }
  };

  return (
    <div className="menu" ref={root}>
      <button
        ref={button}
        type="button"
        className={className}
        aria-haspopup="menu"
        aria-expanded={open}
        aria-label={name}
        aria-controls={open ? id : undefined}
        onClick={toggle}
        onKeyDown={(event) => {
          if (!open && (event.key === 'ArrowDown' || event.key === 'ArrowUp')) {
            event.preventDefault();
            toggle();
          }
        }}
      >
        {label}
      </button>
      {open && (
        <div
          ref={list}
          id={id}
          className="menu__list"
          role="menu"
          tabIndex={-1}
          aria-label={name ?? label}
          onKeyDown={onKeyDown}
        >
          {groups
            .filter((group) => group.items.length > 0 || group.sentence !== undefined)
            .map((group, index) => (
              <Group
                key={group.heading ?? group.items[0]?.label}
                group={group}
                first={index === 0}
                onChoose={(item) => {
                  close();
                  item.onChoose();
                }}
              />
            ))}
        </div>
      )}
    </div>
  );
}

interface GroupProps {
  readonly group: MenuGroup;
  readonly first: boolean;
  readonly onChoose: (item: MenuItem) => void;
}

function Group({ group, first, onChoose }: GroupProps) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset has no place inside a menu
    <div
      role="group"
      aria-labelledby={group.heading === undefined ? undefined : id}
      aria-describedby={group.sentence === undefined ? undefined : `${id}-sentence`}
    >
      {!first && <div className="menu__rule" />}
      {group.heading !== undefined && (
        <p className="menu__heading" id={id}>
          {group.heading}
        </p>
      )}
      {group.sentence !== undefined && (
        <p className="menu__sentence" id={`${id}-sentence`}>
          {group.sentence}
        </p>
      )}
      {group.items.map((item, index) => (
        <div key={item.id ?? item.label} className="menu__row" role="none">
          <button
            type="button"
            role="menuitem"
            className="menu__item"
            tabIndex={-1}
            aria-describedby={item.note === undefined ? undefined : `${id}-${index}`}
            onClick={() => onChoose(item)}
          >
            {item.label}
          </button>
          {item.note !== undefined && (
            <p className="menu__note" id={`${id}-${index}`}>
              {item.note}
            </p>
          )}
        </div>
      ))}
    </div>
  );
}

const itemsOf = (list: HTMLElement | null): readonly HTMLElement[] =>
  list === null ? [] : [...list.querySelectorAll<HTMLElement>('[role="menuitem"]')];

/** Moves the focus as the key asks; false when the key means nothing to a menu. */
function moveInMenu(items: readonly HTMLElement[], key: string): boolean {
  const target = menuTarget(
    items,
    key,
    items.findIndex((item) => item.matches(':focus')),
  );
  target?.focus();
  return target !== undefined;
}

function menuTarget(items: readonly HTMLElement[], key: string, at: number): HTMLElement | undefined {
  switch (key) {
    case 'ArrowDown':
      return items[(at + 1) % items.length];
    case 'ArrowUp':
      return items.at(at <= 0 ? -1 : at - 1);
    case 'Home':
      return items[0];
    case 'End':
      return items.at(-1);
    default:
      return key.length === 1 && key !== ' '
        ? [...items.slice(at + 1), ...items.slice(0, at + 1)].find((item) =>
            item.textContent?.toLowerCase().startsWith(key.toLowerCase()),
          )
        : undefined;
  }
}
