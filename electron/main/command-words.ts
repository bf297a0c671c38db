/**
 * What a terminal asks of the installed program, whose one name stands for window and command line: `loamwright bench
 * --sizes T03`. Without a command, or with a book's file, the window is meant.
 */
export function commandWords(argv: readonly string[], isPackaged: boolean): readonly string[] | undefined {
  // Run from its sources, the folder of the program comes before its arguments.
  const words = argv.slice(isPackaged ? 1 : 2);
  const [first = ''] = words;
  return /^(?:--?help|-h|--version|[a-z][a-z-]*)$/.test(first) && first !== 'start' ? words : undefined;
}
