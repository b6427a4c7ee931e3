// The buffers of whoever looks for paths: one search is over before its next begins, so each of its kind is made once and
// used again. Two finders share nothing, and may search in turns.

import { LabelHeap } from './label-heap.ts';
import { LowerBounds } from './least-length.ts';
import { EdgeList } from '#solver/network/network.ts';
import { LineBuffer } from '#solver/network/sight-line.ts';

export class PathFinder {
  readonly edges = new EdgeList();
  readonly heap = new LabelHeap();
  readonly bounds = new LowerBounds();
  readonly line = new LineBuffer();
}
