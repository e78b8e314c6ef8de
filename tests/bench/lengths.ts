import { svgPathProperties } from 'svg-path-properties';
import { formatPathData } from '../../src/lib/engine/index.ts';
import { measured } from '../../src/lib/engine/geometry/accuracy.ts';
import { segmentLength } from '../../src/lib/engine/geometry/arc-length.ts';
import { bezierOf, curves } from './curves.ts';
import { report } from './report.ts';

const asBezier = curves.map(bezierOf);
const asText = curves.map((curve) => formatPathData([curve]));
/** Each curve's length from 64 pieces of it, each by another library: far beyond what one of these gets wrong at once. */
const exact = asBezier.map((curve) =>
	Array.from({ length: 64 }, (_, i) => curve.split(i / 64, (i + 1) / 64).length()).reduce((sum, part) => sum + part, 0)
);

function timed(name: string, run: () => readonly number[], peer = false) {
	const off = Math.max(...run().map((length, i) => Math.abs(length - exact[i])));
	return { name, run, peer, figure: `off by ${off.toExponential(1)} mm at most` };
}

export const lengths = () =>
	report(`Arc length of the bodice's ${curves.length} curves, each once`, [
		timed('ours, to 1e-9 mm', () => curves.map((curve) => segmentLength(curve, 1e-9))),
		timed(`ours, to ${measured} mm`, () => curves.map((curve) => segmentLength(curve, measured))),
		timed('bezier-js', () => asBezier.map((curve) => curve.length()), true),
		timed(
			'svg-path-properties, reading included',
			() => asText.map((text) => new svgPathProperties(text).getTotalLength()),
			true
		)
	]);
