import { signal } from '@preact/signals';
import css from './unkept.module.css';

/** Whether what is written at present is not kept; set by the status line, which says why. */
export const isUnkept = signal(false);

/** Within a field: says so while the field has the keyboard. */
export function Unkept() {
  if (!isUnkept.value) return null;
  return <p class={css['unkept']}>Not kept at present</p>;
}
