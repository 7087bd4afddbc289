// Firefox's half of same-answer.mjs.

import { browsers } from "./drive.mjs";
import { testSameAnswer } from "./same-answer.mjs";

testSameAnswer(browsers.find(({ name }) => name === "Firefox"));
