import { describe, expect, test } from 'vitest';
import { saidOfLink } from '../../src/app/pages/saving/link';

describe('what is said of a copied link', () => {
  test('how long it is, and that it fits into a message', () => {
    const { sentence, instead } = saidOfLink(1840, 'lesson', true);
    expect(sentence).toMatch(/copied\..* 1,840 characters long, which fits/);
    expect(instead).toBeNull();
  });

  test('the file instead where messengers would cut it', () => {
    const { sentence, instead } = saidOfLink(4100, 'practice page', true);
    expect(sentence).toContain('4,100 characters');
    expect(instead).toBe('practice page');
  });

  test('the file instead where nothing can be copied', () => {
    expect(saidOfLink(900, 'lesson', false)).toEqual({
      sentence: expect.stringContaining('does not let the page copy'),
      instead: 'lesson',
    });
  });
});
