// Ties what the pointer, wheel and fingers do beside the grips to the hand and the viewport. One finger scrolls the page until it
// meets a grip or the drawing is zoomed in; two fingers, and the wheel while it changes anything, belong to the drawing.

import type { Hand } from '#ui/canvas/grips/pointer-tool.svelte.ts';
import type { Viewport } from '#ui/canvas/viewport/viewport.svelte.ts';

/** A turn of the wheel by one notch is about a hundred pixels. */
const WHEEL = 0.0016;
/** A page that was scrolling a moment ago goes on scrolling. */
const SCROLLS_MS = 250;

export const pointing =
  (hand: Hand, viewport: Viewport) =>
  (stage: HTMLElement): (() => void) => {
    const pointers = new Pointing(hand, viewport, stage);
    const stop = new AbortController();
    pointers.listen(stop.signal);
    return () => stop.abort();
  };

class Pointing {
  #scrolledAt = -Infinity;
  readonly #hand: Hand;
  readonly #viewport: Viewport;
  readonly #stage: HTMLElement;

  constructor(hand: Hand, viewport: Viewport, stage: HTMLElement) {
    this.#hand = hand;
    this.#viewport = viewport;
    this.#stage = stage;
  }

  listen(signal: AbortSignal): void {
    const [stage, hand] = [this.#stage, this.#hand];
    const options = { signal };
    stage.addEventListener('pointerdown', (event) => this.#down(event), options);
    // the menu speaks of the layer under the pointer
    stage.addEventListener('contextmenu', (event) => hand.pickAt(this.#place(event)), options);
    stage.addEventListener('dblclick', (event) => this.#open(event), options);
    stage.addEventListener('mousedown', (event) => this.#keepFocus(event), options);
    stage.addEventListener('pointermove', (event) => hand.move(this.#spot(event)), options);
    stage.addEventListener('pointerup', (event) => hand.up(this.#spot(event)), options);
    stage.addEventListener('pointercancel', (event) => hand.lost(event.pointerId), options);
    stage.addEventListener('pointerleave', () => (hand.surface = null), options);
    stage.addEventListener('wheel', (event) => this.#wheel(event), { signal, passive: false });
    stage.addEventListener('touchstart', twoFingers, { signal, passive: false });
    const scrolled = (event: Event): unknown => (this.#scrolledAt = event.timeStamp);
    addEventListener('scroll', scrolled, { signal, passive: true });
    addEventListener('keydown', (event) => this.#putBack(event), { signal, capture: true });
  }

  #place({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Place {
    const { left, top } = this.#stage.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  }

  #spot(event: PointerEvent) {
    const { pointerId, pointerType, shiftKey, altKey, ctrlKey, metaKey } = event;
    return { pointerId, pointerType, shiftKey, altKey, ctrlKey, metaKey, ...this.#place(event) };
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0 || isControl(event.target)) return;
    this.#stage.setPointerCapture(event.pointerId);
    this.#hand.down(this.#spot(event));
  }

  #open(event: MouseEvent): void {
    if (!isControl(event.target)) this.#hand.openAt(this.#place(event));
  }

  /** Else the stage would take the keyboard from the grip that was just given it. */
  #keepFocus(event: MouseEvent): void {
    if (this.#hand.drag !== null) event.preventDefault();
  }

  #wheel(event: WheelEvent): void {
    const isMeant = event.ctrlKey || event.metaKey || event.timeStamp - this.#scrolledAt > SCROLLS_MS;
    if (!isMeant) return;
    const { x, y } = this.#place(event);
    const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 40 : event.deltaY;
    const changes = event.shiftKey
      ? (this.#viewport.pan(-pixels, 0), true)
      : this.#viewport.zoom(Math.exp(-pixels * (event.ctrlKey ? 4 : 1) * WHEEL), x, y);
    if (changes || event.ctrlKey) event.preventDefault();
  }

  #putBack(event: KeyboardEvent): void {
    const { drag, carried, stroke } = this.#hand;
    if (event.key !== 'Escape' || (drag === null && carried === null && stroke === null)) return;
    this.#hand.putBack();
    event.preventDefault();
  }
}

interface Place {
  readonly x: number;
  readonly y: number;
}

function twoFingers(event: TouchEvent): void {
  if (event.touches.length > 1) event.preventDefault();
}

/** Flags and the typed figure answer for themselves. */
const isControl = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('button, label, [role="dialog"]') !== null;
