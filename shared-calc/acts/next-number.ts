/** The number after the highest of ids such as T-07, with at least this many digits: `08`. */
export function nextNumber(letters: string, ids: Iterable<string>, digits: number): string {
  const form = new RegExp(`^${letters}-(\\d{1,9})$`);
  const numbers = [...ids].map((id) => Number(form.exec(id)?.[1] ?? 0));
  return String(Math.max(0, ...numbers) + 1).padStart(digits, '0');
}
