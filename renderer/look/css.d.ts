/** A module's classes by the names they have in its file; a plain style sheet is imported for its effect alone. */
declare module '*.css' {
  const classes: Readonly<Record<string, string>>;
  export default classes;
}
