export interface PickedText {
  readonly name: string;
  readonly text: string;
}

/** Larger files are not price lists of this program, bytes. */
const MOST_BYTES = 20_000_000;

/**
 * Lets the user choose a text file and passes it to `take`; `refuse` gets a sentence if it is too large or unreadable.
 */
export function pickText(page: Document, take: (picked: PickedText) => void, refuse: (sentence: string) => void): void {
  const input = page.createElement('input');
  input.type = 'file';
  input.accept = '.csv,.tsv,.txt,text/csv,text/plain';
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (!file) return;
    if (file.size > MOST_BYTES) return refuse(`${file.name} is too large for a list.`);
    file.text().then(
      (text) => take({ name: file.name, text }),
      () => refuse(`${file.name} could not be read.`),
    );
  });
  input.click();
}
