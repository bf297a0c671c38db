import css from './coded-name.module.css';

/** What has a code in its book: "M01 Expanded clay". */
export function CodedName({ code, label }: { readonly code: string; readonly label: string }) {
  return (
    <>
      <span class={css['code']}>{code}</span> {label}
    </>
  );
}
