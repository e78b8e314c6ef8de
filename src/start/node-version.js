/** Oldest Node.js that the project runs on, as package.json's `engines` says: major and minor. */
const oldest = [20, 19];

/**
 * The sentence for a Node.js that is too old, or nothing when it will do.
 * @param {string} version as `process.versions.node` gives it, e.g. `20.19.0`
 * @returns {string | undefined}
 */
export function nodeProblem(version) {
	const [major, minor] = version.split('.').map(Number);
	if (major > oldest[0] || (major === oldest[0] && minor >= oldest[1])) return undefined;
	return `Pin to Paper needs Node.js ${oldest.join('.')} or newer; this is ${version}. Install a newer Node.js, then run the command again.`;
}
