import { barTicks, type DynamicSign, ticks } from '../../base';
import type { LineSheet } from '../../lesson';
import { type Element, element, tag } from './xml';

const direction = (offset: number, ...types: Element[]): Element =>
  element(
    'direction',
    { placement: 'below' },
    types.map((type) => tag('direction-type', type)),
    offset === 0 ? null : tag('offset', offset),
  );

const wedge = (type: 'crescendo' | 'diminuendo' | 'stop'): Element => element('wedge', { type, number: 1 });

/** The dynamics and hairpins of a line, bar by bar; a hairpin stops at the next sign, or at the line's end. */
export function dynamicsByBar({
  bars,
}: LineSheet): readonly (readonly (DynamicSign & { readonly stops: boolean })[])[] {
  let open = false;
  return bars.map(({ dynamics = [], written }, bar) => {
    const signs = dynamics.map((sign) => {
      const stops = open;
      open = sign.hairpin !== undefined;
      return { ...sign, stops };
    });
    const end = barTicks(written.metre);
    if (!open || bar < bars.length - 1 || signs.at(-1)?.at === end) return signs;
    return [...signs, { at: ticks(end), stops: true }];
  });
}

/** A sign as directions: what stops, what holds from here, what begins. */
export const dynamicElements = (
  { level, hairpin, stops }: DynamicSign & { readonly stops: boolean },
  offset: number,
): readonly Element[] => [
  ...(stops ? [direction(offset, wedge('stop'))] : []),
  ...(level === undefined ? [] : [direction(offset, tag('dynamics', tag(level)))]),
  ...(hairpin === undefined ? [] : [direction(offset, wedge(hairpin))]),
];
