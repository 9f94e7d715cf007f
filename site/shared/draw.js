// How elements are drawn. h() describes a tree; patch() makes the children of
// a host agree with it, touching only what differs, so that a field keeps its
// caret and its focus while the answers round it change. Text is only ever
// set as text.

const spaces = { svg: "http://www.w3.org/2000/svg", math: "http://www.w3.org/1998/Math/MathML" };
const drawn = new WeakMap(); // node → the description it was last drawn from
const heard = new WeakMap(); // element → its handlers by event name

/**
 * Describes an element. tag may be led by "svg:" or "math:". Among the props,
 * "key" tells siblings apart, ".name" sets a property, "onname" a handler,
 * "style" custom properties and the like by name; all others are attributes.
 */
export function h(tag, props, ...kids) {
  return { tag, props: props ?? {}, kids: kids.flat(Infinity).filter((k) => k !== null && k !== undefined && k !== false && k !== "") };
}

/** Makes host's children agree with kids. */
export function patch(host, kids) {
  const want = [kids].flat(Infinity).filter((k) => k !== null && k !== undefined && k !== false && k !== "");
  const keyed = new Map();
  for (const node of host.childNodes) {
    const key = drawn.get(node)?.props?.key;
    if (key !== undefined) keyed.set(key, node);
  }
  const wanted = new Set(want.map((kid) => kid.props?.key));
  let at = host.firstChild;
  for (const kid of want) {
    const key = kid.props?.key;
    let node = key === undefined ? at : keyed.get(key);
    // Taking away what stands before a node, rather than moving the node,
    // leaves the focus in it.
    while (key !== undefined && node && at !== node && at && !wanted.has(drawn.get(at)?.props?.key ?? null)) {
      const next = at.nextSibling;
      at.remove();
      at = next;
    }
    if (key === undefined && at && drawn.get(at)?.props?.key !== undefined) node = null;
    if (!node || !same(node, kid)) {
      node = create(kid);
      update(node, kid); // first, so that an element has its data when it enters the page
      host.insertBefore(node, at);
      continue;
    }
    if (node === at) at = at.nextSibling;
    else host.insertBefore(node, at);
    update(node, kid);
  }
  while (at) {
    const next = at.nextSibling;
    at.remove();
    at = next;
  }
}

function same(node, kid) {
  const was = drawn.get(node);
  if (typeof kid !== "object") return node.nodeType === Node.TEXT_NODE;
  return was?.tag === kid.tag && was.props.key === kid.props.key;
}

function create(kid) {
  if (typeof kid !== "object") return document.createTextNode("");
  const [space, name] = kid.tag.includes(":") ? kid.tag.split(":") : [null, kid.tag];
  return space ? document.createElementNS(spaces[space], name) : document.createElement(name);
}

function update(node, kid) {
  if (typeof kid !== "object") {
    if (node.data !== String(kid)) node.data = String(kid);
    return;
  }
  const was = drawn.get(node)?.props ?? {};
  drawn.set(node, kid);
  for (const name of Object.keys(was)) if (!(name in kid.props)) set(node, name, undefined);
  const late = [];
  for (const [name, value] of Object.entries(kid.props)) {
    // A select's value can only be set once its options are there.
    if (name === ".value" && kid.tag === "select") late.push(value);
    else set(node, name, value, was[name]);
  }
  if (!kid.tag.includes("-") || kid.kids.length > 0) patch(node, kid.kids);
  for (const value of late) if (node.value !== value) node.value = value;
}

function set(node, name, value, was) {
  if (name === "key") return;
  if (name.startsWith(".")) {
    if (node[name.slice(1)] !== value) node[name.slice(1)] = value;
  } else if (name.startsWith("on")) {
    hear(node, name.slice(2), value);
  } else if (name === "style") {
    for (const [property, text] of Object.entries(value ?? {})) node.style.setProperty(property, text);
  } else if (value === undefined || value === null || value === false) {
    node.removeAttribute(name);
  } else if (value !== was || !node.hasAttribute(name)) {
    node.setAttribute(name, value === true ? "" : value);
  }
}

// One listener an event and element, which calls the handler of the moment; it
// goes when the element goes.
function hear(node, event, handler) {
  let handlers = heard.get(node);
  if (!handlers) heard.set(node, (handlers = {}));
  if (!(event in handlers)) node.addEventListener(event, (e) => handlers[event]?.(e));
  handlers[event] = handler;
}
