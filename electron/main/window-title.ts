import { basename } from 'node:path';

/** The page's title with the name of the book: `Size bench, Youth club, Ferry hall - Loamwright`. */
export function windowTitle(pageTitle: string, bookFile: string): string {
  const book = basename(bookFile, '.loamwright');
  const place = pageTitle.replace(/(?:^|, )Loamwright$/, '');
  return `${[place, book].filter((words) => words !== '').join(', ')} - Loamwright`;
}
