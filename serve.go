// Command pourwright is the shell's door: it builds the site and serves it on
// this machine, writes it to a folder, or runs one calculator.
//
//	go run .                              build, serve and open in the browser
//	go run . -port 8080 -open=false       the same at a fixed port, without opening
//	go run . build -o dist                write the static site and pourwright.html
//	go run . eval -list                   every calculator and its fields
//	go run . eval NAME [-units us] [-working] < in.json
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"os/signal"
	"runtime"

	"pourwright/site"
)

// The exit statuses.
const (
	fine   = 0
	faulty = 1 // something is wrong with what was given, or the machine refused
	misuse = 2 // the call is not understood, or answering it failed by our own bug
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	status := run(ctx, os.Args[1:], os.Stdin, os.Stdout, os.Stderr)
	stop()
	os.Exit(status)
}

func run(ctx context.Context, args []string, in io.Reader, out, wrong io.Writer) int {
	if len(args) > 0 {
		switch args[0] {
		case "build":
			return build(args[1:], out, wrong)
		case "eval":
			return eval(args[1:], in, out, wrong)
		}
	}
	return serve(ctx, args, out, wrong)
}

// parse reads flags; it reports a status to end with, or false to go on.
func parse(flags *flag.FlagSet, args []string, wrong io.Writer) (status int, end bool) {
	flags.SetOutput(wrong)
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return fine, true
	case err != nil:
		return misuse, true
	case flags.NArg() > 0:
		fmt.Fprintf(wrong, "%q is not understood here\n", flags.Arg(0))
		return misuse, true
	}
	return fine, false
}

func serve(ctx context.Context, args []string, out, wrong io.Writer) int {
	flags := flag.NewFlagSet("pourwright", flag.ContinueOnError)
	port := flags.Int("port", 0, "`port` to serve at; 0 takes a free one")
	open := flags.Bool("open", true, "open the page in the browser")
	if status, end := parse(flags, args, wrong); end {
		return status
	}
	listener, err := net.Listen("tcp", fmt.Sprintf("127.0.0.1:%d", *port))
	if err != nil {
		return fail(wrong, err)
	}
	defer listener.Close()
	handler, err := site.Handler()
	if err != nil {
		return fail(wrong, err)
	}
	address := "http://" + listener.Addr().String() + "/"
	fmt.Fprintln(out, address)
	if *open {
		openBrowser(address)
	}
	server := &http.Server{Handler: handler}
	context.AfterFunc(ctx, func() { server.Close() })
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return fail(wrong, err)
	}
	return fine
}

func build(args []string, out, wrong io.Writer) int {
	flags := flag.NewFlagSet("build", flag.ContinueOnError)
	dir := flags.String("o", "dist", "`folder` to write to")
	if status, end := parse(flags, args, wrong); end {
		return status
	}
	files, err := site.Build()
	if err != nil {
		return fail(wrong, err)
	}
	if err := files.Write(*dir); err != nil {
		return fail(wrong, err)
	}
	fmt.Fprintf(out, "%d files in %s; %s is the whole of it in one file, %.1f MB\n",
		len(files), *dir, site.Carried, float64(len(files[site.Carried]))/1e6)
	return fine
}

func fail(wrong io.Writer, err error) int {
	fmt.Fprintln(wrong, err)
	return faulty
}

// openBrowser asks the desktop to show the page. Where there is no desktop
// nothing happens; the address has been printed.
func openBrowser(address string) {
	name, args := "xdg-open", []string{address}
	switch runtime.GOOS {
	case "darwin":
		name = "open"
	case "windows":
		name, args = "rundll32", []string{"url.dll,FileProtocolHandler", address}
	}
	if cmd := exec.Command(name, args...); cmd.Start() == nil {
		go cmd.Wait() // so that it does not linger
	}
}
