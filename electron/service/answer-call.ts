import { randomInt } from 'node:crypto';

import type { z } from 'zod';

import type { Channel } from '#shared-calc/contract/channel-names.ts';
import { channels } from '#shared-calc/contract/channels.ts';
import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { findExcess } from '#shared-calc/contract/find-excess.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Handlers } from './handlers.ts';
import { refuse, refuseBehind } from './refuse.ts';
import { sayExcess, sayInputFault } from './say-input-fault.ts';
import type { Work } from './work.ts';

/** The same channels, by the input that each parses. */
const inputs: { readonly [C in Channel]: { readonly input: z.ZodType<Input<C>> } } = channels;

/** Writes one line, or a stack, to the log that the maintainer reads. */
export type Log = (text: string) => void;

/**
 * Answers a call. The input is validated strictly first; a bug ends here, with its stack in the log. Work that takes long
 * is done in one go.
 */
export function answerCall(handlers: Handlers, channel: Channel, data: unknown, log: Log): Result<unknown, Refusal> {
  const work = workOn(channel, handlers, data, log);
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

/** The same, but between two pieces of long work other calls are answered. */
export async function answerMeanwhile(
  handlers: Handlers,
  channel: Channel,
  data: unknown,
  log: Log,
): Promise<Result<unknown, Refusal>> {
  const work = workOn(channel, handlers, data, log);
  let step = work.next();
  while (!step.done) {
    await new Promise((resolve) => setImmediate(resolve));
    step = work.next();
  }
  return step.value;
}

function* workOn<C extends Channel>(
  channel: C,
  handlers: Handlers,
  data: unknown,
  log: Log,
): Work<Result<Output<C>, Refusal>> {
  const excess = findExcess(data);
  if (excess) return refuse(sayExcess(excess));
  const input = inputs[channel].input.safeParse(data);
  if (!input.success) return refuse(sayInputFault(input.error, data));
  try {
    const answer = handlers[channel](input.data);
    return 'next' in answer ? yield* answer : answer;
  } catch (error) {
    const fault = faultName();
    log(`fault ${fault} in ${channel}: ${stackOf(error)}`);
    return refuseBehind(`The program failed (fault ${fault}). The book is whole; the log says more.`);
  }
}

export function stackOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

/** `F-7K2QM9`: short enough to be read out, without letters that look like digits. */
function faultName(): string {
  const letters = '23456789ACDEFGHJKLMNPQRTUVWXYZ';
  return `F-${Array.from({ length: 6 }, () => letters[randomInt(letters.length)]).join('')}`;
}
