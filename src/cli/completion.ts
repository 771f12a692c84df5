/**
 * `ullage completion`: a script with which a shell completes command lines. At every press of the key it asks
 * `ullage complete -- WORDS...`, which a library answers from the table of commands itself.
 *
 * The library has scripts as well. These are ours since its own evaluate the line that is being typed, so that a
 * pasted `$(...)` would run before anybody pressed return, and want a second package in bash.
 */
import tab from '@bomb.sh/tab/commander';
import { Command } from 'commander';
import { ruleNames } from '../rules/registry.ts';
import type { AddCommand } from './command.ts';
import type { Finished } from './edge.ts';

const scripts = {
  bash: `_ullage() {
  local line
  COMPREPLY=()
  while IFS= read -r line; do
    [[ $line == :* ]] || COMPREPLY+=("\${line%%$'\\t'*}")
  done < <(ullage complete -- "\${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -o default -F _ullage ullage
`,
  zsh: `#compdef ullage
_ullage() {
  local line
  local -a candidates
  while IFS= read -r line; do
    [[ $line == :* ]] || candidates+=("\${\${line%%$'\\t'*}//:/\\\\:}:\${line#*$'\\t'}")
  done < <(ullage complete -- "\${(@Q)words[2,CURRENT]}" 2>/dev/null)
  if (( \${#candidates} )); then _describe ullage candidates; else _files; fi
}
if [[ "\${funcstack[1]}" == _ullage ]]; then _ullage "$@"; else compdef _ullage ullage; fi
`,
  fish: `function __ullage_complete
  set -l words (commandline --tokenize --cut-at-cursor --current-process) (commandline --current-token --cut-at-cursor)
  set -l found (ullage complete -- $words[2..-1] 2>/dev/null | string match --invert --regex '^:')
  if set -q found[1]
    printf '%s\\n' $found
  else
    __fish_complete_path (commandline --current-token --cut-at-cursor)
  end
end
complete --command ullage --no-files --arguments '(__ullage_complete)'
`,
} as const;

export type Shell = keyof typeof scripts;

export const runCompletion = (shell: Shell): Finished => ({ output: scripts[shell], code: 0 });

/** @param words the command line after `ullage`, up to the word that is being typed */
export async function runComplete(words: readonly string[], addCommands: AddCommand): Promise<Finished> {
  const printed: string[] = [];
  const program = addCommands(new Command('ullage').helpOption(false).exitOverride(), {
    finish: () => {},
    write: () => {},
  });
  const rules = program.commands.find((command) => command.name() === 'rules');
  for (const argument of rules?.registeredArguments ?? []) argument.choices(ruleNames);
  tab(program, { completionCommandName: 'completion' });
  // The library prints; what it prints is this command's output.
  const { log } = console;
  console.log = (...lines: readonly unknown[]) => void printed.push(lines.join(' '));
  try {
    await program.parseAsync(['complete', '--', ...words], { from: 'user' });
  } finally {
    console.log = log;
  }
  // A shell that the library knows a script for, and this one has none.
  const known = printed.filter((line) => !line.startsWith('powershell'));
  return { output: known.map((line) => `${line}\n`).join(''), code: 0 };
}
