import type { IpcMain } from 'electron';

import { channelNames } from '#shared-calc/contract/channel-names.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { isTrustedSender } from './trusted-url.ts';

type Answer = (channel: Channel, input: unknown) => Promise<Result<unknown, Refusal>>;

const notFromPage: Result<never, Refusal> = failed({ says: 'Only the page may call here.', readAgain: false });

/** Answers every channel, but only for the page: each call's sender is checked. */
export function answerPageCalls(ipc: Pick<IpcMain, 'handle'>, answer: Answer): void {
  for (const channel of channelNames) {
    ipc.handle(channel, (event, input: unknown) =>
      isTrustedSender(event.senderFrame) ? answer(channel, input) : notFromPage,
    );
  }
}
