// What the shell is told of the verbs, and what bash makes of it.

import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { completionOf } from '#cli/verbs/telling/completion.ts';
import { verbs } from '#cli/verbs.ts';

const script = (shell: string): string => completionOf(verbs)([shell]).out.join('');

/** What bash offers once the words stand there, the last of them being typed. */
function offered(words: readonly string[]): readonly string[] {
  const quoted = words.map((word) => `'${word}'`).join(' ');
  const ask = `COMP_WORDS=(${quoted}); COMP_CWORD=${words.length - 1}; _layerwright; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout } = spawnSync('bash', ['--norc', '-c', `${script('bash')}\n${ask}`], { encoding: 'utf8' });
  return stdout.split('\n').filter((line) => line !== '');
}

const hasBash = spawnSync('bash', ['--version']).status === 0;

describe('layerwright completion', () => {
  it('should name every verb and the options of its usage, for each shell', () => {
    for (const shell of ['bash', 'zsh', 'fish'])
      for (const { name } of verbs) expect(script(shell), `${shell}, ${name}`).toContain(name);
    expect(script('bash')).toContain('stress) options="--json --help"');
    expect(script('zsh')).toContain('stress) options=(--json --help)');
    expect(script('fish')).toContain("'__fish_seen_subcommand_from stress' -l json");
  });

  it.runIf(hasBash)('should be what bash completes by: verbs, then options, else files', () => {
    expect(offered(['layerwright', 'ju'])).toEqual(['judge']);
    expect(offered(['layerwright', 's'])).toEqual(['stress', 'spread', 'series', 'schema']);
    expect(offered(['layerwright', 'judge', '--j'])).toEqual(['--json', '--junit', '--jsonl']);
    expect(offered(['layerwright', 'judge', 'READ'])).toEqual(['README.md']);
  });

  it('should refuse a shell that it does not know', () => {
    expect(completionOf(verbs)(['csh'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('bash, zsh, fish'),
    });
    expect(completionOf(verbs)([])).toMatchObject({ code: 2 });
  });
});
