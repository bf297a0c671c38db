/** How a sentence calls the lines, sizes and arguments it is about. */
export interface Called {
  /** A line within a sentence. */
  readonly line: (name: string) => string;
  /** A line at the start of a sentence. */
  readonly lineFirst: (name: string) => string;
  readonly size: (key: string) => string;
  /** An argument of a function, at the start of a sentence. */
  readonly argument: (fn: string, name: string) => string;
}

/** As a rule writes them; an argument stands in capitals, so that it is not read as a line. */
export const byRuleName: Called = {
  line: (name) => name,
  lineFirst: (name) => name,
  size: (key) => key,
  argument: (_, name) => name.toUpperCase(),
};
