// The first script of the page: unpacks the page's own script and starts it. Nothing else is in it, so that a browser that
// can't unpack is told so in words that stand in the page.

import { inflatedText } from "./inert";

async function unpack(): Promise<void> {
  const script = document.createElement("script");
  script.textContent = await inflatedText("plumbline-page");
  document.body.append(script);
  if (document.documentElement.dataset["began"] !== "yes") throw new Error("the page's own script did not begin");
}

if (document.documentElement.dataset["cannotRun"] !== "yes") {
  unpack().catch(() => {
    document.documentElement.dataset["cannotRun"] = "yes";
    const told = document.getElementById("cannot-unpack");
    if (told !== null) told.hidden = false;
  });
}
