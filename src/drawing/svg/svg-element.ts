// One element of SVG as text: attributes that are null are left out, numbers are cut to a hundredth, text is escaped.

import { escapeText } from '#words/text/escape-text.ts';

export type Attributes = Readonly<Record<string, string | number | null>>;

export function element(name: string, attributes: Attributes, content = ''): string {
  const text = Object.entries(attributes)
    .flatMap(([key, value]) => (value === null ? [] : [` ${key}="${attribute(value)}"`]))
    .join('');
  return content === '' ? `<${name}${text}/>` : `<${name}${text}>${content}</${name}>`;
}

const attribute = (value: string | number): string =>
  typeof value === 'number' ? px(value) : escapeText(value);

export const px = (value: number): string => String(Math.round(value * 100) / 100);
