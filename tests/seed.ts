import fc from "fast-check";

/** Every property is tried on the same values each time; SEED=… tries others. A failure names its own seed. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env.SEED ?? 1911) });
