/** The keys of an object, typed; the type must list them all. */
export function keysOf<T extends object>(one: T): readonly (keyof T & string)[] {
  return Object.keys(one) as (keyof T & string)[];
}
