/** A file's name without what a file system would trip over: `Order Hollin Lane Growers' Supply 2027-03-08.csv`. */
export function fileName(words: string, ending: string): string {
  const plain = words
    .replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  return `${plain.slice(0, 100)}.${ending}`;
}
