interface Fact {
  readonly kind: string;
}

/** One way of saying for each kind of fault. */
export type Sayings<F extends Fact, Rest extends readonly unknown[] = []> = {
  readonly [K in F['kind']]: (fault: Extract<F, { readonly kind: K }>, ...rest: Rest) => string;
};

/** A fault in the words of its kind. */
export function sayByKind<F extends Fact, Rest extends readonly unknown[]>(
  sayings: Sayings<F, Rest>,
  fault: F,
  ...rest: Rest
): string {
  const say = sayings[fault.kind as F['kind']] as (fault: F, ...rest: Rest) => string;
  return say(fault, ...rest);
}
