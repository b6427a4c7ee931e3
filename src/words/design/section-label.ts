// The name of a section as the page says it: `lead P start left, slumped left` is a lead at the left, slumped to the left.

export const sectionLabel = (name: string): string =>
  name
    .replaceAll(/\b(lead [^,]+?) (left|right)(?=,| and |$)/g, '$1 at the $2')
    .replaceAll(/\bslumped (left|right)\b/g, 'slumped to the $1');
