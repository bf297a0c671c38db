/** Six letters and figures made of a text by FNV-1a, 32 bits cut to 30: other texts have others, but for one in 10⁹. */
export function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return (hash >>> 2).toString(36).padStart(6, '0');
}
