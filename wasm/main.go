//go:build js && wasm

// Command wasm is the browser's door: it binds catalogue.Call to the global
// function pourwrightCall(name, optionsJSON, inputJSON) → replyJSON, calls
// pourwrightReady() once, and stays. Everything it answers is answered, and
// tested, in package catalogue.
package main

import (
	"syscall/js"

	"pourwright/calc/catalogue"
)

func main() {
	js.Global().Set("pourwrightCall", js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(catalogue.Call(args[0].String(), []byte(args[1].String()), []byte(args[2].String())))
	}))
	js.Global().Call("pourwrightReady")
	select {}
}
