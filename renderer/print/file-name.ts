/** A file name without characters that a file system refuses: `Order Hollin Lane Growers' Supply 2027-03-08.csv`. */
export function fileName(words: string, ending: string): string {
  const plain = words
    .replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  return `${plain.slice(0, 100)}.${ending}`;
}
