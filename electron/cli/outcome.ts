/** The result of a command. Faults go to standard error, one sentence each. */
export type Outcome =
  | {
      readonly is: 'answer';
      readonly json: unknown;
      readonly table: () => string;
      readonly csv?: () => string;
      /** Sentences for standard error, so that the output itself stays valid for programs. */
      readonly notices?: readonly string[];
    }
  | { readonly is: 'refused'; readonly says: readonly string[]; readonly json?: unknown }
  | { readonly is: 'wrong use'; readonly says: string }
  | { readonly is: 'no book'; readonly says: string }
  | { readonly is: 'goes on' };

export function refusal(...says: readonly string[]): Outcome {
  return { is: 'refused', says };
}

export function wrongUse(says: string): Outcome {
  return { is: 'wrong use', says };
}

export const exitCodes = { answer: 0, 'goes on': undefined, refused: 1, 'wrong use': 2, 'no book': 3 } as const;
