import type { Bridge } from '#renderer/bridge.ts';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { BookInfo, Entry, Refusal } from '#shared-calc/contract/channels.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import type { Result } from '#shared-calc/result.ts';

/** The answer of any writing call. */
export interface Written {
  readonly info: BookInfo;
  readonly others: readonly Entry[];
  readonly change?: Change | undefined;
}

export type OnWritten = (done: Result<Written, string>) => void;

/** One request to the service; requests keep their order. */
export type WriteStep =
  | { readonly act: 'apply'; readonly change: Change }
  | { readonly act: 'undo' | 'redo' }
  | { readonly act: 'issue'; readonly job: string; readonly reason: Reason; readonly told: OnWritten }
  | { readonly act: 'restore'; readonly file: string; readonly told: OnWritten };

/** Sends a step to the service, based on the revision the page has. */
export async function sendStep(bridge: Bridge, step: WriteStep, info: BookInfo): Promise<Result<Written, Refusal>> {
  const on = { opening: info.opening, onRevision: info.revision };
  switch (step.act) {
    case 'apply':
      return bridge.call('book.apply', { ...on, change: step.change });
    case 'undo':
      return bridge.call('book.undo', on);
    case 'redo':
      return bridge.call('book.redo', on);
    case 'issue':
      return bridge.call('quote.issue', { ...on, job: step.job, ...withoutUndefined(step.reason) });
    case 'restore':
      return bridge.call('file.restore', { ...on, file: step.file });
  }
}

/** The edits among steps, in order. */
export function editsIn(steps: readonly WriteStep[]): readonly Change[] {
  return steps.flatMap((step) => (step.act === 'apply' ? [step.change] : []));
}
