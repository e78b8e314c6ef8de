/** “1 query”, “3 queries”. */
export function counted(count: number, one: string, many: string): string {
	return `${count} ${count === 1 ? one : many}`;
}
