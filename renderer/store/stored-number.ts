/** A whole number that this machine remembers for a view: hours a day, places for tanks. */
export interface StoredNumber {
  readonly read: () => number;
  readonly write: (value: number) => void;
}

export function storedNumber(page: Window, name: string, otherwise: number): StoredNumber {
  const key = `loamwright ${name}`;
  return {
    read: () => {
      const text = storageOf(page)?.getItem(key) ?? '';
      return /^\d{1,6}$/.test(text) ? Number(text) : otherwise;
    },
    write: (value) => storageOf(page)?.setItem(key, String(value)),
  };
}

/** A browser may be set to store nothing; then access to its storage throws. */
function storageOf(page: Window): Storage | undefined {
  try {
    return page.localStorage;
  } catch {
    return undefined;
  }
}
