/** Students, classes and versions as a teacher makes them on the page. */
import type { Locator, Page } from 'playwright-core';

const button = (page: Page | Locator, name: string): Locator =>
  page.getByRole('button', { name, exact: true });

export async function openStudents(page: Page): Promise<Locator> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^Students/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Students' });
  await dialog.waitFor();
  return dialog;
}

/** Adds students or classes by their names. */
export async function addAll(
  dialog: Locator,
  names: readonly string[],
  what: 'student' | 'class' = 'student',
): Promise<void> {
  for (const name of names) {
    await dialog.getByRole('textbox', { name: `Name of a new ${what}` }).fill(name);
    await button(dialog, `Add the ${what}`).press('Enter');
    await dialog.getByText(`${name} is kept on this device.`).waitFor();
  }
}

export async function addVersion(page: Page, name: string): Promise<void> {
  const first = button(page, 'Make a version');
  await first.or(button(page, 'Versions')).waitFor();
  if (await first.isVisible()) await first.click();
  else {
    await button(page, 'Versions').click();
    await page.getByRole('menuitem', { name: /^New version/ }).click();
  }
  await page.getByRole('textbox', { name: 'Name of the version' }).fill(name);
  await page.keyboard.press('Enter');
}

/** A class of students, in their order, who are given the open lesson: each what is proposed. */
export async function giveToClass(page: Page, group: string, names: readonly string[]): Promise<void> {
  const dialog = await openStudents(page);
  await addAll(dialog, names);
  await addAll(dialog, [group], 'class');
  for (const name of names)
    await dialog.getByRole('checkbox', { name: `${name} in this class` }).press('Space');
  await button(dialog, 'Give the open lesson to the class').click();
  await dialog.getByText(new RegExp(`is noted as given to ${names.length} students`)).waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
}
