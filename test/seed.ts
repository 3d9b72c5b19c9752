import fc from "fast-check";

/**
 * The laws are tried on the same draws in every run, so that a check on a change depends on the change alone.
 * TURNSLEFT_SEED=3 npm test tries others.
 */
fc.configureGlobal({ seed: Number(process.env["TURNSLEFT_SEED"] ?? 20261125) });
