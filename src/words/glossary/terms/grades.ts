// Grades of insulation, and what a judgement says.

import { term, type Term } from './term.ts';

export const gradeTerms: readonly Term[] = [
  term(
    'functional-insulation',
    'functional insulation',
    'Insulation that a device needs to work, and that protects nobody.',
    ['basic-insulation', 'enamel'],
    { also: ['functional'] },
  ),
  term(
    'basic-insulation',
    'basic insulation',
    'One barrier against electric shock, which a single fault may break.',
    ['supplementary-insulation', 'double-insulation', 'functional-insulation'],
    { also: ['basic'] },
  ),
  term(
    'supplementary-insulation',
    'supplementary insulation',
    'A second, independent barrier that protects when basic insulation fails.',
    ['basic-insulation', 'double-insulation'],
    { also: ['supplementary'] },
  ),
  term(
    'double-insulation',
    'double insulation',
    'Basic and supplementary insulation one behind the other.',
    ['reinforced-insulation', 'basic-insulation', 'supplementary-insulation'],
    { also: ['double'] },
  ),
  term(
    'reinforced-insulation',
    'reinforced insulation',
    'One insulation that is worth as much as double insulation.',
    ['double-insulation', 'three-layer-wire'],
    { also: ['reinforced'] },
  ),
  term(
    'grade',
    'grade',
    'How much an insulation is worth: none, functional, basic, supplementary, double or reinforced.',
    ['basic-insulation', 'reinforced-insulation', 'weakest-path'],
    { also: ['grades', 'ladder of grades'] },
  ),
  term(
    'barrier',
    'barrier',
    'Whatever keeps two circuits apart: solids, distances and the parts that join them on purpose, taken together.',
    ['grade', 'pair', 'bridging-part'],
    { also: ['barriers'] },
  ),
  term(
    'rule-book',
    'rule book',
    'The standard, in one edition, that a build is held against.',
    ['grade', 'clause'],
    { also: ['standard', 'edition'] },
  ),
  term('clause', 'clause', 'The numbered place in a rule book where a rule stands.', ['rule-book']),
  term('meets', 'meets', 'What is asked is reached, with all that is unknown counted at its worst.', [
    'falls-short',
    'not-shown',
  ]),
  term(
    'falls-short',
    'falls short',
    'What is asked is not reached, even with all that is unknown counted at its best.',
    ['meets', 'not-shown', 'proven'],
  ),
  term('not-shown', 'not shown', 'Whether what is asked is reached depends on what nobody knows.', [
    'meets',
    'falls-short',
    'unknown',
  ]),
];
