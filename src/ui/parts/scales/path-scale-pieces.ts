// Lays a length out as a staff of whole millimetres for the bar beside a figure; very long ones are cut at twice what is asked.

export interface StaffPieces {
  readonly width: number;
  readonly pieces: readonly { readonly from: number; readonly to: number; readonly filled: boolean }[];
  readonly missing: { readonly from: number; readonly to: number } | null;
  readonly asked: number | null;
  readonly end: number;
  readonly cut: boolean;
}

const WIDEST = 176;
const WIDEST_PIECE = 30;

/** Millimetres in, drawing units out. */
export function staffPieces(length: number, required: number | null): StaffPieces {
  const shown = required === null ? Math.min(length, 12) : Math.min(length, Math.max(required * 2, 1));
  const longest = Math.max(shown, required ?? 0, 0.01);
  const scale = Math.min(WIDEST / longest, WIDEST_PIECE);
  const pieces = Array.from({ length: Math.ceil(shown) }, (_, i) => ({
    from: i * scale,
    to: Math.min(i + 1, shown) * scale,
    filled: i % 2 === 0,
  }));
  const asked = required === null ? null : required * scale;
  const end = shown * scale;
  return {
    width: Math.max(end, asked ?? 0) + 2,
    pieces,
    missing: asked !== null && asked > end ? { from: end, to: asked } : null,
    asked,
    end,
    cut: shown < length,
  };
}
