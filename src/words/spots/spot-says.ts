// One plain sentence for a weak spot, and one that names what would mend it.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Grade } from '#units/terms.ts';
import type { SpotBridge, SpotCause, WeakSpot } from '#judge/verdict/spot.ts';
import { lengthDown, lengthTaken } from '#words/text/number-words.ts';
import { conditionWords } from '#words/unknowns/condition-words.ts';
import { buildMend, buildSays } from './build-spot-words.ts';

/** Measured lengths are told no better than they are. */
const measured = lengthDown;
const asked = lengthTaken;

export function spotSays(spot: WeakSpot): string {
  const { cause, needed, verdict, conditions } = spot;
  switch (cause.of) {
    case 'path':
      return `${pathSays(spot, cause).replace(/\.$/, '')}${conditionWords(conditions)}.`;
    case 'bridge':
      return bridgeSays(cause.bridge, needed, verdict === 'not-shown');
    default:
      return buildSays(spot, cause);
  }
}

/** What would mend it, in one sentence, where one figure would do; else empty. */
export function spotMend(spot: WeakSpot): string {
  const { cause } = spot;
  switch (cause.of) {
    case 'path':
      return pathMend(spot, cause);
    case 'bridge':
      return '';
    default:
      return buildMend(spot, cause);
  }
}

type PathCause = Extract<SpotCause, { of: 'path' }>;

function pathSays(
  { kind, length, required, achieved, needed }: WeakSpot,
  { plies, over, screen, lead, sleeved }: PathCause,
): string {
  const onLead = lead === null ? 'A lead' : `The lead ${lead}`;
  const figure =
    length === null || required === null
      ? ''
      : `: ${measured(length)} ${lengthUnit()} where ${asked(required)} ${lengthUnit()} would do for ${needed} insulation`;
  const stands = `${achieved} insulation stands there`;
  switch (kind) {
    case 'touching':
      return 'Bare metal of the two circuits touches; nothing lies between them.';
    case 'enamel-only':
      return 'The two windings touch; only enamel lies between them, and enamel is no barrier.';
    case 'core-bridge':
      return `The path runs over ${over.length > 0 ? over.join(' and ') : 'the core'}${figure}; ${stands}.`;
    case 'lead-crossing':
      return `${onLead} crosses back over its own winding${figure}; ${stands}.`;
    case 'bare-lead':
      return `${onLead} is bare before its sleeve begins${figure}; ${stands}.`;
    case 'lead-in-margin':
      return `${onLead} lies in the margin${sleeved ? ' in a sleeve that is not shown to be strong' : ''}, so the margin counts for nothing there${figure}; ${stands}.`;
    case 'uncovered-tape-edge':
      return `The tape does not reach the flange and the windings face each other past its edge${figure}; ${stands}.`;
    case 'drifting-tape':
      return `The ${screen ? 'screen' : 'tape'} touches no solid at both edges and can wander${figure}; ${stands}.`;
    case 'loose-end':
      return `The end of a winding is not held and can spread to the flange${figure}; ${stands}.`;
    case 'narrow-margin':
      return `The path runs round the tape edges at the flange${figure}; ${stands}.`;
    case 'few-plies':
      return `${plies === 1 ? 'One ply lies' : `${plies} plies lie`} between, fewer than the rule for ${needed} insulation asks; ${stands}.`;
    case 'weak-ply':
      return `${plies === 1 ? 'One layer lies between, but it is' : `${plies} plies lie between, but they are`} not shown to withstand the test for ${needed} insulation; ${stands}.`;
    case 'thin-wall':
      return `A wall, block or sleeve thinner than the least thickness lies between, and its strength is not shown; ${stands}.`;
    case 'short-creepage':
      return `The surface between them is too short${figure}; ${stands}.`;
    case 'short-clearance':
      return `The air gap between them is too short${figure}; ${stands}.`;
    case 'unsafe-bridge':
    case 'weak-bridge':
    case 'touch-current':
    case 'overfull':
    case 'hot':
      return `${stands}.`;
  }
}

function pathMend({ kind, length, required, conditions }: WeakSpot, { plies, screen }: PathCause): string {
  const missing = length === null || required === null ? null : asked(Math.max(0, required - length));
  switch (kind) {
    case 'touching':
    case 'enamel-only':
      return 'Put insulation between the two windings that reaches from flange to flange.';
    case 'narrow-margin':
      return missing === null ? '' : `Widen a margin by ${missing} ${lengthUnit()}.`;
    case 'uncovered-tape-edge':
      return 'Take tape as wide as the chamber.';
    case 'drifting-tape':
      return screen ? 'Fill the margins beside the screen.' : 'Take tape as wide as the chamber.';
    case 'loose-end':
      return 'Fill the margin beside the loose end, or hold the end turns.';
    case 'lead-in-margin':
    case 'bare-lead':
      return 'Sleeve the lead with a strong wall into the winding.';
    case 'lead-crossing':
      return 'Sleeve the crossing lead, or lay tape under and over it.';
    case 'few-plies':
      return morePlies(plies, conditions);
    case 'weak-ply':
      return 'Take tape whose plies are shown to withstand the test, or add a ply.';
    case 'core-bridge':
      return longer(missing, 'from the core, on one side or both,');
    case 'thin-wall':
      return longer(missing, 'beside the wall');
    case 'short-creepage':
      return longer(missing, 'along the surface');
    case 'short-clearance':
      return longer(missing, 'of air');
    case 'unsafe-bridge':
    case 'weak-bridge':
    case 'touch-current':
    case 'overfull':
    case 'hot':
      return '';
  }
}

/** Nobody tapes over what was only not counted: where the number is open, counting comes first. */
function morePlies(plies: number, conditions: WeakSpot['conditions']): string {
  const more = plies === 1 ? 'two plies' : 'a ply';
  const open = conditions.flatMap((each) => (each.if === 'one-ply' ? [each.layer] : []));
  if (open.length === 0) return `Add ${more} of tape.`;
  return `Count the plies of layer ${open.join(' and ')} first; if there is no more than ${plies === 1 ? 'one' : plies}, add ${more} of tape.`;
}

const longer = (missing: string | null, where: string): string =>
  missing === null || Number(missing) === 0 ? '' : `${missing} ${lengthUnit()} more ${where} would do.`;

function bridgeSays(bridge: SpotBridge, needed: Grade | null, isOpen: boolean): string {
  if (isOpen && bridge.unsafe === 'rating')
    return `${bridge.id} is rated below the working voltage between its circuits, and what stands across itself is not given: if that is more than it is rated for, one fault in it puts the mains on the output.`;
  if (isOpen && bridge.unsafe !== null)
    return `${bridge.id} is not known to be a safety part: if it is none, one fault in it puts the mains on the output.`;
  switch (bridge.unsafe) {
    case 'class':
      return `${bridge.id} is no safety part for this barrier: one fault in it puts the mains on the output.`;
    case 'rating':
      return `${bridge.id} is rated below the working voltage: one fault in it puts the mains on the output.`;
    case 'single-part':
      return `${bridge.id} is a single part without approval: one fault in it puts the mains on the output.`;
    case null:
      return `${bridge.id} bridges the barrier with ${partGrade(bridge.grade)} insulation; ${needed} is asked${distanceSays(bridge)}.`;
  }
}

/** What is basic and supplementary both is told as basic. */
const partGrade = (grade: Grade): Grade => (grade === 'supplementary' ? 'basic' : grade);

function distanceSays({ short }: SpotBridge): string {
  if (short === null) return '';
  const length = short.length === null ? 'not measured' : `${measured(short.length)} ${lengthUnit()}`;
  return `; its ${short.metric} is ${length} where ${asked(short.required)} ${lengthUnit()} would do`;
}
