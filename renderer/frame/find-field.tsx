import type { Ref } from 'preact';
import { useMemo } from 'preact/hooks';
import { SearchField } from '#renderer/kit/search-field.tsx';

interface Find {
  readonly label: string;
  readonly placeholder: string;
  readonly options: readonly string[];
  readonly field: Ref<HTMLInputElement>;
  /** Called with the text when Enter or a choice submits it; returns whether it was found. */
  readonly go: (words: string) => boolean;
  readonly refuse: (sentence: string) => void;
}

/** Finds a line, a tank or a view by its name; `/` focuses it from anywhere. */
export function FindField({ label, placeholder, options, field, go, refuse }: Find) {
  const offers = useMemo(() => options.map((option) => <option key={option} value={option} />), [options]);
  const settle = (input: HTMLInputElement) => {
    const words = input.value.trim();
    const found = words !== '' && go(words);
    input.ariaInvalid = String(!found);
    if (found) input.value = '';
    else if (words !== '') refuse(`Nothing here is called ${words}.`);
  };
  return (
    <SearchField label={label} placeholder={placeholder} field={field} list="find-options" enter={settle}>
      <datalist id="find-options">{offers}</datalist>
      <kbd>/</kbd>
    </SearchField>
  );
}
