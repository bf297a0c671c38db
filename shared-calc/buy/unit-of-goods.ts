import type { Records } from '#shared-calc/records/records.ts';

type GoodsRecords = Pick<Records, 'material' | 'tank' | 'plant'>;

/** The unit a material is stored and sold in; the code of a tank or a plant is one of it, in `each`. */
export function unitOfGoods(material: string, { material: materials, tank, plant }: GoodsRecords): string | undefined {
  return materials.get(material)?.unit ?? (tank.has(material) || plant.has(material) ? 'each' : undefined);
}

/** The words for goods: a material's, a tank's or a plant's. */
export function goodsLabel(material: string, { material: materials, tank, plant }: GoodsRecords): string {
  const label = materials.get(material)?.label ?? tank.get(material)?.label;
  return label ?? plant.get(material)?.name ?? 'no longer in the books';
}
