/** The nonce with which the content policy allows the grid's own style; none if the host gave none. */
export function styleNonce(page: Document): string | undefined {
  const given = page.querySelector<HTMLMetaElement>('meta[name="style-nonce"]')?.content ?? '';
  return given === '' || given.startsWith('{{') ? undefined : given;
}
