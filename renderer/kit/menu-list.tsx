import { useLayoutEffect, useRef } from 'preact/hooks';
import css from './menu.module.css';

/** An act in a menu. Without `run` it is shown and cannot be done. */
export interface MenuAct {
  readonly says: string;
  readonly run?: (() => void) | undefined;
  /** The keys that do the same. */
  readonly keys?: string;
  /** One of several states, and whether it holds now. */
  readonly on?: boolean;
}

/** A line parts the acts of one thing from those of another. */
export type MenuPart = MenuAct | 'line';

interface MenuListParts {
  readonly label: string;
  readonly acts: readonly MenuPart[];
  /** Closes the menu before an act runs, and when Tab leaves it. */
  readonly close: () => void;
  /** Something to fill in stands under the acts: Tab goes there. */
  readonly goesOn?: boolean;
}

/** The acts of a menu: arrows, Home and End walk them, a letter goes to the next act that begins with it. */
export function MenuList({ label, acts, close, goesOn = false }: MenuListParts) {
  const list = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => itemsOf(list.current)[0]?.focus(), []);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Tab' && !goesOn) close();
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const items = itemsOf(list.current);
    const next = nextItem(event.key, items);
    if (!next) return;
    event.preventDefault();
    event.stopPropagation();
    next.focus();
  };
  return (
    <div ref={list} role="menu" aria-label={label} class={css['list']} onKeyDown={onKeyDown}>
      {acts.map((act, at) =>
        act === 'line' ? (
          <hr key={at} />
        ) : (
          <button
            key={act.says}
            type="button"
            role={act.on === undefined ? 'menuitem' : 'menuitemcheckbox'}
            aria-checked={act.on}
            aria-disabled={act.run === undefined}
            tabIndex={-1}
            onClick={() => {
              if (!act.run) return;
              close();
              act.run();
            }}
          >
            <span class={css['says']}>{act.says}</span>
            {act.keys !== undefined && <kbd>{act.keys}</kbd>}
          </button>
        ),
      )}
    </div>
  );
}

function itemsOf(list: Element | null): readonly HTMLElement[] {
  return [...(list?.querySelectorAll<HTMLElement>('[role^="menuitem"]') ?? [])];
}

function nextItem(key: string, items: readonly HTMLElement[]): HTMLElement | undefined {
  const here = items.findIndex((item) => item === document.activeElement);
  switch (key) {
    case 'ArrowDown':
      return items[(here + 1) % items.length];
    case 'ArrowUp':
      return items.at(here <= 0 ? -1 : here - 1);
    case 'Home':
      return items[0];
    case 'End':
      return items.at(-1);
    default:
      return /^\S$/u.test(key)
        ? beginningWith(key, [...items.slice(here + 1), ...items.slice(0, here + 1)])
        : undefined;
  }
}

function beginningWith(letter: string, items: readonly HTMLElement[]): HTMLElement | undefined {
  return items.find((item) => item.textContent.toLowerCase().startsWith(letter.toLowerCase()));
}
