import type { Records } from '#shared-calc/records/records.ts';

type GoodsRecords = Pick<Records, 'material' | 'tank' | 'plant'>;

/** The unit a material is stored and sold in; the code of a tank or a plant is one of it, in `each`. */
export function unitOfGoods(material: string, { material: materials, tank, plant }: GoodsRecords): string | undefined {
  return materials.get(material)?.unit ?? (tank.has(material) || plant.has(material) ? 'each' : undefined);
}

export type StoredRecords = Pick<Records, 'material' | 'tank' | 'plant' | 'quoteLine'>;

/** The unit of what the Store can hold: one-off lines as well. */
export function unitInStore(goods: string, records: StoredRecords): string | undefined {
  return unitOfGoods(goods, records) ?? (records.quoteLine.has(goods) ? 'each' : undefined);
}

/** The words for goods. */
export function goodsLabel(goods: string, { material, tank, plant, quoteLine }: StoredRecords): string {
  const labelled = material.get(goods) ?? tank.get(goods) ?? quoteLine.get(goods);
  return labelled?.label ?? plant.get(goods)?.name ?? 'no longer in the books';
}
