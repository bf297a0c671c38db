import type { IncomingMessage } from 'node:http';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

/** The largest edit that a page sends: a price list of some ten thousand packs. Bytes. */
export const largestBody = 16 * 1024 * 1024;

export interface BodyFault {
  readonly status: 400 | 413 | 415;
  readonly says: string;
}

/** Parses the JSON of a call. A body that is too large is not read to its end. */
export async function readBody(request: IncomingMessage): Promise<Result<unknown, BodyFault>> {
  const [kind = ''] = (request.headers['content-type'] ?? '').split(';');
  if (kind.trim().toLowerCase() !== 'application/json') return failed({ status: 415, says: 'A call is JSON.' });
  if (Number(request.headers['content-length'] ?? 0) > largestBody) return tooLarge;
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request) {
    if (!Buffer.isBuffer(part)) continue;
    length += part.length;
    if (length > largestBody) return tooLarge;
    parts.push(part);
  }
  return parseBody(Buffer.concat(parts));
}

const tooLarge: Result<never, BodyFault> = failed({ status: 413, says: 'This is too much for one edit.' });

function parseBody(body: Buffer): Result<unknown, BodyFault> {
  try {
    const data: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body));
    return ok(data);
  } catch {
    // Invalid UTF-8 and invalid JSON are treated alike.
    return failed({ status: 400, says: 'This is no JSON.' });
  }
}
