import { expect, test, type Locator } from '@playwright/test';
import sharp from 'sharp';
import { beginFitting } from '../support/begin-fitting.ts';
import { alive } from '../support/fitting-page.ts';
import { ownServer } from '../support/own-server.ts';

const server = ownServer();

/**
 * Times of the keystroke-level model, s: Card, Moran and Newell, “The keystroke-level model for user performance time with
 * interactive systems”, Communications of the ACM 23 (1980). K: a key of an average typist; P: pointing, here a tap; M: making
 * up one's mind, before each thing that is chosen.
 */
const [K, P, M] = [0.28, 1.1, 1.35];

/** Counts what a thumb does on the page, and does it. */
function thumb() {
	const done = { taps: 0, keys: 0, minds: 0 };
	return {
		done,
		seconds: () => done.taps * P + done.keys * K + done.minds * M,
		/** A tap that had to be thought about. */
		async choose(what: Locator) {
			done.minds++;
			await this.tap(what);
		},
		async tap(what: Locator) {
			done.taps++;
			await what.tap();
		},
		async type(field: Locator, text: string) {
			done.minds++;
			done.taps++;
			done.keys += text.length;
			await field.tap();
			await field.pressSequentially(text);
		},
		/** A list that opens, and a line of it. */
		async pick(list: Locator, label: string) {
			done.minds++;
			done.taps += 2;
			await list.selectOption({ label });
		}
	};
}

// Eight alterations, four observations and three photos in under three minutes, by someone who has done it once.
test('a whole fitting is logged on a phone in under three minutes of thumb and thought @scripting @phone', async ({
	page,
	request
}) => {
	await beginFitting(page, request, server.address());
	await alive(page);
	const hand = thumb();
	const act = (name: RegExp) => hand.choose(page.getByRole('link', { name }).first());
	const where = (name: string) => hand.choose(page.getByRole('link', { name, exact: true }));
	const rule = (place: string, amount: string) =>
		hand.choose(
			page.getByRole('group', { name: `${place}: how much` }).getByRole('button', { name: amount, exact: true })
		);
	const place = (name: string) => hand.choose(page.getByRole('button', { name }).first());
	let kept = 0;
	const keep = async () => {
		kept++;
		await hand.tap(page.getByRole('button', { name: `Keep alteration ${kept}` }));
		await expect(page.getByRole('heading', { name: `Alteration ${kept} is kept` })).toBeVisible();
	};

	for (const [seam, amount, second] of [
		['Side seam', '1/4', '1/8'],
		['Side-back seam', '1/8', '1/8'],
		['Centre-back seam', '1/8', '1/4']
	] as const) {
		await act(/Took in a seam/);
		await where(seam);
		await place('Waist line');
		await rule('Waist line', amount);
		await place('Hip line');
		await rule('Hip line', second);
		await keep();
	}
	await act(/Let out a seam/);
	await where('Under-arm seam');
	await place('Bust line');
	await rule('Bust line', '1/8');
	await keep();
	for (const [edge, end] of [
		['Front neck', 'Front edge'],
		['Back neck', 'Centre back']
	] as const) {
		await act(/Chalked a line/);
		await where(edge);
		await place(end);
		await rule(end, '1/4');
		await keep();
	}
	await act(/Front or open edge/);
	await where('Front edge');
	await hand.choose(page.getByRole('radio', { name: 'Added' }));
	await rule('Waist line', '3/8');
	await keep();
	await act(/Changed a dart/);
	await where('Front second dart');
	await hand.type(page.getByLabel('How much', { exact: true }), '1/4');
	await keep();

	const seen = page.getByRole('list', { name: 'Seen on the body' });
	for (const [what, line] of [
		['The front sags in folds below the bust line', 'Shoulder seam'],
		['The armhole gapes in front', 'Front armhole'],
		['The neck edge is tight or stands too high', 'Front neck'],
		['Loose folds up and down at the waist', 'Side seam']
	] as const) {
		await hand.choose(page.getByText('Note what you see'));
		await hand.pick(page.locator('#note-it').getByLabel('What is seen', { exact: true }), what);
		await hand.pick(page.locator('#note-it').getByLabel('Where', { exact: true }), line);
		await hand.tap(page.getByRole('button', { name: 'Keep it', exact: true }));
		await expect(seen).toContainText(what);
	}

	await hand.choose(page.getByRole('link', { name: 'Add photos' }));
	await hand.tap(page.getByLabel('Photographs may be taken'));
	await hand.tap(page.getByLabel('They may be kept here'));
	await hand.tap(page.getByRole('button', { name: 'Note what was said' }));
	const pictures = await Promise.all(
		[90, 140, 200].map(async (grey) => ({
			name: `${grey}.jpg`,
			mimeType: 'image/jpeg',
			buffer: await sharp({
				create: { width: 900, height: 1200, channels: 3, background: { r: grey, g: grey, b: grey } }
			})
				.jpeg()
				.toBuffer()
		}))
	);
	// The list of the phone: open it, and tap each of three.
	hand.done.taps += 5;
	hand.done.minds += 1;
	await page.getByLabel('From the camera or a file').setInputFiles(pictures);
	await expect(page.getByRole('link', { name: /^Photo \d/ })).toHaveCount(3);

	const { taps, keys, minds } = hand.done;
	console.log(
		`a fitting on a phone: ${taps} taps, ${keys} keys, ${minds} choices, ${hand.seconds().toFixed(0)} s by the keystroke-level model`
	);
	expect(hand.seconds()).toBeLessThan(180);
});
