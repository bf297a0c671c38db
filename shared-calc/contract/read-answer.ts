import { z } from 'zod';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Channel } from './channel-names.ts';
import { channels, Refusal } from './channels.ts';
import type { Output } from './channels.ts';

const Answer = z.discriminatedUnion('ok', [
  z.strictObject({ ok: z.literal(true), value: z.unknown() }),
  z.strictObject({ ok: z.literal(false), fault: Refusal }),
]);

/** The same channels, by the output that each parses. */
const outputs: { readonly [C in Channel]: { readonly output: z.ZodType<Output<C>> } } = channels;

/** Parses an answer of a channel; one that breaks the contract is itself a refusal. */
export function readAnswer<C extends Channel>(channel: C, data: unknown): Result<Output<C>, Refusal> {
  const answer = Answer.safeParse(data);
  if (!answer.success) return failed(senseless);
  if (!answer.data.ok) return failed(answer.data.fault);
  const value = outputs[channel].output.safeParse(answer.data.value);
  return value.success ? ok(value.data) : failed(senseless);
}

const senseless: Refusal = { says: 'The program gave an answer that makes no sense.', readAgain: true };
