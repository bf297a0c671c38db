import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';

/** Amounts by job, as `--json` gives them: `{ "J02": 7 }`. */
export function amountsJson(amounts: ReadonlyMap<string, number>): Readonly<Record<string, number>> {
  return Object.fromEntries([...amounts].map(([job, amount]) => [job, cleanNoise(amount)]));
}
