import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { openService } from '#electron/service/open-service.ts';
import type { Service, ServiceOptions } from '#electron/service/open-service.ts';

import { forgetLastPlace, readLastPlace, writeLastPlace } from './last-place.ts';
import { openHost } from './open-host.ts';
import type { Served } from './answer-request.ts';
import type { Host } from './open-host.ts';

export interface ServeOptions extends Omit<ServiceOptions, 'onNews'> {
  /** The folder of the built page. */
  readonly page: string;
  /** Any free port by default. */
  readonly port?: number | undefined;
  /** File that stores port and secret, for the pages of a run that was killed. */
  readonly lastPlaceFile: string;
  /** Somebody has come with a link that lets nobody in any longer: here is a new one for the person who started this. */
  readonly onOldKey?: (newLink: string) => void;
}

export type ServeFault = { readonly is: 'no book' | 'no port'; readonly says: string };

export interface ServedBook extends Pick<Host, 'address' | 'newLink' | 'newKey'> {
  /** Why the book could not be opened; the page then offers what brings it back. */
  readonly fault: string | undefined;
  readonly close: () => Promise<void>;
}

/** Opens a book and serves its page on the loopback address until it is closed. */
export async function serveBook(options: ServeOptions): Promise<Result<ServedBook, ServeFault>> {
  const hosts: Host[] = [];
  const onNews: ServiceOptions['onNews'] = (news) => hosts.forEach((host) => host.tell(news));
  const service = openService({ ...options, onNews });
  if (!service.ok) return failed({ is: 'no book', says: service.fault });
  const host = await takePlace(servedBy(service.value, options), options);
  if (!host.ok) {
    service.value.close();
    return failed({ is: 'no port', says: host.fault });
  }
  hosts.push(host.value);
  const { port, secret, address, newLink, newKey } = host.value;
  writeLastPlace(options.lastPlaceFile, { port, secret });
  return ok({
    fault: service.value.fault(),
    address,
    newLink,
    newKey,
    close: async () => {
      await host.value.close();
      service.value.close();
      forgetLastPlace(options.lastPlaceFile, { port, secret });
    },
  });
}

function servedBy({ answer, files, now }: Service, { page, log, onOldKey = () => undefined }: ServeOptions): Served {
  return { page, answer, files, now, onOldKey, log };
}

/** The requested port; otherwise the port of a run that was killed, if it is free; otherwise any. */
async function takePlace(served: Served, { port, lastPlaceFile }: ServeOptions): Promise<Result<Host, string>> {
  const last = readLastPlace(lastPlaceFile);
  if (port !== undefined) return openHost(served, { port, secret: last?.port === port ? last.secret : undefined });
  const again = last && (await openHost(served, last));
  return again?.ok ? again : openHost(served);
}
