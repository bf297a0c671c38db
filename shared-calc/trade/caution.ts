/** A caution, and who decides about it. The program reminds; it does not rule. */
export interface Caution {
  readonly says: string;
  readonly decides: string;
}
