// `field FILE [--json] [--round] [--out X.svg | X.edp]`: capacitances, where discharge would start, the picture of the
// field, or the section as a script for a finite-element package.

import { fieldSvg } from '#drawing/field/field-svg.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import type { FoundField } from '#judge/field/field-of.ts';
import { fieldPicture } from '#judge/field/field-picture.ts';
import type { Study } from '#judge/study.ts';
import type { Design } from '#model/design.ts';
import { finiteElementScript, stoodBack } from '#papers/finite-elements.ts';
import { fieldHeadline } from '#words/field/field-headline.ts';
import { fieldText } from '#words/field/field-text.ts';
import { byField } from '#cli/verbs/by-field.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

const WIDTH = 1200;
/** Points round a wire in the script, at least. */
const AROUND = 48;

export function fieldOfFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch', round: 'switch', out: 'value' });
  if (given.kind === 'wrong') return refused(`field: ${given.says}.`);
  const { files, options } = given;
  const [file] = files;
  if (file === undefined || files.length > 1)
    return refused('field: name one design file, or - for standard input.');
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design } = loaded;
  const turned = options.has('round');
  if (turned && design.former.tube?.shape !== 'round')
    return refused('field: --round needs a round tube in the file (former.tube).');
  const { found, studied } = byField(design, turned);
  const out = options.get('out');
  if (out?.endsWith('.edp')) {
    if (turned) return refused('field: a script is written of the plane section, without --round.');
    return scripted(found, out);
  }
  if (out !== undefined) return drawn(design, studied, found, out);
  const { report } = found;
  const { leakage } = studied.stress;
  return done(
    options.has('json')
      ? `${JSON.stringify({ ...report, touchCurrent: leakage.touch }, null, 2)}\n`
      : fieldText(design, report, leakage),
  );
}

/** What the command line and a check by other means hand to the package: the plain section, at the voltages judged. */
function scripted(found: FoundField, out: string): Outcome {
  const [first] = found.cases;
  if (first === undefined || found.solved === null) return refused('field: there is no field to write.');
  const section = stoodBack(found.drawn.section);
  return writeWhole(out, finiteElementScript(section, first.electrodes, AROUND), 'field');
}

function drawn(design: Design, studied: Study, found: FoundField, out: string): Outcome {
  const { report } = found;
  const scene = sceneOf(design, studied, report.section);
  if (report.none !== null || scene === null) return refused(`field: ${fieldHeadline(design, report)}`);
  const says = fieldHeadline(design, report);
  const look = {
    theme: 'light',
    width: WIDTH,
    lines: true,
    prefix: '',
    heading: report.title,
    says,
    picked: null,
  } as const;
  return writeWhole(out, `${fieldSvg(scene, fieldPicture(found), look)}\n`, 'field');
}
