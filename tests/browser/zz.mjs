import { visitWebKit } from "./drive-webkit.mjs";
import { until } from "./drive.mjs";
const v = await visitWebKit();
await v.click("#enter-inspect").catch(()=>{});
const demos = await v.evaluate(()=>[...document.querySelectorAll("button")].map(b=>b.id).filter(Boolean).join(" "));
console.log(demos);
await v.evaluate(()=>{ window.log=[]; for (const t of ["keydown","keyup"]) addEventListener(t,(e)=>window.log.push([t,e.key,e.code,e.altKey,e.shiftKey,e.isTrusted,e.defaultPrevented,document.activeElement.id].join()),true); });
let lost=0;
for (let i=0;i<150;i+=1) {
  await v.evaluate((n)=>{ window.log.length=0; const all=[...document.querySelectorAll("button,input,a[href],summary,h2")].filter(x=>x.checkVisibility() && x.id!=="next-go"); all[n%all.length].focus(); }, i*7);
  await v.press("Alt+Shift+0");
  const ok = await until("x",()=>v.evaluate(()=>document.activeElement.id==="next-go"),700).catch(()=>false);
  if (!ok) { lost+=1; console.log(i, await v.evaluate(()=>[window.log.join(" | "), document.activeElement.outerHTML.slice(0,90), document.hasFocus()].join(" ## "))); }
}
console.log("lost",lost);
await v.close(); process.exit(0);
