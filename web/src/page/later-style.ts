// The styles of what nobody sees before the script runs travel packed with it; the page is shown once they are in.
// After the style of the page itself, in this order. They are texts to the bundler, so what an old browser wants a prefix for has it there.

import base from "../styles/base.css";
import grid from "../styles/grid.css";
import help from "../styles/help.css";
import keep from "../styles/keep.css";
import train from "../styles/train.css";
import ways from "../styles/ways.css";

export function useLaterStyles(): void {
  document.adoptedStyleSheets = [base, grid, help, keep, train, ways].map((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    return sheet;
  });
}
