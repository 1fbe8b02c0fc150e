// In: the JavaScript that TypeScript wrote to build/, so that type errors stop a build and webpack needs no TypeScript loader.
// Out: one file a bundle in dist/. Add a bundle as another object of the list at the end; `build.mjs --only NAME` builds one alone.
import { resolve } from 'node:path';
import MinimizerPlugin from 'minimizer-webpack-plugin';
import webpack from 'webpack';

const root = import.meta.dirname;

// The grid engine's text layout can load 77 hyphenation tables (4 MB) for documents. Sheets never ask; "no table" is a case it handles.
const noHyphenationTables = () =>
  new webpack.NormalModuleReplacementPlugin(/^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/, (resource) => {
    if (/@univerjs[\\/]engine-render[\\/]lib[\\/]es$/.test(resource.context))
      resource.request = 'data:text/javascript,export default null';
  });

/** What all bundles share. */
const common = (name) => ({
  name,
  mode: 'production',
  devtool: false,
  context: root,
  performance: { hints: false },
  module: {
    // One file an entry, no numbered chunks.
    parser: { javascript: { dynamicImportMode: 'eager' } },
    rules: [
      {
        test: /@univerjs[\\/](core|engine-formula|sheets|sheets-formula)[\\/]lib[\\/]es[\\/]index\.js$/,
        loader: resolve(root, 'src/build/univer-loader.cjs'),
      },
    ],
  },
  plugins: [noHyphenationTables()],
});

export default [
  {
    ...common('cli'),
    target: 'node20',
    entry: { cli: './build/cli/cli.js' },
    experiments: { outputModule: true },
    output: { path: resolve(root, 'dist'), filename: '[name].js', module: true, library: { type: 'module' } },
    // Read by people when something fails, and never sent anywhere.
    optimization: { minimize: false },
  },
  {
    // By itself, so that it starts without the grid's engine.
    ...common('rows'),
    target: 'node20',
    entry: { rows: './build/cli/rows.js' },
    experiments: { outputModule: true },
    output: { path: resolve(root, 'dist'), filename: '[name].js', module: true, library: { type: 'module' } },
    optimization: { minimize: false },
  },
  {
    ...common('functions'),
    target: ['web', 'es2022'],
    entry: {
      functions: [
        './src/texts/look.css',
        './src/taskpane/pane.css',
        './src/taskpane/plan.css',
        './src/taskpane/print.css',
        './build/addin/start.js',
      ],
    },
    experiments: { css: true },
    // The screens about one jacket are fetched when they are opened: the functions start without them.
    module: { parser: { javascript: { dynamicImportMode: 'lazy' } } },
    output: {
      path: resolve(root, 'dist'),
      filename: '[name].js',
      chunkFilename: 'functions-[name].js',
      cssFilename: '[name].css',
    },
    optimization: {
      minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false })],
    },
  },
  {
    ...common('workbench'),
    target: ['web', 'es2022'],
    entry: {
      workbench: [
        ...['core', 'data-validation', 'conditional-formatting'].map(
          (name) => `@univerjs/preset-sheets-${name}/lib/index.css`,
        ),
        './src/texts/look.css',
        './src/taskpane/pane.css',
        './src/taskpane/plan.css',
        './src/taskpane/print.css',
        './src/workbench/workbench.css',
        './build/workbench/main.js',
      ],
    },
    experiments: { css: true },
    output: { path: resolve(root, 'dist'), filename: '[name].js', cssFilename: '[name].css' },
    // The one minimizer of those tried that takes seconds, not minutes, for the grid.
    optimization: {
      minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false })],
    },
  },
];
