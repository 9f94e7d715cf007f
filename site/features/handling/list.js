// The safe-handling list out of the engine's answer: its parts in the order of
// the work, each with its items.

/** @returns {{sections: {title, items}[], holds, open, standing} | null} null while there is no list yet. */
export function handlingList({ reply }) {
  const answers = reply?.stations.find((s) => s.key === "handling")?.answers;
  if (!answers) return null;
  const sections = [];
  for (const i of answers.items) {
    const item = {
      code: i.code.text,
      text: i.text.text,
      why: i.why?.text,
      source: i.source?.text,
      law: i.law?.text,
      hold: i.hold.value,
      state: i.state.text,
      by: i.by?.text,
      reason: i.reason?.text,
      done: i.state.text === "answered yes",
    };
    if (sections.at(-1)?.title !== i.group.text) sections.push({ title: i.group.text, items: [] });
    sections.at(-1).items.push(item);
  }
  return { sections, holds: answers.holds.value, open: answers.open_holds.value, standing: answers.standing.text };
}
