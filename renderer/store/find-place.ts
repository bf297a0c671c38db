import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import type { LineFaces } from './line-faces.ts';

export interface Named {
  /** The names it is found by, best first. */
  readonly names: readonly string[];
}

/** The thing with this name, or whose name starts with it, or contains it. Case does not matter. */
export function findNamed<T extends Named>(things: readonly T[], words: string): T | undefined {
  const sought = words.trim().toLowerCase();
  if (sought === '') return undefined;
  const fits: readonly ((name: string) => boolean)[] = [
    (name) => name === sought,
    (name) => name.startsWith(sought),
    (name) => name.includes(sought),
  ];
  for (const fit of fits) {
    const found = things.find((thing) => thing.names.some((name) => fit(name.toLowerCase())));
    if (found) return found;
  }
  return undefined;
}

/** Every line, found by its label or its name in rules. */
export function namedLines(faces: LineFaces): readonly (Named & { readonly line: string; readonly section: string })[] {
  return faces.all.map(({ line, label }) => ({ names: [label, line.name], line: line.name, section: line.section }));
}

/** Every size, found by its key, its label or its tank's name. */
export function namedSizes(columns: readonly BenchColumn[]): readonly (Named & { readonly key: string })[] {
  return columns.map(({ key, label, tank }) => ({ names: [key, label, tank.label], key }));
}
