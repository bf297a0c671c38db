import type { ColDef, IHeaderComp, IHeaderParams } from 'ag-grid-community';
import type { GridRow } from '#renderer/grid/grid-model.ts';
import type { GridLayout } from '#renderer/grid/grid-table.ts';
import { rowHeight } from './bench-model.ts';
import { type HeadState, HeadCard, RecipeCard } from './head-card.tsx';
import { h, render } from 'preact';
import css from './bench.module.css';
import cardLook from './head-card.module.css';

/** The column of names, and one column a size, as wide as the room allows, each under its card. */
export function benchLayout(state: HeadState): GridLayout {
  const metrics = () => state.metrics.peek();
  return {
    column: (index, key) => ({
      ...(index === 0 ? { width: metrics().names, pinned: 'left' } : { width: metrics().strip }),
      ...headOf(state, index === 0 ? undefined : key),
      cellClass: (index === 0 ? css['named'] : css['box']) ?? '',
    }),
    headHeight: () => metrics().head + metrics().plank,
    rowHeight: (row) => rowHeight(row, metrics()),
    isNarrow: () => metrics().narrow,
    looks: {
      'section-head': css['sectionHead'],
      open: css['open'],
      sum: css['sum'],
      hours: css['hours'],
      price: css['price'],
    },
  };
}

function headOf(state: HeadState, strip: string | undefined): ColDef<GridRow> {
  return {
    headerComponent: HeadCell,
    headerComponentParams: { state, strip },
    suppressHeaderKeyboardEvent: ({ event }) => belongsToCard(event),
  };
}

/** Keys within a card belong to its fields. */
function belongsToCard({ target }: KeyboardEvent): boolean {
  return target instanceof Element && target.closest('[data-card]') !== null;
}

interface HeadParams extends IHeaderParams {
  readonly state: HeadState;
  /** `undefined` over the names. */
  readonly strip: string | undefined;
}

/** A header cell that holds a card. A class, because the grid creates it with `new`. */
class HeadCell implements IHeaderComp {
  private readonly root = document.createElement('div');

  init(params: HeadParams): void {
    const { state, strip } = params;
    nameHead(params);
    this.root.className = `${cardLook['head']} ${strip === undefined ? cardLook['names'] : ''}`;
    render(strip === undefined ? h(RecipeCard, { state }) : h(HeadCard, { state, column: strip }), this.root);
  }

  getGui(): HTMLElement {
    return this.root;
  }

  refresh(params: HeadParams): boolean {
    nameHead(params);
    return true;
  }

  destroy(): void {
    render(null, this.root);
  }
}

/** By the size alone: what its card holds is not of its name, which is read with every cell. */
function nameHead({ eGridHeader, displayName }: HeadParams): void {
  eGridHeader.setAttribute('aria-label', displayName);
}
