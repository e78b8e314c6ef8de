import type { Access } from '../access/access.ts';
import type { Answer } from './answer.ts';
import type { Change } from './changes.ts';
import type * as asked from './changes.ts';
import type * as ofPhotos from './photo-changes.ts';
import type { Picture } from '../photos/picture.ts';
import type { GarmentPage, InHand, Preview, TodayAndWaiting, WearerPage, WithdrawalPreview } from './pages.ts';
import type {
	Alteration,
	Entry,
	Fitting,
	Foundation,
	Garment,
	HandTyped,
	HeldHand,
	Instant,
	LiningChoice,
	MeasurementSheet,
	Note,
	Observation,
	Photo,
	PhotoConsent,
	PhotoPin,
	PhotosOfFitting,
	Settlement,
	StepRecord,
	Steps,
	Toile,
	Verdict,
	Version,
	VersionSummary,
	Wearer
} from './records.ts';

/**
 * The journal of fittings. Reading functions answer `undefined` for an unknown id. Every writing function does all of its
 * writing in one transaction, or none, and answers an `Answer`; `revision` is always that of the record as the form was
 * drawn from it.
 */
export interface Journal {
	// reading
	workroom(): TodayAndWaiting;
	/** Latest first. */
	garments(): readonly Garment[];
	wearer(id: string): WearerPage | undefined;
	garment(id: string): GarmentPage | undefined;
	toile(id: string): Toile | undefined;
	fitting(id: string): Fitting | undefined;
	alteration(id: string): Alteration | undefined;
	observation(id: string): Observation | undefined;
	version(garmentId: string, number: number): Version | undefined;
	photosOf(fittingId: string): PhotosOfFitting | undefined;
	photo(id: string): Photo | undefined;
	/** Path of the file of a picture that some photo has: the whole one, or the small one of 320 px. */
	pictureFile(hash: string, which: 'whole' | 'small'): string | undefined;
	/** Folder for pictures that are still coming in, on the same disk as the others. */
	incomingPictures(): string;
	/** Whether a photo may be added to the fitting now, to be asked before the picture is received. */
	mayAddPhotos(fittingId: string): Answer<Fitting>;
	/** Newest first; all, or those of one garment or wearer. */
	entries(about?: { garment?: string; wearer?: string; limit?: number }): readonly Entry[];

	// wearers
	addWearer(input: asked.NewWearer): Answer<Wearer>;
	reviseWearer(id: string, revision: number, change: Change<asked.NewWearer>): Answer<Wearer>;
	addFoundation(wearerId: string, input: asked.NewFoundation): Answer<Foundation>;
	reviseFoundation(id: string, revision: number, change: Change<asked.NewFoundation>): Answer<Foundation>;
	addSheet(wearerId: string, input: asked.NewSheet): Answer<MeasurementSheet>;
	reviseSheet(id: string, revision: number, change: Change<asked.NewSheet>): Answer<MeasurementSheet>;
	/** Erases name, sheets, foundations' names, notes and photos; patterns stay under numbers. Leaves an entry that says so. */
	forgetWearer(id: string, revision: number): Answer<Wearer>;

	// garments and toiles
	/** With its base draft as version 0, all or nothing. Every problem of the draft file comes back with its path as `field`. */
	addGarment(input: asked.NewGarment): Answer<{ garment: Garment; version: VersionSummary }>;
	reviseGarment(id: string, revision: number, change: Change<asked.GarmentFields>): Answer<Garment>;
	addToile(garmentId: string, input: asked.NewToile): Answer<Toile>;
	reviseToile(id: string, revision: number, change: Change<asked.ToileFields>): Answer<Toile>;
	/** Says what became of the toile: put together, taken apart, restitched to a later version … */
	moveToile(id: string, revision: number, step: asked.ToileStep): Answer<Toile>;

	// fittings and table work
	addFitting(garmentId: string, input: asked.NewFitting): Answer<Fitting>;
	reviseFitting(id: string, revision: number, change: Change<asked.FittingFields>): Answer<Fitting>;
	/** Closes a fitting that changes nothing on paper; refused while an alteration stands or is not read. */
	closeFitting(id: string, wholeRevision: number): Answer<Fitting>;

	addObservation(fittingId: string, input: asked.NewObservation): Answer<Observation>;
	reviseObservation(id: string, revision: number, change: Change<asked.NewObservation>): Answer<Observation>;
	/** What became of an earlier observation, asked for at a later fitting. */
	giveVerdict(observationId: string, input: asked.NewVerdict): Answer<Verdict>;

	/** Adding conflicts with nothing, so it takes no revision. */
	addAlteration(fittingId: string, input: asked.NewAlteration): Answer<Alteration>;
	reviseAlteration(id: string, revision: number, change: Change<asked.NewAlteration>): Answer<Alteration>;
	/** Left out of the open fitting: it keeps its number and is not carried. */
	leaveOut(id: string, revision: number): Answer<Alteration>;
	takeUpAgain(id: string, revision: number): Answer<Alteration>;
	/** To another place in the order of carrying, counted from 1. */
	reorderAlteration(id: string, revision: number, position: number): Answer<Alteration>;

	// steps at an open fitting: whatever is written of its alterations and observations in one transaction is one
	/** The step that can be undone, and the one that can be done again; none of a closed or an unknown fitting. */
	steps(fittingId: string): Steps;
	/** When a step, or what is in the hand, was last kept at an open fitting. */
	lastKept(fittingId: string): Instant | null;
	/**
	 * Undoes the step that is named. An addition is taken out again as if it had never been made; refused where something else
	 * refers to it. Stale where it is not the last one, or what it changed has been changed since: both answer where the steps
	 * stand now.
	 */
	undo(fittingId: string, step: number): Answer<StepRecord, Steps>;
	redo(fittingId: string, step: number): Answer<StepRecord, Steps>;

	/** What each device has in the hand, latest first; it does not count in the fitting's `wholeRevision`. */
	hands(fittingId: string): readonly HeldHand[];
	holdHand(fittingId: string, device: string, typed: HandTyped): Answer<HeldHand>;
	letGoOfHand(fittingId: string, device: string): Answer<Fitting>;

	// photos, which carry nothing to paper: they do not count in the fitting's `wholeRevision`
	/**
	 * Notes what the wearer said about photographs, also after the fitting is closed; `revision` is that of the consent, 0 the
	 * first time. Where they are not to be kept, those of the fitting are erased, and an entry says so.
	 */
	noteConsent(fittingId: string, revision: number, input: ofPhotos.NewConsent): Answer<PhotoConsent>;
	/** Keeps a picture with the fitting; one that is there already is answered as it is. Refused without consent. */
	addPhoto(fittingId: string, picture: Picture, input?: ofPhotos.NewPhoto): Answer<Photo>;
	revisePhoto(id: string, revision: number, change: ofPhotos.PhotoFields): Answer<Photo>;
	/** Puts the picture turned over in its place, as one that was (or was not) taken in a mirror; its pins turn with it. */
	turnPhoto(id: string, revision: number, turned: ofPhotos.TurnedPicture): Answer<Photo>;
	/** Takes it out of an open fitting, with its pins and its files. */
	removePhoto(id: string, revision: number): Answer<Photo>;
	addPhotoPin(photoId: string, input: ofPhotos.NewPhotoPin): Answer<PhotoPin>;
	revisePhotoPin(id: string, revision: number, change: Change<ofPhotos.NewPhotoPin>): Answer<PhotoPin>;
	removePhotoPin(id: string, revision: number): Answer<PhotoPin>;

	// from pin to paper
	/**
	 * Carries the fitting's alterations onto the latest version without writing anything; of an open fitting, with one that is
	 * in the hand and not kept.
	 */
	previewFitting(fittingId: string, inHand?: InHand): Preview | undefined;
	/**
	 * Writes the next version and closes the fitting. Refused while an alteration is not read, where an outline crosses
	 * itself, where an unplaced alteration is not named in `waiting`, and where nothing stands. A stale one answers the preview as
	 * it is now.
	 */
	carryToPaper(fittingId: string, wholeRevision: number, input?: asked.CarryInput): Answer<Version, Preview>;
	/** Leaves a query of a version as it is, on purpose. */
	settleQuery(versionId: string, input: asked.LeftQuery): Answer<Settlement>;
	/** What taking one carried alteration back out would come to. */
	previewWithdrawal(alterationId: string): WithdrawalPreview | undefined;
	/** Takes it back out: everything after it is computed anew from the base draft, as the next version. `latest`: the version
	 * number the page was drawn from; a stale one answers the latest version. */
	withdraw(alterationId: string, latest: number, note?: string): Answer<Version>;
	/** Leaves out an alteration of a closed fitting that waits for its place; no version changes. */
	leaveOutWaiting(alterationId: string, note?: string): Answer<Alteration>;

	chooseLining(garmentId: string, revision: number, input: asked.NewLining): Answer<LiningChoice>;

	addNote(input: asked.NewNote): Answer<Note>;
	reviseNote(id: string, revision: number, text: string): Answer<Note>;

	/** Who may come in from other devices. */
	readonly access: Access;

	/**
	 * Does what a form asks that a browser gave a key of its own, and remembers the key with the id that it came to: the same
	 * form sent again is answered the same, and nothing is done.
	 */
	once<C>(key: string, act: () => Answer<{ readonly id: string }, C>): Answer<{ readonly id: string }, C>;
	/** The id that a form with this key came to, if one was kept. */
	cameTo(key: string): string | undefined;
	/** Does several things in one transaction: all of them are kept if the last answer is `ok`, and none if it is not. */
	together<T, C>(act: () => Answer<T, C>): Answer<T, C>;
	/** Writes what happened earlier under the instant at which it happened: for a journal that is caught up with, and the demo. */
	asOf<T>(instant: Instant, act: () => T): T;
	close(): void;
}
