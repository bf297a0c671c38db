/** A name of letters, digits and what every file system accepts between them; empty if nothing is left. */
export function safeName(name: string): string {
  return name
    .replaceAll(/[^\p{L}\p{N} ._-]+/gu, ' ')
    .replace(/^[. ]+/, '')
    .trim()
    .slice(0, 100);
}
