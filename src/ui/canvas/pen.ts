// The canvas context with the picture's transform: millimetres in, lines on whole screen pixels out.

import type { Picture } from './picture.ts';
import { toScreenX, toScreenY } from './view.ts';

export type Ink = CanvasRenderingContext2D;

export interface Pen {
  readonly ink: Ink;
  readonly picture: Picture;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  /** To the nearest edge between screen pixels. */
  readonly crispX: (mm: number) => number;
  readonly crispY: (mm: number) => number;
}

export function penOf(ink: Ink, picture: Picture): Pen {
  const { view, density } = picture;
  const x = (mm: number): number => toScreenX(view, mm);
  const y = (mm: number): number => toScreenY(view, mm);
  const crisp = (pixels: number): number => Math.round(pixels * density) / density;
  return { ink, picture, x, y, crispX: (mm) => crisp(x(mm)), crispY: (mm) => crisp(y(mm)) };
}

export interface Stroke {
  readonly color: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

export function stroke(ink: Ink, { color, width, dash = [] }: Stroke): void {
  ink.strokeStyle = color;
  ink.lineWidth = width;
  ink.setLineDash([...dash]);
  ink.stroke();
}

export function line(ink: Ink, x0: number, y0: number, x1: number, y1: number, look: Stroke): void {
  ink.beginPath();
  ink.moveTo(x0, y0);
  ink.lineTo(x1, y1);
  stroke(ink, look);
}

export interface Lettering {
  readonly size: number;
  readonly color: string;
  readonly bold?: boolean;
  readonly align?: CanvasTextAlign;
  readonly family: string;
}

/** `y` is the middle of the line. */
export function letter(ink: Ink, x: number, y: number, words: string, look: Lettering): void {
  ink.font = `${look.bold ? 700 : 400} ${look.size}px ${look.family}`;
  ink.textAlign = look.align ?? 'center';
  ink.textBaseline = 'middle';
  ink.fillStyle = look.color;
  ink.fillText(words, x, y + look.size * 0.06);
}

export interface Chip {
  readonly fill: string;
  readonly rim: string;
  readonly color: string;
  readonly size: number;
  readonly family: string;
}

export const chipWidth = (ink: Ink, words: string, { size, family }: Chip): number => {
  ink.font = `700 ${size}px ${family}`;
  return ink.measureText(words).width + size;
};

/** A label in a box with its middle at x, y. */
export function chip(ink: Ink, x: number, y: number, words: string, look: Chip): void {
  const width = chipWidth(ink, words, look);
  const height = look.size * 1.65;
  ink.beginPath();
  ink.roundRect(x - width / 2, y - height / 2, width, height, 2.5);
  ink.fillStyle = look.fill;
  ink.fill();
  stroke(ink, { color: look.rim, width: 1.3 });
  letter(ink, x, y, words, { size: look.size, color: look.color, bold: true, family: look.family });
}
