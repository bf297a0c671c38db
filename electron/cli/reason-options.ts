import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Arguments } from './read-arguments.ts';

/** Why something is done although something stands against it, and who decides it. */
export const reasonOptions = { anyway: 'text', who: 'text' } as const;

export function reasonOf(given: Arguments): Reason {
  return { anyway: given.text('anyway'), who: given.text('who') };
}
