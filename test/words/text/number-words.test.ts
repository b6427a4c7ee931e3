import { describe, expect, it } from 'vitest';
import {
  dimension,
  frequency,
  kilovoltsUp,
  lengthDown,
  lengthUp,
  plies,
  volts,
} from '#words/text/number-words.ts';

describe('number words', () => {
  it('should round what was measured down and what is asked up', () => {
    expect(lengthDown(4.8399)).toBe('4.83');
    expect(lengthUp(4.8301)).toBe('4.84');
  });

  it('should not be moved a step by binary fractions', () => {
    expect(lengthDown(4.83)).toBe('4.83');
    expect(lengthDown(0.29)).toBe('0.29');
    expect(lengthUp(5.6)).toBe('5.6');
    expect(lengthUp(0.07)).toBe('0.07');
  });

  it('should show the digits a dimension has', () => {
    expect([dimension(3), dimension(1.65), dimension(0.0254)]).toEqual(['3.00', '1.65', '0.0254']);
  });

  it('should write voltages and frequencies with their prefix', () => {
    expect([volts(272.4), volts(5.25), kilovoltsUp(4000), kilovoltsUp(2828.4)]).toEqual([
      '272 V',
      '5.25 V',
      '4.0 kV',
      '2.83 kV',
    ]);
    expect([frequency(50), frequency(65_000), frequency(1_200_000)]).toEqual(['50 Hz', '65 kHz', '1.2 MHz']);
  });

  it('should count plies in words', () => {
    expect([plies(0), plies(1), plies(3)]).toEqual(['no ply', 'one ply', '3 plies']);
  });
});
