/** The keys of an object, typed; the type must list them all. */
export function keysOf<T extends object>(one: T): readonly (keyof T & string)[] {
  const keys: (keyof T & string)[] = [];
  for (const key in one) if (Object.hasOwn(one, key)) keys.push(key);
  return keys;
}
