/** A command as a shell completes it: its words, and its options with what each is for. */
export interface CompletedCommand {
  readonly name: string;
  readonly options: readonly { readonly flag: string; readonly says: string }[];
}

type Script = (commands: readonly CompletedCommand[]) => string;

/** The script of each shell that is known. Every one completes commands, their second words, and options; else files. */
export const scripts: ReadonlyMap<string, Script> = new Map([
  ['bash', bash],
  ['zsh', zsh],
  ['fish', fish],
  ['powershell', powershell],
]);

const program = 'loamwright';

/** By the words before the one that is typed: the words that may follow. */
function nextWords(commands: readonly CompletedCommand[]): ReadonlyMap<string, readonly string[]> {
  const next = new Map<string, Set<string>>();
  for (const { name } of commands) {
    const words = name.split(' ');
    for (const [at, word] of words.entries()) {
      const before = words.slice(0, at).join(' ');
      next.set(before, (next.get(before) ?? new Set()).add(word));
    }
  }
  return new Map([...next].map(([before, words]) => [before, [...words].toSorted()]));
}

/** Longer names first, so that `job sizes` is met before `job`. */
function byLength(commands: readonly CompletedCommand[]): readonly CompletedCommand[] {
  return commands.toSorted((one, other) => other.name.length - one.name.length);
}

function flagsOf({ options }: CompletedCommand): string {
  return options.map(({ flag }) => flag).join(' ');
}

function bash(commands: readonly CompletedCommand[]): string {
  const words = [...nextWords(commands)].map(([before, next]) => `    "${before}") next="${next.join(' ')}" ;;`);
  const flags = byLength(commands).map((each) => `    "${each.name} "*) flags="${flagsOf(each)}" ;;`);
  return `# loamwright completion bash: save it where your bash looks for completions
_${program}() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[*]:1:COMP_CWORD-1}" next="" flags=""
  case "$before" in
${words.join('\n')}
  esac
  case "$before " in
${flags.join('\n')}
  esac
  COMPREPLY=()
  if [[ $word == -* ]]; then
    COMPREPLY=($(compgen -W "$flags" -- "$word"))
  elif [[ -n $next ]]; then
    COMPREPLY=($(compgen -W "$next" -- "$word"))
  fi
}
complete -o default -F _${program} ${program}`;
}

function zsh(commands: readonly CompletedCommand[]): string {
  return `#compdef ${program}\nautoload -U +X bashcompinit && bashcompinit\n${bash(commands)}`;
}

function fish(commands: readonly CompletedCommand[]): string {
  const lines = [...nextWords(commands)].map(
    ([before, next]) => `complete -c ${program} -n '${fishAfter(before)}' -a '${next.join(' ')}'`,
  );
  const flags = commands.flatMap(({ name, options }) =>
    options.map(
      ({ flag, says }) =>
        `complete -c ${program} -n '${fishIn(name)}' -l '${flag.slice(2)}' -d '${says.replaceAll("'", '’')}'`,
    ),
  );
  return [
    `# ${program} completion fish: save it as ~/.config/fish/completions/${program}.fish`,
    ...lines,
    ...flags,
  ].join('\n');
}

/** Exactly these words are typed before. */
function fishAfter(before: string): string {
  return before === ''
    ? '__fish_use_subcommand'
    : `test "$(commandline -opc | string join " ")" = "${program} ${before}"`;
}

/** What is typed begins with these words. */
function fishIn(name: string): string {
  return `string match -q -- "${program} ${name} *" "$(commandline -opc | string join " ") "`;
}

function powershell(commands: readonly CompletedCommand[]): string {
  const quoted = (words: readonly string[]) => `@(${words.map((word) => `'${word}'`).join(', ')})`;
  const words = [...nextWords(commands)].map(([before, next]) => `    '${before}' = ${quoted(next)}`);
  const flags = byLength(commands).map(
    (each) => `    @('${each.name}', ${quoted(each.options.map(({ flag }) => flag))})`,
  );
  return `# ${program} completion powershell: add it to your profile
Register-ArgumentCompleter -Native -CommandName ${program} -ScriptBlock {
  param($word, $line, $at)
  $typed = @($line.CommandElements | Select-Object -Skip 1 | Where-Object { $_.Extent.EndOffset -lt $at })
  $before = ($typed | ForEach-Object { $_.ToString() }) -join ' '
  $next = @{
${words.join('\n')}
  }
  $flags = @(
${flags.join(',\n')}
  )
  $found = @($next[$before])
  if ($word.StartsWith('-')) {
    foreach ($each in $flags) { if ("$before ".StartsWith($each[0] + ' ')) { $found = $each[1]; break } }
  }
  $found | Where-Object { $_ -and $_.StartsWith($word) } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
}`;
}
