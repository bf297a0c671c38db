import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { CheckMargin } from './check-margin.ts';

/** `60.09 kg against 48.00 kg: 12.09 kg short.` */
export function sayMargin({ has, against, spare, unit, stepUnit }: CheckMargin, display: Display): string {
  const words = (figure: number, of: string) => figureWords(toBase(figure, unitOf(of)), of, display);
  const room = spare >= 0 ? `${words(spare, stepUnit)} to spare` : `${words(-spare, stepUnit)} short`;
  return `${words(has, unit)} against ${words(against, unit)}: ${room}.`;
}
