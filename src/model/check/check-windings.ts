// Windings that make sense: their circuit exists, their wire has a size and a grade of its kind, their links have gaps.

import type { BadInput } from '#model/faults/bad-input.ts';
import { badField } from '#model/faults/bad-field.ts';
import { beyondMatter, oneOf, type Keys, type KnownIds } from './check-ids.ts';
import type { Design } from '#model/design.ts';
import type { Lead, Sleeve, Wire } from '#model/design/winding.ts';
import { linkGaps } from './link-gaps.ts';
import { isKnown, type Unknown } from '#model/quantity/reading.ts';
import { nm } from '#units/quantity.ts';

export function checkWindings(design: Design, known: KnownIds): readonly BadInput[] {
  const circuits = design.circuits.map(({ id }) => id);
  return design.windings.flatMap((winding, i) => {
    const keys: Keys = ['windings', i];
    const { leads, links } = winding;
    const gaps = linkGaps(design.layers, winding.id).length;
    return [
      ...oneOf([...keys, 'circuit'], winding.circuit, circuits, 'circuit'),
      ...checkWire([...keys, 'wire'], winding.wire),
      ...(typeof leads === 'object' && 'start' in leads
        ? (['start', 'finish'] as const).flatMap((end) =>
            checkLead([...keys, 'leads', end], leads[end], known),
          )
        : []),
      ...('kind' in links
        ? []
        : links.flatMap((link, j) => checkSleeve([...keys, 'links', j, 'sleeve'], link.sleeve, known))),
      ...(!('kind' in links) && links.length > gaps
        ? [
            badField(
              [...keys, 'links'],
              links,
              `at most one link per gap between the layers of this winding, of which there are ${gaps}`,
            ),
          ]
        : []),
    ];
  });
}

export const checkLead = (keys: Keys, lead: Lead | Unknown, known: KnownIds): readonly BadInput[] =>
  'kind' in lead ? [] : checkSleeve([...keys, 'sleeve'], lead.sleeve, known);

const checkSleeve = (keys: Keys, sleeve: Sleeve | null | Unknown, known: KnownIds): readonly BadInput[] =>
  sleeve === null || 'kind' in sleeve
    ? []
    : [
        ...oneOf([...keys, 'material'], sleeve.material, known.sleeves, 'sleeve'),
        ...beyondMatter(
          [...keys, 'withstand'],
          sleeve.withstand,
          isKnown(sleeve.wall) ? sleeve.wall.value : null,
        ),
      ];

function checkWire(keys: Keys, wire: Wire): readonly BadInput[] {
  const { kind, grade, conductor, overallDiameter } = wire;
  const faults: BadInput[] = [];
  if (conductor === null && overallDiameter === null)
    faults.push(badField([...keys, 'conductor'], undefined, 'a conductor diameter or an overall diameter'));
  if (conductor?.kind === 'known' && overallDiameter !== null) {
    const growth = nm(overallDiameter.value - conductor.value);
    const covered = kind === 'layer-insulated' || kind === 'fully-insulated';
    const found = millimetres(overallDiameter.value);
    if (growth < 0 || (covered && growth === 0)) {
      const least = covered
        ? 'more than the conductor, for its cover has a thickness'
        : 'no less than the conductor';
      faults.push(badField([...keys, 'overallDiameter'], found, least));
    } else faults.push(...beyondMatter([...keys, 'withstand'], wire.withstand, nm(Math.floor(growth / 2))));
  }
  const grades = gradesOf(kind);
  if (typeof grade === 'number' && (grade < grades.from || grade > grades.to))
    faults.push(
      badField(
        [...keys, 'grade'],
        grade,
        `a grade from ${grades.from} to ${grades.to} for this kind of wire`,
      ),
    );
  return faults;
}

const millimetres = (nm: number): string => `${nm / 1e6} mm`;

const gradesOf = (kind: Wire['kind']): { readonly from: number; readonly to: number } =>
  kind === 'fully-insulated'
    ? { from: 3, to: 9 }
    : typeof kind === 'string'
      ? { from: 1, to: 3 }
      : { from: 1, to: 9 };
