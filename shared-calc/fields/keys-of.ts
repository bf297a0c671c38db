/** The keys of an object whose type lists them all. */
export function keysOf<T extends object>(one: T): readonly (keyof T & string)[] {
  return Object.keys(one) as (keyof T & string)[];
}
