/** Words at the start of a sentence: "soil front" as "Soil front". */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
