/** What to mind, and who decides about it: the program reminds, it does not rule. */
export interface Caution {
  readonly says: string;
  readonly decides: string;
}
