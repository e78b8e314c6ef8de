/** Everything that is asked of a draft, gravest first. Adding a query is a file beside this one and a line here. */
import { crosses } from './crosses.ts';
import { dartLegs } from './dart-legs.ts';
import { dartPoint } from './dart-point.ts';
import { dartWide } from './dart-wide.ts';
import { ease } from './ease.ts';
import { fittingsDisagree } from './fittings-disagree.ts';
import { foundationDiffers } from './foundation-differs.ts';
import { letOutNoCloth } from './let-out-no-cloth.ts';
import { narrow } from './narrow.ts';
import { notchLost } from './notch-lost.ts';
import { notchWalk } from './notch-walk.ts';
import { remarked } from './remarked.ts';
import { scaleDoubt } from './scale-doubt.ts';
import { seamCorner } from './seam-corner.ts';
import { seamLength } from './seam-length.ts';
import { unplaced } from './unplaced.ts';
import { waistUnderBody } from './waist-under-body.ts';
import type { Inquiry } from '../inquiry.ts';

export const inquiries: readonly Inquiry[] = [
	crosses,
	scaleDoubt,
	unplaced,
	letOutNoCloth,
	narrow,
	seamLength,
	notchWalk,
	notchLost,
	remarked,
	dartLegs,
	dartPoint,
	dartWide,
	seamCorner,
	waistUnderBody,
	ease,
	fittingsDisagree,
	foundationDiffers
];
