import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const place = fileURLToPath(new URL('../../public/manifest.webmanifest', import.meta.url));
const manifest = JSON.parse(readFileSync(place, 'utf8'));

/**
 * Members by the W3C's Web Application Manifest and Manifest: Application Information (categories, description,
 * screenshots), and the WICG's Manifest Incubations (file_handlers), Web App Launch Handler and Web Share Target.
 * The lists are from memory.
 */
const MEMBERS = [
  ...['name', 'short_name', 'lang', 'dir', 'id', 'start_url', 'scope', 'display', 'orientation'],
  ...['theme_color', 'background_color', 'icons', 'shortcuts', 'related_applications'],
  ...['description', 'categories', 'screenshots', 'file_handlers', 'launch_handler', 'share_target'],
];

test('the manifest has members that a specification has, with the values that it has for them', () => {
  expect(Object.keys(manifest).filter((member) => !MEMBERS.includes(member))).toEqual([]);
  expect(['fullscreen', 'standalone', 'minimal-ui', 'browser']).toContain(manifest.display);
  for (const shortcut of manifest.shortcuts)
    expect(Object.keys(shortcut)).toEqual(['name', 'short_name', 'url']);
  for (const { form_factor, label, sizes } of manifest.screenshots) {
    expect(['narrow', 'wide']).toContain(form_factor);
    expect(label).toMatch(/\w/);
    expect(sizes).toMatch(/^\d+x\d+$/);
  }
  expect(manifest.share_target).toMatchObject({ method: 'POST', enctype: 'multipart/form-data' });
  expect(Object.keys(manifest.share_target.params).sort()).toEqual(['files', 'text', 'title', 'url']);
});

test('all its addresses lie within its scope, so that the app works from any folder', () => {
  const base = 'https://host.example/some/where/manifest.webmanifest';
  const scope = new URL(manifest.scope, base).href;
  const addresses: string[] = [
    manifest.id,
    manifest.start_url,
    manifest.share_target.action,
    ...manifest.file_handlers.map(({ action }: { action: string }) => action),
    ...manifest.shortcuts.map(({ url }: { url: string }) => url),
    ...[...manifest.icons, ...manifest.screenshots].map(({ src }: { src: string }) => src),
  ];
  for (const address of addresses) {
    expect(address).not.toMatch(/^\//);
    expect(new URL(address, base).href.startsWith(scope)).toBe(true);
  }
});

test('every launch is led to its own address: a share and a shortcut would be lost in a window that is only focused', () => {
  expect(manifest.launch_handler.client_mode).toBe('navigate-new');
});

test('what is opened from a folder can be shared as well, by its type and by its ending', () => {
  const shared: string[] = manifest.share_target.params.files.flatMap(
    ({ accept }: { accept: string[] }) => accept,
  );
  for (const { accept } of manifest.file_handlers)
    for (const [type, endings] of Object.entries<string[]>(accept)) {
      expect(type).toMatch(/^[a-z]+\/[\w.+-]+$/);
      for (const ending of endings) expect(ending).toMatch(/^\.\w+$/);
      expect(shared).toEqual(expect.arrayContaining([type, ...endings]));
    }
});
