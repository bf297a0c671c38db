export interface PackageLicence {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** The whole text, if it came with the package. */
  readonly text?: string;
}

/** Parses the list that the build writes: a heading `## NAME - VERSION (LICENCE)` before each text. */
export function readLicences(list: string): readonly PackageLicence[] {
  return list
    .split(/^## /m)
    .slice(1)
    .flatMap((part): readonly PackageLicence[] => {
      const [heading = '', ...lines] = part.split('\n');
      const [, name, version, licence] = /^(.+) - (\S+) \((.+)\)$/.exec(heading.trim()) ?? [];
      if (name === undefined || version === undefined || licence === undefined) return [];
      return [{ name, version, licence, text: lines.join('\n').trim() }];
    });
}
