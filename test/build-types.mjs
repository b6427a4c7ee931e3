// npm run build:types: what the library exports as one file of types, dist/library.d.ts, beside the code that it is of.

import { rollup } from 'rollup';
import { dts } from 'rollup-plugin-dts';

const plugin = dts({ tsconfig: 'tsconfig.json', compilerOptions: { stripInternal: true } });
const bundle = await rollup({
  input: 'src/library/layerwright.ts',
  plugins: [plugin],
  // what is not carried in would be missing where the package is installed
  onwarn: (warning) => {
    throw new Error(warning.message);
  },
});
await bundle.write({ file: 'dist/library.d.ts' });
