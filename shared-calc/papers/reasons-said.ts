import type { Derived } from '#shared-calc/derive/derived.ts';
import { inSentence } from '#shared-calc/recipe/line-label.ts';
import type { Done, Records } from '#shared-calc/records/records.ts';
import { paperDay } from './paper-words.ts';

/** Why something of a job was done although something stood against it, in the order it was decided. */
export function reasonsOf({ done }: Pick<Records, 'done'>, job: string): readonly Done[] {
  return [...done.values()].filter((each) => each.job === job && each.against.length > 0);
}

/** `Moved to built on 10 March 2027, decided by builder: paid in cash on the day.` */
export function sayReason(
  { step, quote = '', on, who, note }: Done,
  { records: { rate }, display }: Pick<Derived, 'records' | 'display'>,
): string {
  const what = step === 'issued' ? `Quote ${quote} issued` : `Moved to ${step}`;
  const by = inSentence(rate.get(who)?.label || who);
  return `${what} on ${paperDay(on, display)}, decided by ${by}: ${note}`;
}

/** Each stop in full, `Against it, stop: T07: 98 kg is more than the shelf's share.`; of the rest what it is. */
export function sayStoodAgainst({ against }: Pick<Done, 'against'>): readonly string[] {
  const stops = against.filter(({ what }) => what === 'stop');
  const rest = new Set(against.filter(({ what }) => what !== 'stop').map(({ what }) => what));
  return [
    ...stops.map(({ what, why }) => `Against it, ${what}: ${why}`),
    ...(rest.size === 0 ? [] : [`${stops.length > 0 ? 'Also against' : 'Against'} it: ${[...rest].join(', ')}.`]),
  ];
}
