// What is said of the thread that judges, where all is not as usual with it.

import type { Editor } from '#state/document/editor.svelte.ts';

export const LOST_WORDS = {
  silent: 'The thread that judges gave no sign for too long and was ended',
  crashed: 'The thread that judges ended, perhaps for want of memory',
} as const;

export function threadNotes({
  isAlone,
  restarted,
}: Pick<Editor, 'isAlone' | 'restarted'>): readonly string[] {
  return [
    ...(restarted === null ? [] : [`${LOST_WORDS[restarted]}; another was started.`]),
    ...(isAlone
      ? [
          'This browser gives the page no thread to judge in: it judges on the page, which stands still meanwhile.',
        ]
      : []),
  ];
}
