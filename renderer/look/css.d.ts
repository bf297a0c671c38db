/** A module's classes by their names in the file; a plain style sheet is imported only for its effect. */
declare module '*.css' {
  const classes: Readonly<Record<string, string>>;
  export default classes;
}
