/** What is on hand, by material, each in its material's unit. */
export type Stock = ReadonlyMap<string, number>;

export const NO_STOCK: Stock = new Map();

/** Gives stock to one size or job, at most what it uses; `left` is for the next ones. */
export function takeStock(
  stock: Stock,
  used: ReadonlyMap<string, number>,
): { readonly taken: Stock; readonly left: Stock } {
  const taken = new Map<string, number>();
  const left = new Map(stock);
  for (const [material, amount] of used) {
    const onHand = stock.get(material);
    if (onHand === undefined) continue;
    const part = Math.max(0, Math.min(onHand, amount));
    taken.set(material, part);
    left.set(material, onHand - part);
  }
  return { taken, left };
}
