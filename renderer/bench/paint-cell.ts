import type { CellPaint } from '#renderer/grid/live-cells.ts';
import { makeSpoken, spokenAs } from '#renderer/grid/make-element.ts';
import type { BenchActs } from './bench-acts.ts';
import { paintBox, paintFootBox, sameBox, sameFootBox, sameFootFrame, sameFrame } from './paint-box.ts';
import { paintName, sameName } from './paint-name.ts';
import type { BenchRow, BoxView, FootBox } from './view-model.ts';

/** What a cell of the bench shows. */
export type Shown =
  | { readonly kind: 'name'; readonly row: BenchRow }
  | { readonly kind: 'box'; readonly box: BoxView | undefined }
  | { readonly kind: 'foot'; readonly box: FootBox };

export function benchPaint(acts: Pick<BenchActs, 'fold' | 'showAll'>): CellPaint<Shown> {
  return {
    same,
    onlyFigure,
    paint: (shown) => insideOf(shown, acts),
    closed: (shown) => shown.kind === 'foot' || (shown.kind === 'box' && shown.box?.closed === true),
    spoken: (shown) => (shown.kind === 'name' ? '' : (shown.box?.spoken ?? '')),
  };
}

function same(a: Shown, b: Shown): boolean {
  if (a.kind === 'name' && b.kind === 'name') return sameName(a.row, b.row);
  if (a.kind === 'box' && b.kind === 'box') return sameBox(a.box, b.box);
  return a.kind === 'foot' && b.kind === 'foot' && sameFootBox(a.box, b.box);
}

function onlyFigure(a: Shown, b: Shown): string | undefined {
  if (a.kind === 'box' && b.kind === 'box') return a.box && b.box && sameFrame(a.box, b.box) ? b.box.figure : undefined;
  return a.kind === 'foot' && b.kind === 'foot' && sameFootFrame(a.box, b.box) ? b.box.figure : undefined;
}

function insideOf(shown: Shown, acts: Pick<BenchActs, 'fold' | 'showAll'>): HTMLElement {
  switch (shown.kind) {
    case 'name':
      return paintName(shown.row, acts);
    case 'foot':
      return spokenAs(paintFootBox(shown.box), shown.box.spoken);
    case 'box':
      return shown.box ? spokenAs(paintBox(shown.box), shown.box.spoken) : makeSpoken('empty');
  }
}
