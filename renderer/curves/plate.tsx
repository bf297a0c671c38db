import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { Button } from '#renderer/kit/button.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { FigureTable } from './curve-spec.ts';
import css from './plate.module.css';

interface PlateParts {
  readonly title: string;
  readonly under: string;
  readonly table: FigureTable;
  /** The chart, which has its own text for screen readers. */
  readonly children: ComponentChildren;
}

/** A chart with its heading, its basis, and its figures as a table, toggled with T. */
export function Plate({ title, under, table, children }: PlateParts) {
  const figure = useRef<HTMLElement>(null);
  const [asTable, setAsTable] = useState(false);
  const id = useOwnId();
  useEffect(
    () =>
      listenForTable(
        () => figure.current,
        () => setAsTable((now) => !now),
      ),
    [],
  );
  return (
    <figure ref={figure} class={asTable ? `${css['plate']} ${css['asTable']}` : css['plate']} aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p class={css['under']}>{under}</p>
      <div class={css['picture']} tabIndex={0} role="group" aria-label={title}>
        {children}
      </div>
      <FiguresTable title={title} table={table} />
      <Button look="plain" aria-pressed={asTable} onClick={() => setAsTable(!asTable)}>
        Figures as a table <kbd>T</kbd>
      </Button>
    </figure>
  );
}

function FiguresTable({ title, table: { headings, rows } }: { readonly title: string; readonly table: FigureTable }) {
  return (
    <div class={css['figures']} tabIndex={0} role="region" aria-label={`Figures: ${title}`}>
      <Table
        rows={rows}
        keyOf={(_, at) => at}
        columns={headings.map((head, nth) => ({ head, cell: (row: FigureTable['rows'][number]) => row[nth] }))}
      />
    </div>
  );
}

/** T within a plate toggles that plate, T elsewhere on the page toggles all; in a field it is a letter. */
function listenForTable(own: () => HTMLElement | null, turn: () => void): () => void {
  const onKey = (event: KeyboardEvent) => {
    const { key, ctrlKey, metaKey, altKey, target } = event;
    if (key.toLowerCase() !== 't' || ctrlKey || metaKey || altKey || !(target instanceof Element)) return;
    if (target.closest('input, textarea, select') !== null || isUnder(own(), target)) return;
    const within = target.closest('figure');
    if (within !== null && within !== own()) return;
    event.preventDefault();
    turn();
  };
  document.addEventListener('keydown', onKey);
  return () => document.removeEventListener('keydown', onKey);
}

/** A dialog is open over the plate, and the key was meant for that. */
function isUnder(plate: HTMLElement | null, target: Element): boolean {
  const sheet = target.closest('dialog');
  return sheet !== null && !sheet.contains(plate);
}
