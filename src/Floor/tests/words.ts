import { loadWords } from "../src/words/say";

// A page waits for its words before it shows anything; so do the tests.
await loadWords("class", "en");
await loadWords("class", "es");
