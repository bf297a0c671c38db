import type { CautionId } from '#shared-calc/cautions/all-cautions.ts';
import type { Decides } from '#shared-calc/cautions/deciders.ts';
import type { Warning } from '#shared-calc/cautions/warning.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import type { Kind } from '#shared-calc/quantity/kind.ts';

/** A figure, or the sentence that says why there is none and what to do. */
export type Answer = number | { readonly refused: string };

export interface Example {
  /** A rule with literals: `layer_volume(0.4005 m2, 40 mm)`. */
  readonly rule: string;
  /** The result as a figure with its unit: `16.02 L`. A test checks it to its last digit. */
  readonly gives: string;
}

/** Each group has a folder, with its list in `GROUP-functions.ts`. */
export type TradeGroup =
  | 'geometry'
  | 'media'
  | 'leaves'
  | 'water'
  | 'heat'
  | 'cultures'
  | 'air and light'
  | 'mass'
  | 'buying'
  | 'price'
  | 'dates';

/** One entry of the Function book, with the sum for the engine. */
export interface TradeFunction {
  readonly name: string;
  /** In words: "Layer volume". */
  readonly title: string;
  readonly group: TradeGroup;
  readonly args: readonly Argument[];
  /** Unit of the result, or how it follows from the arguments' kinds. */
  readonly gives: string | ((args: readonly Kind[]) => Kind | undefined);
  /** The sum in words and signs, as a builder would write it on paper. */
  readonly sum: string;
  readonly help: string;
  readonly examples: readonly Example[];
  readonly source: string;
  /** Cautions of the table. */
  readonly cautions?: readonly CautionId[];
  /** Arguments are in their own units, in order, with defaults filled in. */
  readonly compute: (args: readonly (number | string)[]) => Answer;
  /** A sentence if the answer is valid but should be checked. */
  readonly warn?: (args: readonly (number | string)[], answer: number) => string | undefined;
  /** Who decides about its warning; every function with `warn` has it. */
  readonly decides?: Decides;
  /** In the Function book only: it works over lists or dates and so has no name in rules. */
  readonly inRules: boolean;
}

type ValueOf<A extends Argument> = A['takes'] extends readonly string[] ? A['takes'][number] : number;
type ValuesOf<Args extends readonly Argument[]> = {
  readonly [A in Args[number] as A['name']]: ValueOf<A>;
};

type Written<Args extends readonly Argument[]> = Omit<
  TradeFunction,
  'args' | 'compute' | 'warn' | 'decides' | 'inRules'
> & {
  readonly args: Args;
  readonly compute: (values: ValuesOf<Args>) => Answer;
} & (WrittenWarning<Args> | { readonly warn?: never; readonly decides?: never });

/** A warning names who decides. */
interface WrittenWarning<Args extends readonly Argument[]> {
  readonly warn: (values: ValuesOf<Args>, answer: number) => string | undefined;
  readonly decides: Decides;
}

/**
 * Makes an entry from a sum over named arguments, each in its own unit: `compute: ({ area, depth }) => area * depth`.
 */
export function tradeFunction<const Args extends readonly Argument[]>(written: Written<Args>): TradeFunction {
  const { compute, warn, ...rest } = written;
  const names = written.args.map(({ name }) => name);
  const named = (values: readonly (number | string)[]) => {
    const byName: Record<string, number | string | undefined> = {};
    let at = 0;
    for (const name of names) byName[name] = values[at++];
    return byName as unknown as ValuesOf<Args>;
  };
  return {
    ...rest,
    inRules: true,
    compute: (values) => compute(named(values)),
    ...(warn && { warn: (values: readonly (number | string)[], answer: number) => warn(named(values), answer) }),
  };
}

/** An entry of the Function book over lists or dates: described there, and called by the layers above. */
export function listFunction(
  entry: Omit<TradeFunction, 'args' | 'gives' | 'compute' | 'warn' | 'inRules' | 'examples'> & {
    /** Checked in its own test; here only as text. */
    readonly examples: readonly Example[];
    readonly takes: string;
    readonly gives: string;
  },
): TradeFunction {
  const { takes, ...rest } = entry;
  return {
    ...rest,
    args: [{ name: 'figures', takes: 'any', says: takes }],
    compute: () => ({ refused: `${entry.title} works over lists or dates and has no name in rules.` }),
    inRules: false,
  };
}

/** Its warning for these arguments and their answer, in its own units. */
export function warningOf(
  { warn, decides }: Pick<TradeFunction, 'warn' | 'decides'>,
  args: readonly (number | string)[],
  answer: number,
): Warning | undefined {
  const says = warn?.(args, answer);
  return says === undefined || decides === undefined ? undefined : { says, decides };
}

export function refused(says: string): { readonly refused: string } {
  return { refused: says };
}
