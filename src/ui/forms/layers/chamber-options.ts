// The chambers of a former as answers of a field; the file counts them from 0, the page from 1.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Option } from '#state/fields/field-options.ts';

export const chamberOptions = (doc: DesignFile): readonly Option[] =>
  (doc.former.chambers ?? []).map((_, i) => ({ value: String(i), label: String(i + 1) }));
