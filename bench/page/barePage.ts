/** A page that changes one text on every press, and does nothing else: what a change costs at the very least. */
export const barePage = `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>bare</title>
<button style="width:80px;height:80px">+</button><output>0</output>
<script>
  const text = document.querySelector("output").firstChild;
  document.querySelector("button").addEventListener("pointerdown", () => (text.data = String(Number(text.data) + 1)));
</script>`;
