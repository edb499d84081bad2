/** One fixed start for all random cases, so that a failure comes back. Another one: SEED=… npm test. */
export const SEED = Number(process.env.SEED ?? 19570801);
console.log(`random cases start from seed ${SEED}`);
