import { refused } from './trade-function.ts';

export interface Refusal {
  readonly refused: string;
}

/** The first sentence whose case is true, as a refusal; `undefined` if every figure is valid. */
export function firstRefusal(cases: readonly (readonly [holds: boolean, says: string])[]): Refusal | undefined {
  const found = cases.find(([holds]) => holds);
  return found && refused(found[1]);
}
