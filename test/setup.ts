/**
 * Property-based tests draw new cases on every run here, and the same ones on every run in CI: what a change is judged
 * by is the change, not the draw. A case that fails prints its seed.
 */
import fc from 'fast-check';

if (process.env.CI) fc.configureGlobal({ seed: 20_261_120 });
