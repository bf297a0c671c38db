import { noSource, sourceFields, type SourceMark, type Sourced } from '#shared-calc/fields/source.ts';

/** `from memory` */
export function markWords(mark: SourceMark | undefined): string {
  return sourceFields.source.options?.find(({ value }) => value === mark)?.label ?? noSource;
}

/** `measured by us: 2027-03-10, watch of T07 in J01` */
export function saySource({ source, sourceNote = '' }: Sourced): string {
  const words = source === 'memory' ? 'from memory, to be checked' : markWords(source);
  return sourceNote === '' ? words : `${words}: ${sourceNote}`;
}
