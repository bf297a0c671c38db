import { readFileSync } from 'node:fs';

/** The text of a file, or of standard input where the file is `-`; undefined where it cannot be read. */
export function readText(file: string): string | undefined {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch {
    return undefined;
  }
}
