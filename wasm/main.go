//go:build js && wasm

// Command wasm is the browser's door: it binds a catalogue.Desk to the global
// function pourwrightCall(name, optionsJSON, inputJSON) → replyJSON, calls
// pourwrightReady() once, and stays. Everything it answers is answered, and
// tested, in package catalogue.
package main

import (
	"runtime/debug"
	"syscall/js"
	"unsafe"

	"pourwright/calc/catalogue"
	"pourwright/calc/reply"
)

func main() {
	debug.SetGCPercent(800) // little lives on after a call; memory is cheaper than collecting often
	desk := new(catalogue.Desk)
	var text []byte
	js.Global().Set("pourwrightCall", js.FuncOf(func(_ js.Value, args []js.Value) any {
		text = reply.ASCII(text[:0], desk.Call(args[0].String(), []byte(args[1].String()), []byte(args[2].String())))
		return unsafe.String(unsafe.SliceData(text), len(text)) // which the browser copies before the next call
	}))
	js.Global().Call("pourwrightReady")
	select {}
}
