/** The page's own scheme and host on the desktop; each of its files is `app://page/...`. */
export const pageScheme = 'app';
export const pageAddress = 'app://page/';

/** Whether an address belongs to the page. */
export function isPageUrl(address: string): boolean {
  const url = URL.parse(address);
  return (
    url !== null && url.protocol === `${pageScheme}:` && url.host === 'page' && url.username === '' && url.port === ''
  );
}

/** Whether a message comes from the page in the window's main frame; subframes are not trusted. */
export function isTrustedSender(frame: { readonly url: string; readonly parent: unknown } | null): boolean {
  return frame !== null && frame.parent === null && isPageUrl(frame.url);
}
