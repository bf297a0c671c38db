interface Fact {
  readonly kind: string;
}

/** A function for each kind of fault that makes its sentence. */
export type Sayings<F extends Fact, Rest extends readonly unknown[] = []> = {
  readonly [K in F['kind']]: (fault: Extract<F, { readonly kind: K }>, ...rest: Rest) => string;
};

/** The sentence of a fault, by its kind. */
export function sayByKind<F extends Fact, Rest extends readonly unknown[]>(
  sayings: Sayings<F, Rest>,
  fault: F,
  ...rest: Rest
): string {
  const say = sayings[fault.kind as F['kind']] as (fault: F, ...rest: Rest) => string;
  return say(fault, ...rest);
}
