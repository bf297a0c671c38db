/**
 * Whether two pieces of plain data are equal: the order of fields does not matter, and a field that is `undefined`
 * counts as left out. Minus zero equals zero, as in a file.
 */
export function sameData(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (!isCompound(one) || !isCompound(other)) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  return sameFields(new Map(Object.entries(one)), new Map(Object.entries(other)));
}

function isCompound(data: unknown): data is object {
  return typeof data === 'object' && data !== null;
}

function sameFields(one: ReadonlyMap<string, unknown>, other: ReadonlyMap<string, unknown>): boolean {
  for (const [field, value] of one) if (!sameData(value, other.get(field))) return false;
  for (const [field, value] of other) if (value !== undefined && !one.has(field)) return false;
  return true;
}
