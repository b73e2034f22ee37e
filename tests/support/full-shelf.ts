import type { Page } from 'playwright-core';

/**
 * Puts copies of the lesson at hand on the device, with what is told of them beside it: so many, called `Week 1` and
 * on, for four students by turns.
 */
export const fillShelf = (page: Page, count: number): Promise<void> =>
  page.evaluate(
    (most) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('ground-bass');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction(['lessons', 'facts'], 'readwrite', {
            durability: 'relaxed',
          });
          const [lessons, facts] = [writing.objectStore('lessons'), writing.objectStore('facts')];
          const reading = lessons.getAll();
          reading.onsuccess = () => {
            const [lesson] = reading.result;
            const asking = facts.get(lesson.id);
            asking.onsuccess = () => {
              for (let index = 1; index <= most; index += 1) {
                const [id, title] = [`week-${index}`, `Week ${index}`];
                const student = ['Ada', 'Ben', 'Cleo', 'Dov'][index % 4];
                lessons.put({
                  ...lesson,
                  id,
                  title,
                  savedAt: index,
                  document: { ...lesson.document, id, title },
                });
                const told = { ...asking.result.facts, student };
                facts.put({ id, title, savedAt: index, usedAt: index, facts: told });
              }
            };
          };
          writing.onerror = () => reject(writing.error);
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    count,
  );
