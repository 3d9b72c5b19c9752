/** The version of the engine, as package.json states it; written into the page as it is built. */
declare const ENGINE_VERSION: string;
