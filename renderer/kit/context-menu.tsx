import { render } from 'preact';
import { MenuList, type MenuPart } from './menu-list.tsx';
import css from './menu.module.css';

/** In px from the window's top left. */
export interface MenuPoint {
  readonly x: number;
  readonly y: number;
}

export interface ContextMenu {
  /** What its acts are about. */
  readonly label: string;
  readonly acts: readonly MenuPart[];
  readonly at: MenuPoint;
  /** Restores the focus when the menu closes. */
  readonly back: () => void;
}

/** Opens the acts of a thing where it is. Escape, Tab or a press elsewhere closes them. */
export function openContextMenu({ label, acts, at, back }: ContextMenu): void {
  const root = document.createElement('div');
  root.className = css['menu'] ?? '';
  root.popover = 'auto';
  root.addEventListener('contextmenu', (event) => event.preventDefault());
  document.body.append(root);
  const hasFocus = () => root.contains(document.activeElement);
  const end = (hadFocus: boolean) => {
    render(null, root);
    root.remove();
    if (hadFocus) back();
  };
  const close = () => end(hasFocus());
  // The browser closes it itself on Escape and on a press elsewhere.
  let hadFocus = false;
  root.addEventListener('beforetoggle', () => (hadFocus = hasFocus()));
  root.addEventListener('toggle', ({ newState }) => {
    if (newState === 'closed' && root.isConnected) end(hadFocus);
  });
  root.showPopover();
  render(<MenuList label={label} acts={acts} close={close} />, root);
  const { width, height } = root.getBoundingClientRect();
  root.style.left = `${Math.max(0, Math.min(at.x, window.innerWidth - width))}px`;
  root.style.top = `${Math.max(0, Math.min(at.y, window.innerHeight - height))}px`;
}

/** The acts of an entry of a list, and what they are about. */
export interface EntryMenu {
  readonly label: string;
  readonly acts: readonly MenuPart[];
}

/**
 * Opens the acts of an entry by the right button, the Menu key or Shift+F10. A text field keeps the system's own menu;
 * an entry without acts, too.
 */
export function contextMenuOf(menu: () => EntryMenu | undefined) {
  const open = (event: Event, at: (target: HTMLElement) => MenuPoint) => {
    const { target } = event;
    if (!(target instanceof HTMLElement) || target.closest('input, textarea, select')) return;
    const asked = menu();
    if (!asked || asked.acts.length === 0) return;
    event.preventDefault();
    event.stopPropagation();
    openContextMenu({ ...asked, at: at(target), back: () => target.focus() });
  };
  return {
    onContextMenu: (event: MouseEvent) => open(event, () => ({ x: event.clientX, y: event.clientY })),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key === 'ContextMenu' || (event.key === 'F10' && event.shiftKey)) open(event, below);
    },
  };
}

/** Under the left end of an element. */
export function below(element: Element): MenuPoint {
  const { left, bottom } = element.getBoundingClientRect();
  return { x: left + 8, y: bottom };
}
