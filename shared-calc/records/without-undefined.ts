type Defined<T> = { [K in keyof T]: Exclude<T[K], undefined> };

/** A copy without the fields that are `undefined`. */
export function withoutUndefined<T extends object>(one: T): T & Defined<T>;
export function withoutUndefined(one: object): object {
  return Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined));
}
