// Text from a design file made harmless inside HTML and XML, whether as content or in a quoted attribute.
// Signs that XML refuses and marks that turn the reading direction round are left out.

export const escapeText = (text: string): string =>
  text
    .replace(REFUSED, '')
    .replace(LONE_SURROGATE, '')
    .replace(/[&<>"']/g, (sign) => ENTITY[sign] ?? '');

/* eslint-disable no-control-regex -- these very signs are to be found */
const REFUSED =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g;
/* eslint-enable no-control-regex */
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const ENTITY: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
