import { z } from 'zod';

/**
 * A list from outside, read up to its first wrong entry: a list of a million wrong ones makes one fault, not a million.
 */
export function checkedList<T>(entry: z.ZodType<T>): z.ZodType<T[]> {
  return z.unknown().transform((data, context): T[] => {
    if (!Array.isArray(data)) {
      context.issues.push({ code: 'invalid_type', expected: 'array', input: data });
      return z.NEVER;
    }
    const list: T[] = [];
    const entries: readonly unknown[] = data;
    for (const [at, given] of entries.entries()) {
      const read = entry.safeParse(given);
      if (read.success) list.push(read.data);
      else {
        for (const issue of read.error.issues.slice(0, 3)) {
          context.issues.push({ ...issue, input: given, path: [at, ...issue.path] } as z.core.$ZodRawIssue);
        }
        return z.NEVER;
      }
    }
    return list;
  });
}
