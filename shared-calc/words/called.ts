/** The words that a sentence uses for lines, sizes and arguments. */
export interface Called {
  /** A line inside a sentence. */
  readonly line: (name: string) => string;
  /** A line at the start of a sentence. */
  readonly lineFirst: (name: string) => string;
  readonly size: (key: string) => string;
  /** An argument of a function, at the start of a sentence. */
  readonly argument: (fn: string, name: string) => string;
}

/** The names in rules; an argument is in capitals, so that it is not mistaken for a line. */
export const byRuleName: Called = {
  line: (name) => name,
  lineFirst: (name) => name,
  size: (key) => key,
  argument: (_, name) => name.toUpperCase(),
};
