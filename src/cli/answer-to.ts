// What one command line answers: picks the verb and lets it answer. Starts and ends no process.

import { printable } from '#words/text/printable.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';
import { verbs } from './verbs.ts';

export async function answerTo([name, ...words]: readonly string[]): Promise<Outcome> {
  if (name === undefined) return refused(help());
  if (['help', '--help', '-h'].includes(name)) return done(help());
  const verb = verbs.find((each) => each.name === name);
  if (verb === undefined) {
    const names = verbs.map((each) => each.name).join(', ');
    return refused(`there is no verb ${printable(name)}; there are ${names}.`);
  }
  if (words.includes('--help')) return done(`${verb.usage}\n  ${verb.says}\n`);
  return (await verb.load())(words);
}

function help(): string {
  const lines = verbs.map(({ usage, says }) => `  ${usage}\n      ${says}`);
  return [
    'layerwright judges the insulation of a small mains transformer from a design file.',
    '',
    ...lines,
    '',
    '- reads standard input. Nothing here calls a build safe: a test laboratory and local codes decide.',
    '',
  ].join('\n');
}
