import type { Records } from '#shared-calc/records/records.ts';

/** The unit a material is stored and sold in; a tank's code is a tank, in `each`. */
export function unitOfGoods(material: string, records: Pick<Records, 'material' | 'tank'>): string | undefined {
  return records.material.get(material)?.unit ?? (records.tank.has(material) ? 'each' : undefined);
}

export type StoredRecords = Pick<Records, 'material' | 'tank' | 'plant' | 'quoteLine'>;

/** The unit of what the Store can hold: plants and one-off lines as well. */
export function unitInStore(goods: string, records: StoredRecords): string | undefined {
  const counted = records.plant.has(goods) || records.quoteLine.has(goods);
  return unitOfGoods(goods, records) ?? (counted ? 'each' : undefined);
}

/** The words for goods. */
export function goodsLabel(goods: string, { material, tank, plant, quoteLine }: StoredRecords): string {
  const labelled = material.get(goods) ?? tank.get(goods) ?? quoteLine.get(goods);
  return labelled?.label ?? plant.get(goods)?.name ?? 'no longer in the books';
}
