package browser

import (
	"testing"

	"github.com/chromedp/cdproto/runtime"
	"github.com/stretchr/testify/require"
)

// attempts are what the security policy must refuse, each with the directive
// that does. What runs in spite of it sets "broken".
var attempts = []struct{ what, directive, script string }{
	{"a script in the page", "script-src-elem", `const s = document.createElement("script"); s.textContent = "window.broken = 1"; document.body.append(s);`},
	{"a handler in the markup", "script-src-attr", `const b = document.createElement("button"); b.setAttribute("onclick", "window.broken = 1"); document.body.append(b); b.click(); b.remove();`},
	{"a script from elsewhere", "script-src-elem", `const s = document.createElement("script"); s.src = "http://127.0.0.1:9/a.js"; document.body.append(s);`},
	{"a script made of text", "script-src", `try { new Function("window.broken = 1")(); } catch {}`},
	{"a style in the page", "style-src-elem", `const s = document.createElement("style"); s.textContent = "body { color: red }"; document.body.append(s);`},
	{"a style in the markup", "style-src-attr", `document.body.setAttribute("style", "color: red"); document.body.removeAttribute("style");`},
	{"a fetch from elsewhere", "connect-src", `fetch("http://127.0.0.1:9/a").then(() => { window.broken = 1; }, () => {});`},
	{"a socket to elsewhere", "connect-src", `try { new WebSocket("ws://127.0.0.1:9/"); } catch {}`},
	{"a beacon to elsewhere", "connect-src", `navigator.sendBeacon("http://127.0.0.1:9/a", "x");`},
	{"a picture from elsewhere", "img-src", `new Image().src = "http://127.0.0.1:9/a.png";`},
	{"a frame", "frame-src", `const f = document.createElement("iframe"); f.src = "http://127.0.0.1:9/"; document.body.append(f); f.remove();`},
	{"a form sent elsewhere", "form-action", `const f = document.createElement("form"); f.action = "http://127.0.0.1:9/"; document.body.append(f); f.submit(); f.remove();`},
	{"another base for addresses", "base-uri", `const b = document.createElement("base"); b.href = "http://127.0.0.1:9/"; document.head.append(b); b.remove();`},
	{"a plug-in", "object-src", `const o = document.createElement("object"); o.data = "http://127.0.0.1:9/a"; document.body.append(o); o.remove();`},
}

// The policy refuses everything that the page has no need of.
func TestPolicyRefuses(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name, visit := range map[string]func(*browserTab){"hosted": (*browserTab).hosted, "carried": (*browserTab).carried} {
		t.Run(name, func(t *testing.T) {
			tab := h.tab(t)
			tab.forgive("Content Security Policy", "violates the following", "127.0.0.1:9")
			visit(tab)
			require.Empty(t, js[[]string](tab, `watched.refused`))
			for _, a := range attempts {
				no := false
				command(tab, runtime.Evaluate, runtime.EvaluateParams{
					Expression:                  "watched.refused.length = 0; { " + a.script + " }",
					AllowUnsafeEvalBlockedByCSP: &no,
				})
				tab.until(`watched.refused.length > 0`)
				require.Contains(t, js[string](tab, `watched.refused[0]`), a.directive+" ", a.what)
				require.False(t, js[bool](tab, `"broken" in window`), a.what)
			}
		})
	}
}
