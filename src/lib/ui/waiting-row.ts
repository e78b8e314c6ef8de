import type { Waiting } from './journal-shapes.ts';

/** One thing that waits for a hand, in words, with the page where it is done. */
export interface WaitingRow {
	readonly mark: 'pin' | 'slip' | 'shears' | 'needle' | 'ring';
	/** In the mark: a number of pins or queries. */
	readonly count: number;
	readonly what: string;
	readonly note: string;
	readonly act: string;
	readonly href: string;
}

/** The words of one waiting thing. */
export function waitingRow(waiting: Waiting): WaitingRow {
	const { name, id } = waiting.garment;
	const here = `/garments/${id}`;
	switch (waiting.what) {
		case 'fitting-open': {
			const { fitting, standing, notRead, openObservations, inHand } = waiting;
			const work = fitting.kind === 'table' ? 'table work' : 'fitting';
			const notes = [
				inHand.length > 0 && `alteration ${inHand.join(' and ')} in the hand`,
				counted(standing, 'alteration kept', 'alterations kept'),
				notRead > 0 && `${notRead} not read yet`,
				openObservations > 0 && counted(openObservations, 'observation open', 'observations open')
			];
			return {
				mark: 'pin',
				count: standing + notRead,
				what: `${name}: finish ${work} ${fitting.number}`,
				note: notes.filter(Boolean).join(', '),
				act: 'Go on',
				href: `${here}/fittings/${fitting.id}`
			};
		}
		case 'queries':
			return {
				mark: 'slip',
				count: waiting.count,
				what: `${name}: settle ${counted(waiting.count, 'query', 'queries')}`,
				note: waiting.version.number === 0 ? 'of the draft' : `of version ${waiting.version.number}`,
				act: 'Settle',
				href: `${here}/versions/${waiting.version.number}`
			};
		case 'unplaced':
			return {
				mark: 'slip',
				count: waiting.alterations.length,
				what: `${name}: place ${counted(waiting.alterations.length, 'alteration', 'alterations')} again`,
				note: `alteration ${waiting.alterations.map((one) => one.number).join(', ')} found no place`,
				act: 'Open',
				href: here
			};
		case 'toile-to-fit':
			return {
				mark: 'needle',
				count: 0,
				what: `${name}: toile ${waiting.toile.number} not yet fitted`,
				note: 'cut, and waiting to be tried on',
				act: 'Fit it',
				href: `${here}/fittings/new?toile=${waiting.toile.id}`
			};
		case 'toile-to-cut':
			return {
				mark: 'shears',
				count: 0,
				what: `${name}: cut the toile`,
				note: waiting.version.number === 0 ? 'the draft is in' : `version ${waiting.version.number} is carried`,
				act: 'Cut',
				href: `${here}/toiles/new?version=${waiting.version.number}`
			};
		case 'lining-to-choose':
			return {
				mark: 'shears',
				count: 0,
				what: `${name}: choose the lining`,
				note:
					waiting.version.number === 0 ? 'from the draft' : `from version ${waiting.version.number}, or fit once more`,
				act: 'Choose',
				href: `${here}/lining`
			};
	}
}

function counted(count: number, one: string, many: string): string {
	return `${count} ${count === 1 ? one : many}`;
}
