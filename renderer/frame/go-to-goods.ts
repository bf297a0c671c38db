import type { MenuAct } from '#renderer/kit/menu-list.tsx';
import type { Records } from '#shared-calc/records/records.ts';
import { goTo } from './go-to.ts';

/** The act of a menu that leads to goods in their book; none if they are in no book. */
export function goToBook(of: string, records: Pick<Records, 'material' | 'tank' | 'plant'>): readonly MenuAct[] {
  const book = goodsBooks.find(({ kind }) => records[kind].has(of));
  return book ? [goTo(`In the ${book.kind} book`, book.place, of)] : [];
}

const goodsBooks = [
  { kind: 'material', place: 'material-book' },
  { kind: 'tank', place: 'tank-book' },
  { kind: 'plant', place: 'plant-book' },
] as const;
