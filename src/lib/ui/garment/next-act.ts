import type { Waiting } from '../journal-shapes.ts';
import { counted } from './counted.ts';

/** The next thing to do with a garment: what, in a few words, a line about it, the button, and what comes after. */
export interface NextAct {
	readonly what: string;
	readonly about: string;
	readonly act: string;
	readonly href: string;
	readonly then?: string;
}

/** The words for what waits most on a garment; where nothing waits, its lining is chosen. `latest` is the latest version's number. */
export function nextAct(garment: string, waiting: Waiting | undefined, latest: number): NextAct {
	const here = `/garments/${garment}`;
	const versionNow = latest === 0 ? 'The draft' : `Version ${latest}`;
	if (!waiting)
		return {
			what: 'The lining is chosen.',
			about: `${versionNow} is what it is cut from.`,
			act: 'Open the lining',
			href: `${here}/lining`
		};
	switch (waiting.what) {
		case 'fitting-open': {
			const { fitting, standing, notRead, openObservations, inHand } = waiting;
			const work = fitting.kind === 'table' ? 'table work' : 'fitting';
			const about = [
				standing > 0 ? counted(standing, 'alteration kept', 'alterations kept') : 'Nothing kept yet',
				...(inHand.length > 0 ? [`alteration ${inHand.join(' and ')} in the hand`] : []),
				...(notRead > 0 ? [`${notRead} not read yet`] : []),
				...(openObservations > 0 ? [counted(openObservations, 'observation open', 'observations open')] : [])
			].join(', ');
			return {
				what: `Finish ${work} ${fitting.number}.`,
				about: `${about}.`,
				act: `Back to the ${work}`,
				href: `${here}/fittings/${fitting.id}`,
				then: `Then: carry the pins to paper, settle what comes up, and version ${latest + 1} is made. ${versionNow} stays as it is.`
			};
		}
		case 'unplaced': {
			const many = waiting.alterations.length > 1;
			return {
				what: `Place ${many ? 'alterations' : 'alteration'} ${waiting.alterations.map(({ number }) => number).join(', ')} again.`,
				about: `${many ? 'They' : 'It'} found no place on ${versionNow.toLowerCase()}. Place ${many ? 'them' : 'it'} again at the table, or leave ${many ? 'them' : 'it'} out below.`,
				act: 'Begin table work',
				href: `${here}/fittings/new?kind=table`
			};
		}
		case 'queries': {
			const { number } = waiting.version;
			return {
				what: `Settle ${counted(waiting.count, 'query', 'queries')} of ${number === 0 ? 'the draft' : `version ${number}`}.`,
				about: 'Each says what it asks and the ways to settle it; any of them may be left as it is, on purpose.',
				act: 'Settle what it asks',
				href: `${here}/versions/${number}`,
				then: 'Then: cut the next toile from it, or choose it for the lining.'
			};
		}
		case 'toile-to-fit':
			return {
				what: `Fit toile ${waiting.toile.number}.`,
				about: 'It is cut, and has not been tried on yet.',
				act: 'Begin the fitting',
				href: `${here}/fittings/new?toile=${waiting.toile.id}`,
				then: `Then: what was pinned is carried to paper, and version ${latest + 1} is made. ${versionNow} stays as it is.`
			};
		case 'toile-to-cut': {
			const { number } = waiting.version;
			return {
				what: `Cut a toile from ${number === 0 ? 'the draft' : `version ${number}`}.`,
				about: 'Plain cloth, with allowances wide enough to let out.',
				act: 'Cut the toile',
				href: `${here}/toiles/new?version=${number}`,
				then: 'Then: sew it, try it on, and write down what was pinned.'
			};
		}
		case 'lining-to-choose':
			return {
				what: 'Choose the lining.',
				about: `From ${waiting.version.number === 0 ? 'the draft' : `version ${waiting.version.number}`}: final allowances, and whether the toile can become it.`,
				act: 'Choose the lining',
				href: `${here}/lining`,
				then: 'Or cut another toile from it, and fit once more.'
			};
	}
}
