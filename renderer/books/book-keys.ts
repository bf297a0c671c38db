import { keyAct, type KeyAct, type KeyPress } from '#renderer/bench/grid-keys.ts';
import { atEdge, single, stepped, tabbed, type Extent, type Range } from '#renderer/bench/range.ts';

/** What a key asks of a book; `undefined` leaves it to the page. */
export type BookKey =
  | { readonly is: 'take'; readonly range: Range }
  | { readonly is: 'write'; readonly typed?: string }
  | { readonly is: 'clear' | 'fill right' | 'fill down' | 'add' | 'remove' };

export function bookKey(press: KeyPress, range: Range, extent: Extent): BookKey | undefined {
  const own = ownKey(press);
  if (own) return own;
  const act = keyAct(press);
  return act && (walked(act, range, extent) ?? written(act));
}

/** Keys that a book has beyond those of the bench. */
function ownKey({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyPress): BookKey | undefined {
  const strong = ctrlKey || metaKey;
  if (key === 'Delete' && strong) return { is: 'remove' };
  if (shiftKey || altKey) return undefined;
  if (key === 'Insert' && !strong) return { is: 'add' };
  return key.toLowerCase() === 'd' && strong ? { is: 'fill down' } : undefined;
}

/** Keys that only choose. */
function walked(act: KeyAct, range: Range, extent: Extent): BookKey | undefined {
  switch (act.act) {
    case 'move':
      return taken(range, stepped(extent, range.tip, act.to, act.jump), act.extend);
    case 'edge':
      return taken(range, atEdge(extent, range.tip, act.to), act.extend);
    case 'next': {
      const to = tabbed(extent, range.tip, act.back);
      return to && taken(range, to, false);
    }
    case 'all':
      return { is: 'take', range: { anchor: { row: 0, column: 1 }, tip: atEdge(extent, range.tip, 'last') } };
    case 'back to one':
      return { is: 'take', range: single(range.tip) };
    default:
      return undefined;
  }
}

/** Keys that write. */
function written(act: KeyAct): BookKey | undefined {
  if (act.act === 'clear' || act.act === 'fill right') return { is: act.act };
  if (act.act === 'open') return { is: 'write' };
  if (act.act !== 'write') return undefined;
  return act.typed === undefined ? { is: 'write' } : { is: 'write', typed: act.typed };
}

function taken(range: Range, tip: Range['tip'], extend: boolean): BookKey {
  return { is: 'take', range: extend ? { anchor: range.anchor, tip } : single(tip) };
}
