const mostSteps = 100;

/**
 * Where a polynomial (constant term first) changes sign or is exactly 0 in [low, high], rising. Double roots that rounding
 * has lifted off zero are not seen: ask the stationary points. An identically zero polynomial has none to give.
 * Between the roots of its derivative, found the same way, a polynomial is monotone, so that each of those stretches holds
 * at most one root and a bracketed Newton step finds it to the last bits. Source: C. Yuksel, High-Performance Polynomial
 * Root Finding for Graphics, Proc. ACM Comput. Graph. Interact. Tech. 5 (2022), from memory.
 */
export function rootsBetween(polynomial: readonly number[], low: number, high: number): number[] {
	let degree = polynomial.length - 1;
	while (degree > 0 && polynomial[degree] === 0) degree--;
	if (degree <= 0) return [];
	if (degree === 1) {
		const t = -polynomial[0] / polynomial[1];
		return t >= low && t <= high ? [t] : [];
	}
	const roots: number[] = [];
	const stationary =
		degree === 2 ? [-polynomial[1] / (2 * polynomial[2])] : rootsBetween(derivative(polynomial, degree), low, high);
	let a = low;
	let atA = evaluate(polynomial, degree, a);
	if (atA === 0) roots.push(a);
	for (let i = 0; i <= stationary.length; i++) {
		const b = i < stationary.length ? stationary[i] : high;
		if (!(b > a) || b > high) continue;
		const atB = evaluate(polynomial, degree, b);
		if (atB === 0) roots.push(b);
		else if (atA !== 0 && atA > 0 !== atB > 0) roots.push(monotoneRoot(polynomial, degree, a, b, atA > 0));
		a = b;
		atA = atB;
	}
	return roots;
}

function derivative(polynomial: readonly number[], degree: number): number[] {
	const slopes: number[] = [];
	for (let i = 1; i <= degree; i++) slopes.push(i * polynomial[i]);
	return slopes;
}

function evaluate(polynomial: readonly number[], degree: number, t: number): number {
	let value = polynomial[degree];
	for (let i = degree - 1; i >= 0; i--) value = value * t + polynomial[i];
	return value;
}

function monotoneRoot(polynomial: readonly number[], degree: number, a: number, b: number, falling: boolean): number {
	let t = 0.5 * (a + b);
	for (let step = 0; step < mostSteps; step++) {
		let value = polynomial[degree];
		let slope = 0;
		for (let i = degree - 1; i >= 0; i--) {
			slope = slope * t + value;
			value = value * t + polynomial[i];
		}
		if (value === 0) return t;
		if (value > 0 === falling) a = t;
		else b = t;
		const newton = t - value / slope;
		const next = newton > a && newton < b ? newton : 0.5 * (a + b);
		if (Math.abs(next - t) <= 1e-16 * Math.abs(t) || next === t) return next;
		t = next;
	}
	return t;
}

/** The root of k0 + k1 t + k2 t² + k3 t³ in (0, 1), over which it rises or falls only, from one side of nothing to the other. */
export function oneWayRoot(k0: number, k1: number, k2: number, k3: number): number {
	const falling = k0 > 0;
	let a = 0;
	let b = 1;
	let t = k0 / -(k1 + k2 + k3);
	for (let step = 0; step < mostSteps; step++) {
		const value = k0 + (k1 + (k2 + k3 * t) * t) * t;
		if (value === 0) return t;
		if (value > 0 === falling) a = t;
		else b = t;
		const newton = t - value / (k1 + (2 * k2 + 3 * k3 * t) * t);
		const next = newton > a && newton < b ? newton : 0.5 * (a + b);
		if (Math.abs(next - t) <= 1e-16 || next === t) return next;
		t = next;
	}
	return t;
}
