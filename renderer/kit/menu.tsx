import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Sign } from '#renderer/frame/sign.tsx';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { MenuList, type MenuPart } from './menu-list.tsx';
import css from './menu.module.css';

interface MenuParts {
  /** What its acts are about. */
  readonly label: string;
  readonly acts: readonly MenuPart[];
  /** Shown under the acts. */
  readonly children?: ComponentChildren;
}

/** A small button that opens a list of acts; an act closes it. */
export function Menu({ label, acts, children }: MenuParts) {
  const id = useOwnId();
  const [open, setOpen] = useState(false);
  const close = () => document.getElementById(id)?.hidePopover();
  return (
    <>
      <button
        class={css['opener']}
        type="button"
        aria-label={label}
        aria-haspopup="menu"
        popovertarget={id}
        onClick={placeBelow}
      >
        <Sign name="more" />
      </button>
      <div id={id} class={css['menu']} popover="auto" onToggle={(event) => setOpen(event.newState === 'open')}>
        {open && <MenuList label={label} acts={acts} close={close} goesOn={children !== undefined} />}
        {children}
      </div>
    </>
  );
}

/** Closes the menu that contains the element. */
export function closeMenu(within: Element): void {
  within.closest<HTMLElement>('[popover]')?.hidePopover();
}

/** Width of a menu, px. */
const MENU_WIDTH = 230;

function placeBelow({ currentTarget: button }: Event): void {
  if (!(button instanceof HTMLElement)) return;
  const menu = button.parentElement?.querySelector<HTMLElement>('[popover]');
  const room = button.getBoundingClientRect();
  if (!menu) return;
  menu.style.top = `${room.bottom + 2}px`;
  menu.style.left = `${Math.max(0, Math.min(room.left, window.innerWidth - MENU_WIDTH))}px`;
}
