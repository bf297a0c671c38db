/** The next free code of a book: T13 after T12; the first code is T01. */
export function nextCode(letters: string, taken: Iterable<string>): string {
  const codes = new Set(taken);
  const form = new RegExp(`^${letters}(\\d+)$`);
  const numbers = [...codes].flatMap((code) => form.exec(code)?.[1] ?? []).map(Number);
  return `${letters}${String(Math.max(0, ...numbers) + 1).padStart(2, '0')}`;
}
