/** Plain JSON data. A field that is `undefined` is left out. */
export type Plain =
  | string
  | number
  | boolean
  | null
  | undefined
  | readonly Plain[]
  | { readonly [name: string]: Plain };

/** JSON that is the same for the same data, in whatever order its fields were written: names sorted, no spaces. */
export function canonicalJson(data: Plain): string {
  if (Array.isArray(data)) return `[${data.map((each: Plain) => canonicalJson(each ?? null)).join(',')}]`;
  if (typeof data !== 'object' || data === null) return JSON.stringify(data ?? null);
  const fields = Object.entries(data).filter(([, value]) => value !== undefined);
  const sorted = fields.toSorted(([one], [other]) => (one < other ? -1 : 1));
  return `{${sorted.map(([name, value]) => `${JSON.stringify(name)}:${canonicalJson(value)}`).join(',')}}`;
}
