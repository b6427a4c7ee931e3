// `completion bash|zsh|fish`: a script for the shell, written from the verbs and what their usage names.

import { readArguments } from '#cli/line/arguments.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';

/** What help says of a verb. */
interface Named {
  readonly name: string;
  readonly usage: string;
  readonly says: string;
}

const SHELLS: Readonly<Record<string, (verbs: readonly Named[]) => string>> = { bash, zsh, fish };

/** `completion`, over the verbs that there are. */
export const completionOf =
  (verbs: readonly Named[]) =>
  (words: readonly string[]): Outcome =>
    completion(verbs, words);

function completion(verbs: readonly Named[], words: readonly string[]): Outcome {
  const given = readArguments(words, {});
  if (given.kind === 'wrong') return refused(`completion: ${given.says}.`);
  const [shell, ...more] = given.files;
  const write = shell !== undefined && Object.hasOwn(SHELLS, shell) ? SHELLS[shell] : undefined;
  if (write === undefined || more.length > 0)
    return refused(`completion: name one shell of ${Object.keys(SHELLS).join(', ')}.`);
  return done(write(verbs));
}

/** Options that the usage of a verb names, in its order. */
const optionsOf = ({ usage }: Named): readonly string[] => [
  ...new Set(usage.match(/--[a-z-]+/g) ?? []),
  '--help',
];

const names = (verbs: readonly Named[]): string => verbs.map(({ name }) => name).join(' ');

/** Files where no option is begun: every verb but a few reads them. */
function bash(verbs: readonly Named[]): string {
  const cases = verbs.map((verb) => `    ${verb.name}) options="${optionsOf(verb).join(' ')}" ;;`);
  return `${[
    '# layerwright: verbs and options. Load it with: source <(layerwright completion bash)',
    '_layerwright() {',
    '  local word="${COMP_WORDS[COMP_CWORD]}" options=""',
    '  if [ "$COMP_CWORD" -eq 1 ]; then',
    `    COMPREPLY=($(compgen -W "${names(verbs)}" -- "$word"))`,
    '    return',
    '  fi',
    '  case "${COMP_WORDS[1]}" in',
    ...cases,
    '  esac',
    '  case "$word" in',
    '    -*) COMPREPLY=($(compgen -W "$options" -- "$word")) ;;',
    '    *) COMPREPLY=($(compgen -f -- "$word")) ;;',
    '  esac',
    '}',
    'complete -o filenames -F _layerwright layerwright',
  ].join('\n')}\n`;
}

function zsh(verbs: readonly Named[]): string {
  const said = verbs.map(({ name, says }) => `    '${name}:${quoted(says)}'`);
  const cases = verbs.map((verb) => `    ${verb.name}) options=(${optionsOf(verb).join(' ')}) ;;`);
  return `${[
    '#compdef layerwright',
    '# layerwright: verbs and options. Load it with: source <(layerwright completion zsh)',
    '_layerwright() {',
    '  local -a verbs options',
    '  verbs=(',
    ...said,
    '  )',
    '  if (( CURRENT == 2 )); then',
    "    _describe 'verb' verbs",
    '    return',
    '  fi',
    '  case "$words[2]" in',
    ...cases,
    '  esac',
    '  if [[ "$words[CURRENT]" == -* ]]; then compadd -- $options; else _files; fi',
    '}',
    'compdef _layerwright layerwright',
  ].join('\n')}\n`;
}

function fish(verbs: readonly Named[]): string {
  const first = 'complete -c layerwright -n __fish_use_subcommand -f';
  const lines = verbs.flatMap((verb) => [
    `${first} -a ${verb.name} -d '${quoted(verb.says)}'`,
    ...optionsOf(verb).map(
      (option) =>
        `complete -c layerwright -n '__fish_seen_subcommand_from ${verb.name}' -l ${option.slice('--'.length)}`,
    ),
  ]);
  return `${['# layerwright: verbs and options. Load it with: layerwright completion fish | source', ...lines].join('\n')}\n`;
}

/** Short, and without what would end a quotation of a shell. */
const quoted = (says: string): string => says.split(/[;,]/, 1)[0]!.replace(/['\\:]/g, ' ');
