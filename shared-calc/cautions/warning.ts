import type { Decides } from './deciders.ts';

/** This figure is outside what the sum knows, and who decides about it. */
export interface Warning {
  readonly says: string;
  readonly decides: Decides;
}
