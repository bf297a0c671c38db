import type { Records } from '#shared-calc/records/records.ts';

/** The unit a material is kept and sold in; a tank's code stands for a tank, each. */
export function unitOfGoods(material: string, records: Pick<Records, 'material' | 'tank'>): string | undefined {
  return records.material.get(material)?.unit ?? (records.tank.has(material) ? 'each' : undefined);
}

/** What goods are called: a material's words, or a tank's. */
export function goodsLabel(material: string, records: Pick<Records, 'material' | 'tank'>): string {
  return records.material.get(material)?.label ?? records.tank.get(material)?.label ?? 'no longer in the books';
}
