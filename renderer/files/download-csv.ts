import { saveText } from '#renderer/store/save-text.ts';

/** Saves a CSV text as a file, without a byte-order mark. */
export function downloadCsv(name: string, text: string, page: Document = document): void {
  saveText(page, fileName(name), text);
}

/** A file name that every system accepts, ending in .csv. */
export function fileName(name: string): string {
  const bare = name
    .replace(/\.csv$/i, '')
    .replaceAll(/[^\p{L}\p{N} ._-]+/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  const safe = bare
    .replace(/^[. ]+/, '')
    .slice(0, 100)
    .trim();
  return `${safe === '' ? 'list' : safe}.csv`;
}
