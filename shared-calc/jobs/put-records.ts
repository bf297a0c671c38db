/** A table with these records added or replaced, and those ids removed. */
export function putRecords<R extends { readonly id: string }>(
  table: ReadonlyMap<string, R>,
  records: readonly R[],
  gone: readonly string[] = [],
): ReadonlyMap<string, R> {
  const next = new Map(table);
  for (const id of gone) next.delete(id);
  for (const record of records) next.set(record.id, record);
  return next;
}
