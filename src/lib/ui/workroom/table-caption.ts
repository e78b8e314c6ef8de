/** What lies on the table, in words: “Six garments for” “Snow at Nethermoor”, “all drawn to one scale”. */
export interface TableCaption {
	readonly count: string;
	/** What all of them are made for, where that is one thing. */
	readonly madeFor?: string;
	readonly scale?: string;
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Says how many garments lie on the table, and what for. `madeFor`: of each garment, empty where nobody said. */
export function tableCaption(madeFor: readonly string[]): TableCaption {
	const count = madeFor.length;
	const number = small[count] ?? String(count);
	const words = `${number.charAt(0).toUpperCase()}${number.slice(1)} ${count === 1 ? 'garment' : 'garments'}`;
	const [first = ''] = madeFor;
	const common = first !== '' && madeFor.every((one) => one === first) ? first : undefined;
	return {
		count: common === undefined ? words : `${words} for`,
		...(common !== undefined && { madeFor: common }),
		...(count > 1 && { scale: 'all drawn to one scale' })
	};
}
