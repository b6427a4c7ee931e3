// The report's style sheet: the same sheet on screen and on paper, A4 or Letter, with running feet where the printer's
// engine knows them.

import { LETTERING, READING, type Theme } from '#drawing/scene/palette.ts';
import type { HueKey } from '#words/design/circuit-look.ts';

export function style(theme: Theme, foot: { readonly left: string; readonly right: string }): string {
  const hues = Object.entries(theme.circuits).map(
    ([key, { ring }]) => `.circuit.${key as HueKey} { color: ${ring}; }`,
  );
  return `${BASE(theme)}\n${hues.join('\n')}\n${PAGE(theme, foot)}`;
}

const BASE = (theme: Theme): string => `
* { box-sizing: border-box; }
html { background: ${theme.desk}; color: ${theme.ink}; font: 12px/1.45 ${READING}; font-variant-numeric: tabular-nums; }
body { max-width: 760px; margin: 24px auto; padding: 48px; background: #fff; border: 1px solid ${theme.hair}; overflow-wrap: break-word; }
header h1, p, li, figcaption { overflow-wrap: anywhere; min-width: 0; }
header { display: flex; gap: 10px; border-bottom: 1.5px solid ${theme.ink}; padding-bottom: 7px; margin-bottom: 14px; }
header h1, h2, .verdict { font-family: ${LETTERING}; }
h2 { font-size: 13px; margin: 24px 0 7px; break-after: avoid; }
header h1 { font-size: 12px; margin: 0; }
h3 { font-size: 12px; margin: 12px 0 4px; break-after: avoid; }
h2.answer { font-size: 21px; line-height: 1.2; margin: 14px 0 7px; }
p.scope { color: ${theme.second}; }
p { margin: 0 0 7px; orphans: 2; widows: 2; }
p.inset { padding-left: 14px; margin-bottom: 2px; color: ${theme.second}; }
p.headline { font-size: 15px; }
p.note, figcaption, .small, .path { color: ${theme.second}; font-size: 0.95em; }
figure { margin: 0; break-inside: avoid; }
@media screen and (min-width: 1000px) { .beside { display: grid; grid-template-columns: 1fr 1fr; gap: 48px; } }
@media screen { .exercise { padding-top: 24px; } }
@media print { .exercise + .exercise { break-before: page; } header:has(+ main .exercise) { display: none; } }
ol.questions { padding-left: 20px; list-style: lower-alpha; }
ol.questions > li { padding: 4px 0; border-bottom: 1px solid ${theme.hair}; }
ol.questions > li::marker { font-weight: 700; }
li.asked { padding-bottom: 12px !important; }
.points { float: right; min-width: 22px; margin-left: 12px; border: 1px solid ${theme.ink}; text-align: center; }
.whole { break-inside: avoid; }
.own-page { break-before: page; break-after: page; }
.annex { break-before: page; margin: 32px 0 0; padding-top: 7px; border-top: 2px solid ${theme.ink}; font-size: 15px; font-weight: 700; }
.own-page svg { width: 100%; height: auto; }
.own-page h2 { margin-top: 10px; margin-bottom: 3px; }
.own-page td, .own-page th { padding-top: 1.5px; padding-bottom: 1.5px; line-height: 1.3; }
.own-page p.note { margin-bottom: 2px; }
.wide-field > svg { max-height: 238px; }
.gap-row { display: grid; grid-template-columns: 2fr 3fr; gap: 24px; margin-top: 10px; }
.gap-row > section > h2 { margin-top: 0; }
figure > svg { width: 100%; height: auto; display: block; }
figure.given > svg { max-width: 560px; margin: 0 auto; }
figcaption { margin-top: 4px; }
table { width: 100%; border-collapse: collapse; }
th { text-align: left; font-weight: 400; color: ${theme.second}; border-bottom: 1.5px solid ${theme.ink}; padding: 4px 10px 4px 0; vertical-align: bottom; }
td { border-bottom: 1px solid ${theme.hair}; padding: 5px 10px 5px 0; vertical-align: top; }
td.tight, th.tight { white-space: nowrap; }
th:last-child, td:last-child { padding-right: 0; }
table.steps { table-layout: fixed; }
table.steps td:nth-child(1) { width: 13%; }
table.steps td:nth-child(3) { width: 22%; }
table.steps td:nth-child(4) { width: 17%; }
p.step { margin: 10px 0 2px; font-weight: 700; break-after: avoid; }
td.figure, th.figure { text-align: right; white-space: nowrap; }
tr { break-inside: avoid; }
thead td { border-bottom: 1.5px solid ${theme.ink}; }
thead { display: table-header-group; }
.pencil { color: ${theme.pencil}; }
.verdict { font-weight: 700; white-space: nowrap; }
.grade, .known, .circuit { white-space: nowrap; }
.known { color: ${theme.second}; font-size: 0.95em; }
.known.memory span { border-bottom: 1px dotted; }
.known .sign { margin-right: 3px; }
.sign { vertical-align: -1.5px; }
span.path { display: block; font-size: 0.95em; }
.to { color: ${theme.second}; }
.result td { font-weight: 700; }
.spots { display: grid; grid-template-columns: repeat(3, 1fr); gap: 14px; }
.spots.few { grid-template-columns: repeat(2, 1fr); }
.spots figure > svg { border: 1px solid ${theme.ink}; }
figure.two figcaption { grid-column: 1 / -1; margin-top: -18px; }
.two svg { width: 100%; height: auto; display: block; }
.two { display: grid; grid-template-columns: 1fr 1fr; gap: 24px; align-items: start; }
.box { margin-top: 24px; border: 1px solid ${theme.ink}; padding: 7px 14px; break-inside: avoid; }
.box h2 { margin-top: 4px; }
ol, ul { margin: 0; padding-left: 18px; }
section.step { break-inside: avoid; border-top: 1px solid ${theme.hair}; }
section.step h2 { margin-top: 10px; }
section.step p { margin-bottom: 3px; }
.measures { display: flex; flex-wrap: wrap; gap: 0 24px; }
.measure { display: flex; align-items: flex-end; gap: 8px; color: ${theme.second}; }
.tick { width: 11px; height: 11px; border: 1.2px solid ${theme.ink}; flex: none; align-self: center; }
.blank { flex: 0 0 70px; min-width: 60px; border-bottom: 1px solid ${theme.line}; height: 1.2em; }
body.wide { max-width: 1240px; }
th button { all: unset; cursor: pointer; }
th button:focus-visible { outline: 2px solid ${theme.ink}; outline-offset: 2px; }
th[aria-sort=ascending] button::after { content: ' ↑'; }
th[aria-sort=descending] button::after { content: ' ↓'; }
a { color: inherit; }
footer { margin-top: 24px; border-top: 1px solid ${theme.hair}; padding-top: 7px; color: ${theme.second}; font-size: 11px; display: flex; justify-content: space-between; gap: 24px; }
@media screen and (max-width: 620px) {
  body { padding: 14px; margin: 0; }
  header { flex-wrap: wrap; }
  .spots, .spots.few, .two, .gap-row { grid-template-columns: minmax(0, 1fr); }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  tr { display: block; border-bottom: 1px solid ${theme.hair}; padding: 5px 0; }
  tbody td { display: block; position: relative; border: 0; padding: 1px 0; }
  td:empty { display: none; }
  td[data-head] { padding-left: 8.6em; }
  td[data-head]::before { content: attr(data-head); position: absolute; left: 0; color: ${theme.second}; }
  td.tight, td.figure { white-space: normal; text-align: left; }
  .steps tr { display: flex; flex-wrap: wrap; gap: 0 10px; }
  table.steps td:nth-child(n) { width: auto; }
  .steps td:nth-child(1) { flex: 0 0 6em; color: ${theme.second}; }
  .steps td:nth-child(2) { flex: 1 1 9em; }
  .steps td:nth-child(3) { margin-left: auto; }
}`;

const PAGE = (theme: Theme, foot: { readonly left: string; readonly right: string }): string => `
@page {
  margin: 16mm 15mm 18mm;
  @bottom-left { content: ${cssText(foot.left)}; font: 10.7px ${READING}; color: ${theme.second}; }
  @top-right { content: counter(page) " of " counter(pages); font: 10.7px ${READING}; color: ${theme.ink}; }
  @bottom-right { content: ${cssText(foot.right)}; font: 10.7px ${READING}; color: ${theme.second}; }
}
@media print {
  html { background: none; font-size: 11.4px; }
  html:has(.exercise) { font-size: 11.3px; }
  body { max-width: none; margin: 0; padding: 0; border: 0; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  td { padding: 2.5px 8px 2.5px 0; }
  table.steps td { padding: 1.5px 8px 1.5px 0; }
  .screen { display: none; }
}`;

/** A text in a style sheet: nothing in it may end the string or the element round it. */
const cssText = (text: string): string =>
  `"${[...text].map((sign) => (/[\w .,:;()-]/.test(sign) ? sign : `\\${sign.codePointAt(0)?.toString(16)} `)).join('')}"`;
