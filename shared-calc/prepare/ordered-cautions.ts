import { classMaterialOf } from '#shared-calc/buy/class-price.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { OrderLine } from '#shared-calc/buy/order-standing.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { goodsCautions } from './order-cautions.ts';

/** What to mind when the goods of orders come in; plants by name as their class. */
export function orderedCautions(
  records: RecipeTables & Pick<Records, 'plant' | 'tank'>,
  orders: readonly { readonly lines: readonly Pick<OrderLine, 'of'>[] }[],
): readonly SaidCaution[] {
  const goods = orders.flatMap(({ lines }) => lines.map(({ of }) => classMaterialOf(records, of) ?? of));
  return goodsCautions(records, new Set(goods));
}
