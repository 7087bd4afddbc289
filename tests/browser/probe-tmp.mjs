import { visitWebKit } from "./drive-webkit.mjs";
const v = await visitWebKit({ start: "about:blank" });
const { pathToFileURL } = await import("node:url"); const { builtPage } = await import("./drive.mjs");
await v.ask("POST", "/url", { url: pathToFileURL(builtPage).href });
const run = async (s) => { try { console.log(JSON.stringify(await v.ask("POST", "/execute/async", { script: s, args: [] }))); } catch (e) { console.log(String(e)); } };
await (async () => { const s = `const done = arguments[0]; const t = []; addEventListener("error", (e) => t.push(e.message + " " + e.lineno + ":" + e.colno + " " + (e.error && e.error.stack))); const last = [...document.scripts].at(-1); document.body.append(Object.assign(document.createElement("script"), { textContent: "try{" + last.textContent + "\\n}catch(e){window.failed=String(e)+e.stack}window.done1=1" })); setTimeout(() => done([t, window.failed, window.done1, last.textContent.slice(0,200), document.getElementById("page").hidden]), 1500)`; try { console.log(JSON.stringify(await v.ask("POST", "/execute/async", { script: s, args: [] }))); } catch (e) { console.log(String(e)); } })();
await v.close(); process.exit(0);
