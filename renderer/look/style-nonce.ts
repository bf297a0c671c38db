/** The word by which the content policy lets the grid's own style in; none where the host gave none. */
export function styleNonce(page: Document): string | undefined {
  const given = page.querySelector<HTMLMetaElement>('meta[name="style-nonce"]')?.content ?? '';
  return given === '' || given.startsWith('{{') ? undefined : given;
}
