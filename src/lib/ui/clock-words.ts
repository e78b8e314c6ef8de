/** “2.32 pm”, the time of day of an instant where this runs; of now if none is given. */
export function clockWords(instant: Date = new Date()): string {
	const hours = instant.getHours();
	const minutes = String(instant.getMinutes()).padStart(2, '0');
	return `${hours % 12 || 12}.${minutes} ${hours < 12 ? 'am' : 'pm'}`;
}
