interface Fact {
  readonly kind: string;
}

/** A function for each kind of fault that makes its sentence. */
export type Sayings<F extends Fact, Rest extends readonly unknown[] = [], Said = string> = {
  readonly [K in F['kind']]: (fault: Extract<F, { readonly kind: K }>, ...rest: Rest) => Said;
};

/** The sentence of a fault, by its kind. */
export function sayByKind<F extends Fact, Rest extends readonly unknown[], Said>(
  sayings: Sayings<F, Rest, Said>,
  fault: F,
  ...rest: Rest
): Said {
  const say = sayings[fault.kind as F['kind']] as (fault: F, ...rest: Rest) => Said;
  return say(fault, ...rest);
}
