import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { writeZip } from '../../src/app/pages/saving/zip';

const now = new Date(2026, 10, 29, 21, 7, 30);

test('whatever is put into a ZIP comes out of it, by another reader', async () => {
  const content = fc.oneof(fc.string({ unit: 'grapheme' }), fc.uint8Array({ maxLength: 300 }));
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.tuple(fc.stringMatching(/^[\p{L}\d]{1,9}(\/[\p{L}\d.]{1,9})?$/u), content), {
        selector: ([path]) => path,
        maxLength: 6,
      }),
      async (entries) => {
        const files = entries.map(([path, inside]) => ({
          path,
          content: typeof inside === 'string' ? inside : new Uint8Array(inside),
        }));
        const read = unzipSync(await writeZip(files, now));
        const wanted = files.map(({ path, content: inside }) => [
          path,
          typeof inside === 'string' ? new TextEncoder().encode(inside) : inside,
        ]);
        expect(new Map(Object.entries(read))).toEqual(new Map(wanted as [string, Uint8Array][]));
      },
    ),
    { seed: 5, numRuns: 60 },
  );
});

test('a ZIP has the checksums and the day that the published ones have', async () => {
  const zip = Buffer.from(await writeZip([{ path: 'check', content: '123456789' }], now));
  // "123456789" has the CRC-32 cbf43926 (the check value of CRC-32/ISO-HDLC in Koopman's and Cook's catalogues).
  expect(zip.readUInt32LE(14)).toBe(0xcbf43926);
  const [time, date] = [zip.readUInt16LE(10), zip.readUInt16LE(12)];
  expect([(date >> 9) + 1980, (date >> 5) & 15, date & 31]).toEqual([2026, 11, 29]);
  expect([time >> 11, (time >> 5) & 63, (time & 31) * 2]).toEqual([21, 7, 30]);
});
