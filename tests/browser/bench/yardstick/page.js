// Hands the chosen file to the worker and says what came back. `marks` is read by the measuring script.

const text = document.getElementById("yardstick-worker").textContent;
const worker = new Worker(URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
const said = document.getElementById("said");
const marks = (window.yardstickMarks = {});

worker.onerror = (event) => {
  marks.failed = event.message;
};
worker.onmessage = ({ data }) => {
  marks[data.kind] = performance.now();
  if (data.kind === "failed") marks.failed = data.text;
  if (data.kind !== "done") return;
  marks.result = data;
  said.textContent = `${data.rows} rows`;
  requestAnimationFrame(() => setTimeout(() => (marks.stood = performance.now())));
};
document.getElementById("result-files").addEventListener("change", ({ target }) => {
  marks.chosen = performance.now();
  worker.postMessage(target.files[0]);
});
