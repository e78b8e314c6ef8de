import QRCode from 'qrcode';

/** A QR code as squares: `path` draws each dark one as a unit square; `size` counts those of a side, the quiet zone included. */
export interface QrSquares {
	readonly size: number;
	readonly path: string;
}

/** Light squares round the code (ISO/IEC 18004, 6.3.8). */
const quiet = 4;

/** The QR code of an address, to be drawn. */
export function qrSquares(text: string): QrSquares {
	const { modules } = QRCode.create(text, { errorCorrectionLevel: 'M' });
	const squares: string[] = [];
	for (let row = 0; row < modules.size; row++)
		for (let column = 0; column < modules.size; column++)
			if (modules.get(row, column)) squares.push(`M${column + quiet} ${row + quiet}h1v1h-1z`);
	return { size: modules.size + 2 * quiet, path: squares.join('') };
}

/** The QR code of an address for a terminal, in half blocks. */
export const qrForTerminal = (text: string): Promise<string> =>
	QRCode.toString(text, { type: 'terminal', small: true, errorCorrectionLevel: 'M' });
