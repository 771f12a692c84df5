/** Property-based tests draw by the seed of the run; one that fails says the path to its case, too. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.SEED) });
