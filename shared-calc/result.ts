/** An expected outcome that may fail: facts in `fault`, never a thrown error. */
export type Result<T, F> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: F };

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function failed<F>(fault: F): { readonly ok: false; readonly fault: F } {
  return { ok: false, fault };
}

/** Closes a switch over a closed set; reaching it is a bug. */
export function unreachable(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`);
}
