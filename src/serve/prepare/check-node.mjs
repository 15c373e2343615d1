/**
 * What is wrong with this Node, as a sentence to print, or null where it is new enough.
 *
 * @param {string} version as in `process.versions.node`: `20.19.1`
 * @param {string} range as in package.json: `>=20.19`
 * @returns {string | null}
 */
export function checkNode(version, range) {
  const least = range.replace(/^>=\s*/, '');
  const [have = 0, haveMinor = 0] = version.split('.').map(Number);
  const [need = 0, needMinor = 0] = least.split('.').map(Number);
  if (have > need || (have === need && haveMinor >= needMinor)) return null;
  return (
    `Loafward needs Node ${least} or newer, and this is Node ${version}. ` +
    'Install a newer Node, open a new terminal and run the command again.'
  );
}
