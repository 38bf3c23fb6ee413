import fc from 'fast-check';

/**
 * Property tests run from one seed, so that a run says the same twice; FAST_CHECK_SEED=N looks elsewhere, and a
 * counterexample that it finds becomes a test of its own.
 */
fc.configureGlobal({ seed: Number(process.env['FAST_CHECK_SEED'] ?? 20_261_126) });
