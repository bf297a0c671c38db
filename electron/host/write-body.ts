import { createWriteStream, rmSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { BodyFault } from './read-body.ts';

/** The largest book that a browser may send, bytes. */
const largestBook = 512 * 1024 * 1024;

/** Writes the body of a request into a new file. A body that is too large is not read to its end. */
export async function writeBody(
  request: IncomingMessage,
  file: string,
  largest = largestBook,
): Promise<Result<undefined, BodyFault>> {
  const kind = request.headers['content-type'] ?? '';
  if (kind !== 'application/octet-stream') return failed({ status: 415, says: 'A book is sent as a file.' });
  if (Number(request.headers['content-length'] ?? 0) > largest) return tooLarge;
  let length = 0;
  const counting = new Transform({
    transform: (part: Buffer, _encoding, next) => {
      length += part.length;
      if (length > largest) next(new Error('too large'));
      else next(undefined, part);
    },
  });
  try {
    await pipeline(request, counting, createWriteStream(file, { flags: 'wx', mode: 0o600 }));
    return ok(undefined);
  } catch (error) {
    rmSync(file, { force: true });
    if (length > largest) return tooLarge;
    return failed({
      status: 400,
      says: `The file did not come whole (${error instanceof Error ? error.message : 'it broke off'}).`,
    });
  }
}

const tooLarge: Result<never, BodyFault> = failed({ status: 413, says: 'This file is too large for a book.' });
