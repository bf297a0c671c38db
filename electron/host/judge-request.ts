/** The parts of a request that the loopback checks read. */
export interface RequestHead {
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** `sec-fetch-site`, which browsers send and pages cannot set. */
  readonly site: string | undefined;
}

const unknownHost = 'This address is not known here.';

/** The file that opens a browser has no origin, so its key alone says who it is. */
export function judgeEntry({ host, origin }: RequestHead, address: string): string | undefined {
  if (host !== new URL(address).host) return unknownHost;
  return origin === 'null' || origin === address ? undefined : 'Another page may not call here.';
}

/**
 * Why a request does not come from the page itself; `undefined` if it does. `Host` rejects names rebound to this
 * address, `Origin` rejects other pages; a request that writes must have an origin.
 */
export function judgeRequest(asked: RequestHead, address: string): string | undefined {
  if (asked.host !== new URL(address).host) return unknownHost;
  if (asked.origin === undefined && asked.method === 'POST') return 'A call must say where it comes from.';
  if (asked.origin !== undefined && asked.origin !== address) return 'Another page may not call here.';
  if (asked.site !== undefined && asked.site !== 'same-origin' && asked.site !== 'none') {
    return 'Another page may not call here.';
  }
  return undefined;
}
