package site

import (
	"encoding/json"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// bundle makes one minified file of the module or style sheet at entry and all
// that it imports. The constants are put in for names in the source;
// "go-wasm-exec" imports the toolchain's runtime glue.
func bundle(entry string, format api.Format, constants map[string]any) ([]byte, error) {
	goroot, err := goCommand("", "env", "GOROOT")
	if err != nil {
		return nil, err
	}
	define := map[string]string{}
	for name, value := range constants {
		text, err := json.Marshal(value)
		if err != nil {
			return nil, err
		}
		define[name] = string(text)
	}
	result := api.Build(api.BuildOptions{
		EntryPoints:       []string{entry},
		Bundle:            true,
		Format:            format,
		Target:            api.ES2022,
		MinifyWhitespace:  true,
		MinifyIdentifiers: true,
		MinifySyntax:      true,
		Charset:           api.CharsetUTF8,
		LegalComments:     api.LegalCommentsNone,
		Define:            define,
		Alias:             map[string]string{"go-wasm-exec": filepath.Join(goroot, "lib", "wasm", "wasm_exec.js")},
	})
	if len(result.Errors) > 0 {
		lines := api.FormatMessages(result.Errors, api.FormatMessagesOptions{})
		return nil, fmt.Errorf("bundling %s:\n%s", filepath.Base(entry), strings.Join(lines, ""))
	}
	return result.OutputFiles[0].Contents, nil
}
