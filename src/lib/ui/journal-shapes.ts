/**
 * What components and their words need of the journal's records. The journal's own records have these shapes (and more); the
 * ui never imports the server.
 */

export interface VersionShown {
	readonly number: number;
	readonly unsettled: readonly unknown[];
}

export interface FittingShown {
	readonly id: string;
	readonly kind: 'fitting' | 'table';
	readonly number: number;
	readonly closedAt: string | null;
}

export interface ToileShown {
	readonly id: string;
	readonly number: number;
}

export type Station = { readonly date: string } & (
	| { readonly kind: 'version'; readonly version: VersionShown }
	| { readonly kind: 'toile'; readonly toile: ToileShown }
	| { readonly kind: 'fitting'; readonly fitting: FittingShown }
	| { readonly kind: 'lining'; readonly lining: { readonly version: number } }
);

export type Waiting = { readonly garment: { readonly id: string; readonly name: string } } & (
	| {
			readonly what: 'fitting-open';
			readonly fitting: FittingShown;
			readonly standing: number;
			readonly notRead: number;
			readonly openObservations: number;
			readonly inHand: readonly number[];
	  }
	| { readonly what: 'queries'; readonly version: VersionShown; readonly count: number }
	| { readonly what: 'unplaced'; readonly alterations: readonly { readonly number: number }[] }
	| { readonly what: 'toile-to-fit'; readonly toile: ToileShown }
	| { readonly what: 'toile-to-cut'; readonly version: VersionShown }
	| { readonly what: 'lining-to-choose'; readonly version: VersionShown }
);
