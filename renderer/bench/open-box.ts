import type { Onward } from '#renderer/writing/rule-keys.ts';
import type { BoxEditor, Opening } from './box-editor.tsx';
import type { Desk } from './bench-writing.ts';
import { stepped, tabbed } from './range.ts';
import type { Extent, Spot } from './range.ts';

export interface BoxOpening {
  readonly desk: Desk;
  readonly spot: Spot;
  readonly typed: string | undefined;
  readonly editor: BoxEditor;
  readonly cell: Opening['cell'];
  /** Where the keyboard goes once the box is closed. */
  readonly goOn: (spot: Spot) => void;
}

/** Opens the editor over a line's box, or says why it cannot be written in. */
export function openBox({ desk, spot, typed, editor, cell, goOn }: BoxOpening): void {
  const place = desk.positions.boxAt(spot);
  const box = place && desk.view.boxOf(place.row, place.column);
  if (!place || !box) return;
  if (box.closed) {
    desk.acts.refuse('This quote is issued and stays as it is. Make a revision to change it.');
    return;
  }
  let next = spot;
  editor.open({
    cell,
    entry: box.entry,
    ...(typed === undefined ? {} : { typed }),
    label: box.spoken,
    help: desk.acts.helpFor(place),
    settle: (text, onward) => {
      const refused = text === box.entry ? undefined : desk.acts.write([{ ...place, text }]);
      if (refused === undefined) next = spotAfter(desk.positions.extent, spot, onward);
      return refused;
    },
    closed: () => goOn(next),
  });
}

function spotAfter(extent: Extent, spot: Spot, onward: Onward): Spot {
  switch (onward) {
    case 'stay':
      return spot;
    case 'up':
    case 'down':
      return stepped(extent, spot, onward, false);
    case 'left':
    case 'right':
      return tabbed(extent, spot, onward === 'left') ?? spot;
  }
}
