import type { MenuPart } from '#renderer/kit/menu-list.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { Rect } from './selection.ts';

/** The acts of a cell or a column, and what they are about. */
export interface GridMenu {
  readonly label: string;
  readonly acts: readonly MenuPart[];
}

export interface CellsMenuParts {
  /** The acts of the cell's own thing. */
  readonly own: GridMenu;
  /** Opens the cell to write in it; absent if it is closed. */
  readonly write: (() => void) | undefined;
  readonly copy: (withNames: boolean) => void;
  readonly same: { readonly right?: () => void; readonly below?: () => void };
}

/** The acts of the selected cells: those that every grid has, then those of the thing itself. */
export function cellsMenu({ own, write, copy, same }: CellsMenuParts): GridMenu {
  const { right, below } = same;
  return {
    label: own.label,
    acts: [
      { says: actNames.write, keys: 'F2', run: write },
      { says: actNames.copy, keys: 'Ctrl C', run: () => copy(false) },
      { says: actNames.copyWithNames, keys: 'Alt Shift C', run: () => copy(true) },
      ...(right ? [{ says: actNames.sameRight, keys: 'Alt Shift Right', run: right }] : []),
      ...(below ? [{ says: actNames.sameBelow, keys: 'Alt Shift Down', run: below }] : []),
      ...(own.acts.length > 0 ? ['line' as const, ...own.acts] : []),
    ],
  };
}

/** Whether a range has anything that the same can be written into, to the right and below. */
export function canFill(ranges: readonly Rect[], fromBeside: boolean): { right: boolean; below: boolean } {
  const wide = ranges.some(({ left, right }) => right > Math.max(1, left) || (fromBeside && left > 1));
  return { right: wide, below: !fromBeside && ranges.some(({ top, bottom }) => bottom > top) };
}
