// Shows the data of docs/replay-data.md in an element of the page.

export function mount(root, data) {
  root.dataset.layouts = String(data.layouts.length);
  return {dispose() {}};
}
