import type { GridMenu } from '#renderer/grid/grid-menu.ts';
import type { CellKey } from '#renderer/grid/grid-model.ts';
import type { MenuAct, MenuPart } from '#renderer/kit/menu-list.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { BenchActs } from './bench-acts.ts';
import { isBox, namesKey, type BenchModel } from './bench-model.ts';
import type { BenchView, BoxView, HeadView } from './view-model.ts';

/** The acts of a cell of the bench: of a line's value, of a section, of a size. */
export function benchMenu(model: BenchModel, acts: BenchActs, at: CellKey): GridMenu {
  const row = model.rowOf(at.row);
  if (row?.kind === 'section') return { label: row.title, acts: sectionActs(row, acts) };
  const { acts: ofSize = [] } = sizeMenu(model.view, acts, at.column) ?? {};
  const box = isBox(model, at) ? model.view.boxOf(at.row, at.column) : undefined;
  if (!box) return { label: row?.label ?? '', acts: ofSize };
  const own = localActs(acts, at, box);
  return { label: box.spoken, acts: own.length > 0 ? [...own, 'line', ...ofSize] : ofSize };
}

/** What can be done with a value that is not the house's. */
function localActs(acts: BenchActs, at: CellKey, { source, closed }: BoxView): readonly MenuAct[] {
  if (closed || source === 'house') return [];
  return [
    { says: actNames.backToHouse, keys: 'Delete', run: () => acts.clear([at]) },
    { says: actNames.sendToHouse, run: () => acts.sendToHouse(at) },
    ...(source === 'local'
      ? [
          { says: actNames.wholeJob, run: () => void acts.holdForJob(at) },
          { says: actNames.alwaysForTank, run: () => void acts.keepForTank(at) },
        ]
      : []),
  ];
}

function sectionActs(
  {
    id,
    open,
    all,
    more,
  }: { readonly id: string; readonly open: boolean; readonly all: boolean; readonly more: string },
  acts: BenchActs,
): readonly MenuAct[] {
  return [
    { says: open ? 'Close the section' : 'Open the section', keys: 'Enter', run: () => acts.fold(id) },
    ...(more === '' && !all
      ? []
      : [{ says: all ? 'Fewer lines' : 'All its lines', keys: 'Shift Enter', run: () => acts.showAll(id) }]),
  ];
}

/** The acts of the size in a column; none over the names. */
export function sizeMenu(view: BenchView, acts: BenchActs, column: string): GridMenu | undefined {
  const head = column === namesKey ? undefined : view.columns.find(({ key }) => key === column);
  return head && { label: `Acts for ${head.label}`, acts: head.issued ? [] : sizeActs(view, head, acts) };
}

/** What can be done with a size, the same from its card, its column and the keyboard. */
export function sizeActs({ columns }: BenchView, { key, label }: HeadView, acts: BenchActs): readonly MenuPart[] {
  const at = columns.findIndex((column) => column.key === key);
  const move = (says: string, to: number): MenuAct => ({
    says,
    run: to >= 0 && to < columns.length ? () => acts.moveSize(key, to) : undefined,
  });
  return [
    { says: `Take ${label} again, by the house`, run: () => acts.takeAgain(key) },
    { says: `Copy ${label} with its local values`, run: () => acts.copySize(key) },
    move(`Move ${label} to the left`, at - 1),
    move(`Move ${label} to the right`, at + 1),
    { says: `Remove ${label} from the job`, run: () => acts.putAway(key) },
  ];
}
