import type { Records } from '#shared-calc/records/records.ts';

/** The unit a material is stored and sold in; a tank's code is a tank, in `each`. */
export function unitOfGoods(material: string, records: Pick<Records, 'material' | 'tank'>): string | undefined {
  return records.material.get(material)?.unit ?? (records.tank.has(material) ? 'each' : undefined);
}

/** The words for goods: a material's or a tank's. */
export function goodsLabel(material: string, records: Pick<Records, 'material' | 'tank'>): string {
  return records.material.get(material)?.label ?? records.tank.get(material)?.label ?? 'no longer in the books';
}
