export function byId<R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> {
  return new Map(records.map((record) => [record.id, record]));
}
