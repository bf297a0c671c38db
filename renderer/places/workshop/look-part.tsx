import { useState } from 'preact/hooks';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import type { Theme } from '#renderer/look/wear-theme.ts';
import { keepTheme, storedTheme } from './stored-theme.ts';
import css from './workshop.module.css';

const themes: readonly { readonly value: Theme; readonly label: string }[] = [
  { value: 'system', label: 'as the machine has it' },
  { value: 'light', label: 'light paper' },
  { value: 'dark', label: 'dark paper' },
];

/** How the page looks on this machine. */
export function LookPart() {
  const [theme, setTheme] = useState(storedTheme(window));
  const choose = (value: string) => {
    const next = themes.find((each) => each.value === value)?.value ?? 'system';
    keepTheme(window, next);
    setTheme(next);
  };
  return (
    <section class={css['workshopGroup']}>
      <h2>This page</h2>
      <Fields>
        <ChoiceField
          label="Light or dark"
          value={theme}
          options={themes}
          choose={choose}
          hint="for this machine alone"
        />
      </Fields>
    </section>
  );
}
