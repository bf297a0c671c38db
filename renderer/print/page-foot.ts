import { useEffect } from 'preact/hooks';

/** What stands at the foot of every printed page, left of its number. */
export function usePageFoot(words: string): void {
  useEffect(() => putPageFoot(document, words), [words]);
}

/** Made from code: the words are the paper's own, and the content policy lets no style in with the text. */
function putPageFoot(page: Document, words: string): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(footRule(words));
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, sheet];
  return () => {
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((each) => each !== sheet);
  };
}

/** Words from outside stay words: quotes, backslashes and line ends are written as their numbers. */
export function footRule(words: string): string {
  const safe = words.replaceAll(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `);
  const look = 'font: 7.75pt sans-serif; color: #333; vertical-align: top; padding-top: 2mm;';
  return `@page {
  @bottom-left { content: "${safe}"; ${look} }
  @bottom-right { content: "page " counter(page) " of " counter(pages); ${look} }
}`;
}
