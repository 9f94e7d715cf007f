package browser

import (
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// save saves the open plan as a file, by the menu, and returns its name and
// content.
func (tab *browserTab) save() (name string, content []byte) {
	tab.t.Helper()
	dir := tab.t.TempDir()
	_, err := chromedp.CallBrowser(tab, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior:         browser.SetDownloadBehaviorBehaviorAllow,
		BrowserContextID: chromedp.FromContext(tab).BrowserContextID,
		DownloadPath:     dir,
	})
	require.NoError(tab.t, err)
	tab.click("[data-action=menu]")
	tab.until(`document.querySelector("#plan-menu:popover-open")`)
	tab.click("#plan-menu [data-action=save-file]")
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		files, err := filepath.Glob(filepath.Join(dir, "*.json"))
		require.NoError(tab.t, err)
		if len(files) == 1 {
			content, err := os.ReadFile(files[0])
			require.NoError(tab.t, err)
			if json.Valid(content) {
				return filepath.Base(files[0]), content
			}
		}
	}
	tab.t.Fatal("no file was saved")
	return "", nil
}

// load opens a plan file on the start page.
func (tab *browserTab) load(name string, content []byte) {
	tab.t.Helper()
	file := filepath.Join(tab.t.TempDir(), name)
	require.NoError(tab.t, os.WriteFile(file, content, 0o644))
	tab.until(`document.querySelector("[data-action=open-file]")`)
	input := run(tab, chromedp.Evaluate[*runtime.RemoteObject](`document.querySelector("[data-action=open-file]")`))
	command(tab, dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: []string{file}, ObjectID: input.ObjectID})
}

// kept is the open plan as the device keeps it.
func (tab *browserTab) kept() string {
	tab.t.Helper()
	tab.until(`document.querySelector("[data-saved=saved]")`)
	return tab.stored(tab.planAddress()[len("#/plan/"):])
}

// stored is a plan as it lies in the device's store.
func (tab *browserTab) stored(id string) string {
	tab.t.Helper()
	return js[string](tab, records+`("pourwright", "plans").then((all) => JSON.stringify(all.find((r) => r.id === %s).doc))`, id)
}

// records is a function of a database and a store on the device, to a promise of
// all that lies in it.
const records = `((database, store) => new Promise((done, failed) => {
	const opening = indexedDB.open(database);
	opening.onerror = failed;
	opening.onsuccess = () => {
		const asking = opening.result.transaction(store).objectStore(store).getAll();
		asking.onerror = failed;
		asking.onsuccess = () => { opening.result.close(); done(asking.result); };
	};
}))`

// entered is the example that was just opened, as its file has it: as it was,
// but with its unit behind every bare number.
func (tab *browserTab) entered(name string) map[string]any {
	tab.t.Helper()
	var out map[string]any
	_, file := tab.save()
	require.NoError(tab.t, json.Unmarshal(file, &out))
	var same func(was, is any, path string)
	same = func(was, is any, path string) {
		switch w := was.(type) {
		case map[string]any:
			i, ok := is.(map[string]any)
			require.True(tab.t, ok && len(i) == len(w), path)
			for key := range w {
				same(w[key], i[key], path+"."+key)
			}
		case []any:
			i, ok := is.([]any)
			require.True(tab.t, ok && len(i) == len(w), path)
			for n := range w {
				same(w[n], i[n], fmt.Sprint(path, "[", n, "]"))
			}
		default:
			require.True(tab.t, was == is || strings.HasPrefix(fmt.Sprint(is), fmt.Sprint(was)+" "), "%s was %v and is %v", path, was, is)
		}
	}
	same(any(examples(tab.t)[name]), any(out), name)
	return out
}

func asJSON(t *testing.T, v any) string {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	return string(text)
}

// What is saved as a file is the plan as it was entered, and it opens to the
// same in another place: from the hosted page to the one file and back.
func TestFileRoundTrip(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.hosted()
	tab.example(bracket)
	plan := tab.entered(bracket)
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "7 5/16 in")
	tab.fill("weight.solids[1].length", "12 blah")
	changed := with(t, with(t, plan, "weight.solids[0].length", "7 5/16 in"), "weight.solids[1].length", "12 blah")
	require.JSONEq(t, asJSON(t, changed), tab.kept())
	name, file := tab.save()
	require.Equal(t, "lamp-bracket-aluminium.pour.json", name)
	require.JSONEq(t, asJSON(t, changed), string(file))
	require.Greater(t, strings.Count(string(file), "\n"), 50, "the file is not for reading")

	other := h.tab(t)
	other.carried()
	other.click(`[data-units="us"]`)
	other.load(name, file)
	other.until(`document.querySelector("[data-part]")`)
	other.comes("us", changed)
	again, same := other.save()
	require.Equal(t, name, again)
	require.Equal(t, string(file), string(same))
}

// A file that is no plan is told and changes nothing.
func TestBrokenFileIsTold(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	before := tab.kept()
	tab.view("#/")
	for name, content := range map[string]string{"notes.json": `{"title": "cut o`, "list.json": `["a"]`, "picture.json": "\x89PNG\r\n", "empty.json": ""} {
		tab.load(name, []byte(content))
		tab.until(`document.querySelector("[data-notice=file] p")?.textContent.includes(%s)`, name)
		require.Contains(t, tab.texts("[data-notice=file] p")[0], "Nothing was changed")
		require.Equal(t, "#/", js[string](tab, `location.hash`))
		require.Len(t, tab.texts("[data-plan]"), 1)
		tab.click("[data-notice=file] button")
		tab.until(`!document.querySelector("[data-notice=file]")`)
	}
	tab.click("[data-plan] a")
	tab.until(`document.querySelector("[data-part]")`)
	require.Equal(t, before, tab.kept())
}

// What a plan file holds that this page does not know is named, counts for
// nothing in the answers, and goes back into the file.
func TestUnknownEntriesAreKept(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	plan := tab.entered(bracket)
	tab.view("#/")
	strange := maps.Clone(plan)
	strange["format"] = 7
	strange["colour"] = map[string]any{"of": "the shed"}
	weight := maps.Clone(strange["weight"].(map[string]any))
	weight["wobble"] = "3 mm"
	strange["weight"] = weight
	pour := maps.Clone(strange["pour"].(map[string]any))
	pour["vent_area"] = map[string]any{"here": "4 cm²"}
	strange["pour"] = pour

	tab.load("shed.pour.json", []byte(asJSON(t, strange)))
	tab.until(`document.querySelector("[data-part]")`)
	known := with(t, plan, "pour.vent_area", "")
	tab.comes("metric", known)
	require.Contains(t, tab.texts("[data-notice=newer] p")[0], "newer")
	require.ElementsMatch(t, []string{"colour", "weight.wobble", "pour.vent_area"}, tab.texts(".strange code"))
	tab.sheet("metal")
	tab.fill("metal.pour_temperature", "735 °C")
	tab.comes("metric", with(t, known, "metal.pour_temperature", "735 °C"))
	_, file := tab.save()
	require.JSONEq(t, asJSON(t, with(t, strange, "metal.pour_temperature", "735 °C")), string(file))
}
