// A whole build inside a link's fragment. Nothing is sent anywhere; what comes in passes the same reading as a file.

import type { DesignFile } from '#model/schema/schema.ts';
import { openable, type Openable } from './import-design.ts';
import { packedText, unpackedText } from './packed-text.ts';

export const SHARE_PREFIX = 'build=';

export const shareFragment = async (doc: DesignFile): Promise<string> =>
  SHARE_PREFIX + (await packedText(JSON.stringify(doc)));

/** `fragment` without its leading `#`. */
export async function readFragment(fragment: string): Promise<Openable> {
  const found = await unpackedText(fragment.slice(SHARE_PREFIX.length));
  return found.kind === 'text' ? openable(found.text) : { kind: 'refused', says: found.says };
}
