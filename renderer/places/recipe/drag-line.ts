/** Rows are told by the name of their line in `data-line`. */
const ROW = 'tr:has([data-line])';

/**
 * Lines are drawn by their names to another place: a rule shows where the line would come to stand. `put` receives the
 * line, and the one it comes before; `undefined` at the end.
 */
export function dragLines(put: (line: string, before: string | undefined) => void) {
  let dragged: string | undefined;
  let shown: HTMLElement | undefined;
  const show = (row: HTMLElement | undefined, side: 'before' | 'after' = 'before') => {
    if (shown !== row) delete shown?.dataset['drop'];
    shown = row;
    if (row) row.dataset['drop'] = side;
  };
  const end = () => {
    show(undefined);
    dragged = undefined;
  };
  return {
    onDragStart: (event: DragEvent) => {
      dragged = nameOf(rowOf(event.target));
      if (dragged === undefined || !event.dataTransfer) return;
      event.dataTransfer.effectAllowed = 'move';
      event.dataTransfer.setData('text/plain', dragged);
    },
    onDragOver: (event: DragEvent) => {
      const row = dragged === undefined ? undefined : rowOf(event.target);
      if (!row) return;
      event.preventDefault();
      const { top, height } = row.getBoundingClientRect();
      show(row, event.clientY < top + height / 2 ? 'before' : 'after');
    },
    onDrop: (event: DragEvent) => {
      const row = shown;
      const line = dragged;
      if (!row || line === undefined) return;
      event.preventDefault();
      const before = row.dataset['drop'] === 'before' ? row : rowAfter(row);
      end();
      put(line, nameOf(before));
    },
    onDragEnd: end,
  };
}

function rowOf(target: EventTarget | null): HTMLElement | undefined {
  return target instanceof Element ? (target.closest<HTMLElement>(ROW) ?? undefined) : undefined;
}

function nameOf(row: HTMLElement | undefined): string | undefined {
  return row?.querySelector<HTMLElement>('[data-line]')?.dataset['line'];
}

/** The next line, also in the next section. */
function rowAfter(row: HTMLElement): HTMLElement | undefined {
  const rows = [...(row.closest('table')?.querySelectorAll<HTMLElement>(ROW) ?? [])];
  return rows[rows.indexOf(row) + 1];
}
