package main

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
	"pourwright/calc/quantity"
)

func shell(t *testing.T, in string, args ...string) (status int, out, wrong string) {
	t.Helper()
	var o, w bytes.Buffer
	status = run(context.Background(), args, strings.NewReader(in), &o, &w)
	return status, o.String(), w.String()
}

func TestMisuse(t *testing.T) {
	for _, args := range [][]string{
		{"-nonsense"}, {"surprise"}, {"build", "-nonsense"}, {"build", "surprise"},
		{"eval"}, {"eval", "-nonsense"}, {"eval", "no-such-calculator"}, {"eval", "list", "surprise"},
		{"eval", "list", "-units", "imperial"}, {"eval", "-list", "-units", "imperial"},
	} {
		status, out, wrong := shell(t, "{}", args...)
		require.Equal(t, misuse, status, args)
		require.Empty(t, out, args)
		require.NotEmpty(t, wrong, args)
	}
	status, _, wrong := shell(t, "", "-h")
	require.Equal(t, fine, status)
	require.Contains(t, wrong, "-port")
}

// What does not fit together is said, with status 1, not 0 and not silence.
func TestMachineRefuses(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	status, _, wrong := shell(t, "", "build", "-o", filepath.Join(file, "dist"))
	require.Equal(t, faulty, status)
	require.NotEmpty(t, wrong)
	status, _, wrong = shell(t, "", "-port", "70000", "-open=false")
	require.Equal(t, faulty, status)
	require.NotEmpty(t, wrong)
}

func TestEvalList(t *testing.T) {
	status, out, wrong := shell(t, "", "eval", "-list")
	require.Equal(t, fine, status)
	require.Empty(t, wrong)
	for _, c := range catalogue.All() {
		require.Contains(t, out, c.Name+": "+c.Title)
		for _, f := range c.Fields(quantity.Metric) {
			require.Contains(t, out, f.Key+": "+f.Label)
		}
	}
}

func TestEvalAnswers(t *testing.T) {
	status, out, wrong := shell(t, `{"kind":"length","text":"5' 3 1/2\""}`, "eval", "read", "-units", "us")
	require.Equal(t, fine, status, wrong)
	require.Empty(t, wrong)
	var r struct{ Keep, Shown string }
	require.NoError(t, json.Unmarshal([]byte(out), &r))
	require.Equal(t, `5' 3 1/2"`, r.Keep)
	require.Equal(t, "63.5 in", r.Shown)
	require.Contains(t, out, "\n  \"keep\"", "the answer is laid out for reading")
}

// Every calculator, asked nothing, names every field that it wants, with
// status 1 and nothing on the output.
func TestEvalNamesEveryBadField(t *testing.T) {
	for _, c := range catalogue.All() {
		if c.Name == "plan" || c.Name == "spread" || c.Name == "furnace" {
			continue // an empty plan is a plan
		}
		status, out, wrong := shell(t, `{"no_such_field": 1}`, "eval", c.Name)
		require.Equal(t, faulty, status, c.Name)
		require.Empty(t, out, c.Name)
		require.Contains(t, wrong, "no_such_field", c.Name)
		if c.Name != "tending" { // which wants nothing: a pour may begin unplanned
			require.Greater(t, strings.Count(wrong, "\n"), 1, "%s: %s", c.Name, wrong)
		}
	}
}

// A plan answers what it can; what is bad in it is named all the same.
func TestEvalPlan(t *testing.T) {
	example, err := os.ReadFile("testdata/plans/relief.pour.json")
	require.NoError(t, err)
	status, out, wrong := shell(t, string(example), "eval", "plan")
	require.Equal(t, fine, status, wrong)
	require.Empty(t, wrong)
	require.Contains(t, out, `"stations"`)
	status, out, wrong = shell(t, `{"title":"Plaque","pour":{"wall":"wide"},"zeal":1}`, "eval", "plan")
	require.Equal(t, faulty, status)
	require.Contains(t, out, `"stations"`)
	require.Contains(t, wrong, "pour.wall")
	require.Contains(t, wrong, "zeal")
	status, out, wrong = shell(t, `{"title":"Plaque","zeal":1}`, "eval", "furnace")
	require.Equal(t, faulty, status)
	require.Contains(t, out, `"furnace"`)
	require.Contains(t, wrong, "zeal")
}

func TestBuildAndServe(t *testing.T) {
	dir := t.TempDir()
	status, out, wrong := shell(t, "", "build", "-o", dir)
	require.Equal(t, fine, status, wrong)
	require.Contains(t, out, "pourwright.html")

	ctx, stop := context.WithCancel(context.Background())
	read, write := io.Pipe()
	ended := make(chan int)
	go func() { ended <- run(ctx, []string{"-open=false"}, nil, write, write) }()
	said := make([]byte, 200)
	n, err := read.Read(said)
	require.NoError(t, err)
	address := strings.TrimSpace(string(said[:n]))
	require.Regexp(t, `^http://127\.0\.0\.1:\d+/$`, address)
	for _, name := range []string{"index.html", "pourwright.html"} {
		onDisk, err := os.ReadFile(filepath.Join(dir, name))
		require.NoError(t, err)
		response, err := http.Get(address + name)
		require.NoError(t, err)
		defer response.Body.Close()
		served, err := io.ReadAll(response.Body)
		require.NoError(t, err)
		require.True(t, bytes.Equal(onDisk, served), name)
	}
	stop()
	require.Equal(t, fine, <-ended)
}
