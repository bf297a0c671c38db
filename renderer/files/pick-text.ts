export interface PickedText {
  readonly name: string;
  readonly text: string;
}

/** Files larger than this are no list of ours. */
const MOST_BYTES = 20_000_000;

/** Lets the person choose a text file and reads it; `undefined` where none is chosen, a sentence where it cannot be read. */
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
