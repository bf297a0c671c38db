import { randomInt } from 'node:crypto';

import type { Channel } from '#shared-calc/contract/channel-names.ts';
import { channels } from '#shared-calc/contract/channels.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Handlers } from './handlers.ts';
import { refuse, refuseBehind } from './refuse.ts';
import { sayInputFault } from './say-input-fault.ts';

/** Writes one line, or a stack, to the log that the maintainer reads. */
export type Log = (text: string) => void;

/** Answers a call. The input is validated strictly first; a bug ends here, with its stack in the log. */
export function answerCall(handlers: Handlers, channel: Channel, data: unknown, log: Log): Result<unknown, Refusal> {
  const input = channels[channel].input.safeParse(data);
  if (!input.success) return refuse(sayInputFault(input.error, data));
  const handle = handlers[channel] as (input: unknown) => Result<unknown, Refusal>;
  try {
    return handle(input.data);
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
