import type { IncomingMessage } from 'node:http';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

/** The largest edit that a page sends: a price list of some ten thousand packs. Bytes. */
export const largestBody = 16 * 1024 * 1024;

export interface BodyFault {
  readonly status: 400 | 413 | 415;
  readonly says: string;
}

/** A key and its name. */
const largestForm = 1024;

/** Parses the JSON of a call. A body that is too large is not read to its end. */
export async function readBody(request: IncomingMessage): Promise<Result<unknown, BodyFault>> {
  if (typeOf(request) !== 'application/json') return failed({ status: 415, says: 'A call is JSON.' });
  const body = await readBytes(request, largestBody);
  if (!body.ok) return body;
  return isDeep(body.value) ? tooDeep : parseBody(body.value);
}

/** Reads a form of a page. */
export async function readForm(request: IncomingMessage): Promise<Result<URLSearchParams, BodyFault>> {
  if (typeOf(request) !== 'application/x-www-form-urlencoded') return failed({ status: 415, says: 'A key is a form.' });
  const body = await readBytes(request, largestForm);
  return body.ok ? ok(new URLSearchParams(body.value.toString('utf8'))) : body;
}

function typeOf({ headers }: IncomingMessage): string {
  const [kind = ''] = (headers['content-type'] ?? '').split(';');
  return kind.trim().toLowerCase();
}

async function readBytes(request: IncomingMessage, most: number): Promise<Result<Buffer, BodyFault>> {
  if (Number(request.headers['content-length'] ?? 0) > most) return tooLarge;
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request) {
    if (!Buffer.isBuffer(part)) continue;
    length += part.length;
    if (length > most) return tooLarge;
    parts.push(part);
  }
  return ok(Buffer.concat(parts));
}

const tooDeep: Result<never, BodyFault> = failed({ status: 400, says: 'This lies too deep in itself for an edit.' });
const tooLarge: Result<never, BodyFault> = failed({ status: 413, says: 'This is too much for one edit.' });

/** More than any call, and little enough for the parser, which takes seconds for millions. */
const deepest = 64;
const [quote, backslash] = [0x22, 0x5c];

/** Whether lists or records lie deeper in one another; looks at the bytes alone. */
function isDeep(body: Buffer): boolean {
  let depth = 0;
  let inText = false;
  for (let at = 0; at < body.length; at += 1) {
    const byte = body[at];
    if (byte === quote) inText = !inText;
    else if (inText) at += byte === backslash ? 1 : 0;
    // [ and {, ] and }
    else if (byte === 0x5b || byte === 0x7b) depth += 1;
    else if (byte === 0x5d || byte === 0x7d) depth -= 1;
    if (depth > deepest) return true;
  }
  return false;
}

function parseBody(body: Buffer): Result<unknown, BodyFault> {
  try {
    const data: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body));
    return ok(data);
  } catch {
    // Invalid UTF-8 and invalid JSON are treated alike.
    return failed({ status: 400, says: 'This is no JSON.' });
  }
}
