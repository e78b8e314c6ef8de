/**
 * A waistcoat of two pieces as a draft file, invented for these tests: both side edges are the same curve turned over, so
 * that the side seam walks to the bit; the front has one waist dart. mm.
 */
export function waistcoatFile() {
	return {
		format: 'pin-to-paper/draft@1',
		name: 'Waistcoat',
		pieces: [
			{
				id: 'front',
				name: 'Front',
				cut: 'pair',
				side: 'both',
				edges: [
					{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 200 0' },
					{
						id: 'side',
						name: 'Side',
						kind: 'seam',
						path: 'M 200 0 C 190 100 185 150 185 200 C 185 250 195 320 205 400'
					},
					{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 205 400 L 0 400' },
					{ id: 'front-edge', name: 'Front edge', kind: 'open', path: 'M 0 400 L 0 0', lap: 0 }
				],
				darts: [{ id: 'waist-dart', edge: 'hem', from: 90, to: 110, point: [105, 120] }],
				notches: [{ id: 'n1', edge: 'side', at: 150, mate: 'back/n1' }],
				levels: [
					{
						level: 'waist',
						line: [
							[0, 200],
							[185, 200]
						]
					}
				],
				grain: [
					[40, 60],
					[40, 340]
				]
			},
			{
				id: 'back',
				name: 'Back',
				cut: 'pair',
				side: 'both',
				edges: [
					{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 180 0' },
					{ id: 'centre', name: 'Centre back', kind: 'seam', path: 'M 180 0 L 180 400' },
					{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 180 400 L -5 400' },
					{
						id: 'side',
						name: 'Side',
						kind: 'seam',
						path: 'M -5 400 C 5 320 15 250 15 200 C 15 150 10 100 0 0'
					}
				],
				notches: [{ id: 'n1', edge: 'side', at: sideLength - 150, mate: 'front/n1' }],
				levels: [
					{
						level: 'waist',
						line: [
							[15, 200],
							[180, 200]
						]
					}
				],
				grain: [
					[90, 60],
					[90, 340]
				]
			}
		],
		seams: [
			{
				id: 'side',
				name: 'Side seam',
				a: [{ edge: 'back/side', reversed: true }],
				b: [{ edge: 'front/side', reversed: false }],
				ease: 0
			},
			{
				id: 'centre-back',
				name: 'Centre-back seam',
				a: [{ edge: 'back/centre', reversed: false }],
				b: 'mirror',
				ease: 0
			}
		]
	};
}

/** Of either side edge, by Simpson's rule on a thousand steps of each of its two curves; mm. */
const sideLength =
	lengthOf([200, 0, 190, 100, 185, 150, 185, 200]) + lengthOf([185, 200, 185, 250, 195, 320, 205, 400]);

function lengthOf([x0, y0, x1, y1, x2, y2, x3, y3]: number[]): number {
	const speed = (t: number) => {
		const u = 1 - t;
		const along = (a: number, b: number, c: number, d: number) =>
			3 * (u * u * (b - a) + 2 * u * t * (c - b) + t * t * (d - c));
		return Math.hypot(along(x0, x1, x2, x3), along(y0, y1, y2, y3));
	};
	const steps = 1000;
	let sum = speed(0) + speed(1);
	for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * speed(i / steps);
	return sum / steps / 3;
}
