import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { version as running } from '../../package.json';
import { NEWS_FILE, newsSince, readNews } from '../../src/app/offline';

const text = readFileSync(new URL(`../../public/${NEWS_FILE}`, import.meta.url), 'utf8');
const news = readNews(text);

describe('the news of this version', () => {
  test('stand at the head of the file, the older ones below', () => {
    expect(news[0]?.version).toBe(running);
    const versions = news.map(({ version }) => version);
    expect(versions.slice(1).every((version) => newsSince(version, news).length > 0)).toBe(true);
    expect(news.flatMap(({ version }, at) => newsSince(version, news).length - at)).toEqual(
      versions.map(() => 0),
    );
  });

  test('are all read', () => expect(news).toEqual(JSON.parse(text)));

  test('are sentences', () => {
    for (const line of news.flatMap((each) => each.news)) expect(line).toMatch(/^[A-Z“*].{10,200}[.!]$/);
  });
});

describe("another version's file", () => {
  test('gives only what is later than the version that runs', () => {
    const all = ['0.10.0', '0.9.1', '0.9.0'].map((version) => ({ version, news: ['Something is new.'] }));
    expect(newsSince('0.9.0', all).map(({ version }) => version)).toEqual(['0.10.0', '0.9.1']);
    expect(newsSince('0.10.0', all)).toEqual([]);
  });

  test('is passed over where it is not understood', () => {
    expect(readNews('<!doctype html>')).toEqual([]);
    expect(readNews('{"version":"1.0.0"}')).toEqual([]);
    const odd = [
      null,
      'x',
      { version: 2, news: ['x'] },
      { version: '2.0.0' },
      { version: '2.0.0', news: [] },
    ];
    expect(readNews(JSON.stringify([...odd, { version: '1.0.0', news: ['Kept.', 7], more: 1 }]))).toEqual([
      { version: '1.0.0', news: ['Kept.'] },
    ]);
  });
});
