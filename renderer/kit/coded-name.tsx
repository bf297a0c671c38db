import css from './coded-name.module.css';

/** A record's code and name: "M01 Expanded clay". */
export function CodedName({ code, label }: { readonly code: string; readonly label: string }) {
  return (
    <>
      <span class={css['code']}>{code}</span> {label}
    </>
  );
}
