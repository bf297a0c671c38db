/** What the walls of the loopback address look at. */
export interface RequestHead {
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** `sec-fetch-site`, which browsers send and pages cannot set. */
  readonly site: string | undefined;
}

/**
 * Why a request does not come from the page itself, if it does not. `Host` keeps out names that were bent to this
 * address, `Origin` other pages; an act must say its origin.
 */
export function judgeRequest(asked: RequestHead, address: string): string | undefined {
  if (asked.host !== new URL(address).host) return 'This address is not known here.';
  if (asked.origin === undefined && asked.method === 'POST') return 'A call must say where it comes from.';
  if (asked.origin !== undefined && asked.origin !== address) return 'Another page may not call here.';
  if (asked.site !== undefined && asked.site !== 'same-origin' && asked.site !== 'none') {
    return 'Another page may not call here.';
  }
  return undefined;
}
