import { join } from 'node:path';
import { type BuildOptions, build, type ConfigEnv, type Plugin, type Rolldown, type UserConfig } from 'vite';
import { lightChordSymbol } from './chord-symbol.ts';

const PROJECT = join(import.meta.dirname, '..');

/** Settings of every build, of the app and of what is built beside it. */
export const buildOptions = {
  target: 'es2022',
  assetsInlineLimit: 0,
  chunkSizeWarningLimit: 2000,
  rolldownOptions: {
    checks: { pluginTimings: false },
    output: {
      codeSplitting: {
        groups: [
          // The app with all that it imports at once is one file: in seventy small ones it is a twelfth larger, compressed.
          { name: 'first', test: /src\/app\/index\.tsx$/, priority: 1 },
          // So is what a lesson of this device waits for, and what is fetched beside that.
          {
            name: 'behind',
            test: /src\/(app\/storage\/behind|app\/state\/past-keeper|core\/lesson\/checking)\.ts$/,
          },
        ],
      },
    },
  },
} satisfies BuildOptions;

/** The app itself, and not another page that is built with these settings. */
export const isApp = ({ root }: UserConfig, { command }: ConfigEnv): boolean =>
  command === 'build' && root === undefined;

interface BuiltAlone {
  readonly script: string;
  /** Empty where the script brings no style. */
  readonly style: string;
  /** The modules of which anything has gone into the script. */
  readonly moduleIds: readonly string[];
}

/** Builds a script that is a single file, with all that it imports in it, and writes nothing. */
export async function buildAlone(
  entry: string,
  { output = {}, plugins = [] }: { readonly output?: Rolldown.OutputOptions; readonly plugins?: Plugin[] },
): Promise<BuiltAlone> {
  let moduleIds: readonly string[] = [];
  const collectModules: Plugin = {
    name: 'collect-modules',
    generateBundle(_options, bundle) {
      // Not every module of the graph: a door brings along more than what is taken through it.
      moduleIds = Object.values(bundle).flatMap((file) =>
        file.type === 'chunk'
          ? file.moduleIds.filter((id) => (file.modules[id]?.renderedLength ?? 0) > 0)
          : [],
      );
    },
  };
  const built = await build({
    configFile: false,
    root: PROJECT,
    logLevel: 'warn',
    publicDir: false,
    plugins: [lightChordSymbol(), ...plugins, collectModules],
    worker: { format: 'iife' },
    build: {
      ...buildOptions,
      write: false,
      assetsInlineLimit: () => true,
      cssCodeSplit: false,
      rolldownOptions: {
        ...buildOptions.rolldownOptions,
        input: join(PROJECT, entry),
        output: { ...output, codeSplitting: false },
      },
    },
  });
  const files = [built].flat().flatMap((each) => ('output' in each ? each.output : []));
  const scripts = files.flatMap((file) => (file.type === 'chunk' ? [file.code] : []));
  const styles = files.flatMap((file) =>
    file.type === 'asset' && file.fileName.endsWith('.css') ? [String(file.source)] : [],
  );
  const [script, ...furtherScripts] = scripts;
  if (script === undefined || furtherScripts.length > 0 || styles.length > 1)
    throw new Error(`${entry} must become one script and at most one style sheet.`);
  return { script, style: styles[0] ?? '', moduleIds };
}
