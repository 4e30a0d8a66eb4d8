package source

import (
	"errors"
	"strings"
	"testing"
)

// broken is a file that cannot be read, with the error it must give.
type broken struct {
	text string
	want string // "line:column message", or "- message" of the file as a whole
	span string // the bytes that the span holds
	hint string // part of the hint
}

func (b broken) check(t *testing.T, name string) {
	t.Helper()
	doc, err := Read(name, []byte(b.text))
	if err == nil {
		t.Fatalf("%q was read as %s", b.text, sketch(doc.Root))
	}
	var e *Error
	if !errors.As(err, &e) {
		t.Fatalf("%q gives a %T", b.text, err)
	}
	if doc != nil {
		t.Errorf("%q gives both a document and an error", b.text)
	}
	place, message, _ := strings.Cut(b.want, " ")
	if got, want := e.Error(), strings.TrimSuffix(name+":"+place, ":-")+": "+message; got != want {
		t.Errorf("%.200q\n got %s\nwant %s", b.text, got, want)
	}
	if got := b.text[e.Span.Start.Offset:e.Span.End.Offset]; got != b.span {
		t.Errorf("%q: the span holds %q, want %q", b.text, got, b.span)
	}
	if !strings.Contains(e.Hint, b.hint) || (b.hint == "") != (e.Hint == "") {
		t.Errorf("%q: the hint is %q, want %q", b.text, e.Hint, b.hint)
	}
	checkError(t, e, []byte(b.text))
}

// checkError holds what is true of every error that Read returns.
func checkError(tb testing.TB, e *Error, data []byte) {
	tb.Helper()
	if e.Span == (Span{}) {
		if e.Source != "" {
			tb.Fatalf("%v: a line of the file is shown: %q", e, e.Source)
		}
		return
	}
	l := newLayout(data, bomLength(data))
	for _, p := range []Position{e.Span.Start, e.Span.End} {
		if p != l.position(p.Offset) {
			tb.Fatalf("%v: the place %+v is not one of the file", e, p)
		}
	}
	if e.Span.End.Offset < e.Span.Start.Offset {
		tb.Fatalf("%v: the span runs backwards: %+v", e, e.Span)
	}
	if e.Source != l.line(e.Span.Start.Line) {
		tb.Fatalf("%v: the source line is %q", e, e.Source)
	}
	if e.Message == "" || strings.ContainsAny(e.Message+e.Hint, "\r\n") {
		tb.Fatalf("%q is not one line", e.Message)
	}
}

func TestBrokenText(t *testing.T) {
	for _, b := range []broken{
		{"", "- the file is empty", "", ""},
		{" \n\t\n", "- the file is empty", "", ""},
		{"\ufeff", "- the file is empty", "", ""},
		{"\ufeff\n", "- the file is empty", "", ""},
		{"a: 1\nb: é\x00y\n", "2:5 a NUL byte in the text", "\x00", "delete"},
		{"a: 1\nb: x\x1by\n", "2:5 a control character (U+001B) in the text", "\x1b", "delete"},
		{"a: 1\nb: caf\xe9\n", "2:7 the byte 0xE9 is not UTF-8 text", "\xe9", "UTF-8"},
		{"\xff\xfea\x00:\x00", "- the file is written in UTF-16 (little endian)", "", "save it as UTF-8"},
		{"\xfe\xff\x00a\x00:", "- the file is written in UTF-16 (big endian)", "", "save it as UTF-8"},
		{"a\x00:\x00", "- the file is written in UTF-16 (little endian)", "", "save it as UTF-8"},
		{"\x00a\x00:", "- the file is written in UTF-16 (big endian)", "", "save it as UTF-8"},
	} {
		for _, name := range []string{"t.yaml", "t.json", "-"} {
			b.check(t, name)
		}
	}
}

// TestOtherFiles names what is handed over by mistake, and shows nothing of it.
func TestOtherFiles(t *testing.T) {
	const rest = "\x01\x02secret\x03\x04\x05"
	for begin, kind := range map[string]string{
		"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n":        "a PDF",
		"\r\n%PDF-1.7\n":                       "a PDF",
		"\x89PNG\r\n\x1a\n":                    "a PNG image",
		"\xff\xd8\xff\xe0\x00\x10JFIF\x00":     "a JPEG image",
		"PK\x03\x04\x14\x00":                   "a ZIP archive or an office document",
		"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1":     "an office document",
		"AC1032\x00\x00":                       "a DWG drawing",
		"\x00\x00\x00\x18ftypheic":             "a picture or film",
		"BM\x8a\x00\x00\x00\x00\x00":           "a BMP image",
		"<!DOCTYPE html>\n<html>":              "an HTML page",
		"\ufeff<?xml version=\"1.0\"?>\n<svg>": "an XML file",
		"{\\rtf1\\ansi ":                       "an RTF document",
		"\x01\x02\x00\x00abc":                  "a binary file",
	} {
		want := "- this is " + kind + ", not a YAML or JSON description"
		for _, name := range []string{"t.yaml", "t.json", "-"} {
			broken{begin + rest, want, "", "plain text"}.check(t, name)
			broken{begin + strings.Repeat(rest, MaxBytes/8), want, "", "plain text"}.check(t, name) // whatever its size
		}
	}
	for _, text := range []string{"BM: the beam\n", "MZ: 1\n", "AC: 10\n", "RIF: 1\n"} {
		mustRead(t, "t.yaml", text)
	}
	broken{"\xff\xfe\x00\x00a\x00\x00\x00", "- the file is written in UTF-32", "", "save it as UTF-8"}.check(t, "-")
	// Text in an old encoding is text, and the place of its first odd byte is known.
	broken{"a: 1\nb: " + strings.Repeat("\xe9", 300), "2:4 the byte 0xE9 is not UTF-8 text", "\xe9", "UTF-8"}.check(t, "t.yaml")
}

func TestLimits(t *testing.T) {
	large := "a: " + strings.Repeat("x", MaxBytes-3)
	mustRead(t, "t.yaml", large)
	broken{large + "x", "- the file is larger than 1 MiB, the most that is read", "", "right file"}.check(t, "t.yaml")

	for _, c := range []struct{ name, open, close, place string }{
		{"t.json", "[", "]", "1:65"},
		{"t.yaml", "[", "]", "1:65"},
		{"t.json", `{"a":`, "}", "1:321"},
		{"t.yaml", `{a: `, "}", "1:257"},
		{"t.yaml", "- ", "", "1:129"},
	} {
		nest := func(n int) string {
			return strings.Repeat(c.open, n) + "1" + strings.Repeat(c.close, n)
		}
		checkTree(t, mustRead(t, c.name, nest(MaxDepth)), c.name[1:])
		for _, deep := range []int{MaxDepth + 1, 10 * MaxDepth, 100_000} {
			text := nest(deep)
			broken{text, c.place + " nested more than 64 deep", c.open[:1], ""}.check(t, c.name)
		}
	}
}
