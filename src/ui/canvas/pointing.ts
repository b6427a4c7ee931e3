// Ties what the pointer, wheel and fingers do beside the grips to the hand and the sight. One finger scrolls the page until it
// meets a grip or the drawing is zoomed in; two fingers, and the wheel while it changes anything, belong to the drawing.

import type { Hand } from '#ui/canvas/grips/pointer-tool.svelte.ts';
import type { Viewport } from '#ui/canvas/viewport/viewport.svelte.ts';

/** A turn of the wheel by one notch is about a hundred pixels. */
const WHEEL = 0.0016;
/** A page that was scrolling a moment ago goes on scrolling. */
const SCROLLS_MS = 250;

export const pointing =
  (hand: Hand, sight: Viewport) =>
  (stage: HTMLElement): (() => void) => {
    let scrolledAt = -Infinity;
    const place = (event: {
      readonly clientX: number;
      readonly clientY: number;
    }): { x: number; y: number } => {
      const { left, top } = stage.getBoundingClientRect();
      return { x: event.clientX - left, y: event.clientY - top };
    };
    const spot = (event: PointerEvent) => ({
      pointerId: event.pointerId,
      pointerType: event.pointerType,
      shiftKey: event.shiftKey,
      altKey: event.altKey,
      ctrlKey: event.ctrlKey,
      metaKey: event.metaKey,
      ...place(event),
    });
    const onwheel = (event: WheelEvent): void => {
      const isMeant = event.ctrlKey || event.metaKey || event.timeStamp - scrolledAt > SCROLLS_MS;
      if (!isMeant) return;
      const { x, y } = place(event);
      const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 40 : event.deltaY;
      const changes = event.shiftKey
        ? (sight.pan(-pixels, 0), true)
        : sight.zoom(Math.exp(-pixels * (event.ctrlKey ? 4 : 1) * WHEEL), x, y);
      if (changes || event.ctrlKey) event.preventDefault();
    };
    // the menu speaks of the layer under the pointer
    const oncontextmenu = (event: MouseEvent): void => hand.pickAt(place(event));
    const ondblclick = (event: MouseEvent): void => {
      if (!isControl(event.target)) hand.openAt(place(event));
    };
    const onpointerdown = (event: PointerEvent): void => {
      if (event.button !== 0 || isControl(event.target)) return;
      stage.setPointerCapture(event.pointerId);
      hand.down(spot(event));
    };
    // else the stage would take the keyboard from the grip that was just given it
    const onmousedown = (event: MouseEvent): void => {
      if (hand.drag !== null) event.preventDefault();
    };
    const ontouchstart = (event: TouchEvent): void => {
      if (event.touches.length > 1) event.preventDefault();
    };
    const onkeydown = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && (hand.drag !== null || hand.carried !== null || hand.stroke !== null)) {
        hand.putBack();
        event.preventDefault();
      }
    };
    const stop = new AbortController();
    const { signal } = stop;
    stage.addEventListener('pointerdown', onpointerdown, { signal });
    stage.addEventListener('contextmenu', oncontextmenu, { signal });
    stage.addEventListener('dblclick', ondblclick, { signal });
    stage.addEventListener('mousedown', onmousedown, { signal });
    stage.addEventListener('pointermove', (event) => hand.move(spot(event)), { signal });
    stage.addEventListener('pointerup', (event) => hand.up(spot(event)), { signal });
    stage.addEventListener('pointercancel', (event) => hand.lost(event.pointerId), { signal });
    stage.addEventListener('pointerleave', () => (hand.surface = null), { signal });
    stage.addEventListener('wheel', onwheel, { signal, passive: false });
    stage.addEventListener('touchstart', ontouchstart, { signal, passive: false });
    addEventListener('scroll', (event) => (scrolledAt = event.timeStamp), { signal, passive: true });
    addEventListener('keydown', onkeydown, { signal, capture: true });
    return () => stop.abort();
  };

/** Flags and the typed figure answer for themselves. */
const isControl = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('button, label, [role="dialog"]') !== null;
