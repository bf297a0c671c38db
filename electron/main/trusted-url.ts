/** The page's own scheme and host on the desktop; each of its files is `app://page/...`. */
export const pageScheme = 'app';
export const pageAddress = 'app://page/';

export const licenceLink = 'https://www.gnu.org/licenses/gpl-3.0.html';

/** Links that the program itself offers; no other link is opened outside it. */
const ownLinks: readonly string[] = [licenceLink];

/** Whether an address belongs to the page. */
export function isPageUrl(address: string): boolean {
  const url = URL.parse(address);
  return (
    url !== null && url.protocol === `${pageScheme}:` && url.host === 'page' && url.username === '' && url.port === ''
  );
}

/** Whether a link is exactly one that the program offers. */
export function isOwnLink(address: string): boolean {
  return ownLinks.includes(address);
}

/** Whether a message comes from the page in the window's main frame; subframes are not trusted. */
export function isTrustedSender(frame: { readonly url: string; readonly parent: unknown } | null): boolean {
  return frame !== null && frame.parent === null && isPageUrl(frame.url);
}
