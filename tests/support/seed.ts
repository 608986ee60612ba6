import fc from 'fast-check';

// Every run tries the same cases, so that a red run is red again when it is looked into. Another seed looks elsewhere.
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261_125) });
