/** Builds the page twice, in folders apart, and prints the hash of every file: `npm run test:reproducible`. */
import { buildTwice } from './buildElsewhere';

const [first, second] = await buildTwice();
let different = 0;
for (const name of new Set([...first.keys(), ...second.keys()])) {
  const isSame = first.get(name) === second.get(name);
  if (!isSame) different++;
  console.log(
    `${first.get(name) ?? 'missing'}  ${name}${isSame ? '' : `  differs: ${second.get(name) ?? 'missing'}`}`,
  );
}
console.log(different === 0 ? `The same ${first.size} files, byte for byte.` : `${different} files differ.`);
process.exitCode = different === 0 ? 0 : 1;
