import type { IHeaderComp, IHeaderParams } from 'ag-grid-community';
import { h, render } from 'preact';
import { HeadCard, RecipeCard } from './head-card.tsx';
import type { HeadState } from './head-card.tsx';

export interface HeadParams extends IHeaderParams {
  readonly state: HeadState;
  /** `undefined` over the names. */
  readonly strip: string | undefined;
}

/** A head of the grid that holds a card. A class, because the grid makes it with `new`. */
export class HeadCell implements IHeaderComp {
  private readonly root = document.createElement('div');

  init({ state, strip }: HeadParams): void {
    this.root.className = strip === undefined ? 'head names' : 'head';
    render(strip === undefined ? h(RecipeCard, { state }) : h(HeadCard, { state, column: strip }), this.root);
  }

  getGui(): HTMLElement {
    return this.root;
  }

  refresh(): boolean {
    return true;
  }

  destroy(): void {
    render(null, this.root);
  }
}
