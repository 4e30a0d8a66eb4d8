package source

import (
	"bytes"
	"fmt"
)

// signature is how files of a kind begin.
type signature struct {
	begin string
	kind  string // with its article
	text  bool   // white space may stand before it, and its letters are of either case
}

// signatures are those of files that are handed over by mistake for a
// description: what drawings, letters and pictures come in. Those of one
// beginning stand from the longest to the shortest.
func signatures() []signature {
	return []signature{
		{begin: "%PDF-", kind: "a PDF", text: true},
		{begin: "%!PS", kind: "a PostScript file"},
		{begin: "\x89PNG\r\n", kind: "a PNG image"},
		{begin: "\xFF\xD8\xFF", kind: "a JPEG image"},
		{begin: "GIF8", kind: "a GIF image"},
		{begin: "BM", kind: "a BMP image"},
		{begin: "II*\x00", kind: "a TIFF image"},
		{begin: "MM\x00*", kind: "a TIFF image"},
		{begin: "RIFF", kind: "a picture, sound or film"},
		{begin: "\x00\x00\x00\x18ftyp", kind: "a picture or film"},
		{begin: "\x00\x00\x00\x1Cftyp", kind: "a picture or film"},
		{begin: "\x00\x00\x00\x20ftyp", kind: "a picture or film"},
		{begin: "PK\x03\x04", kind: "a ZIP archive or an office document"},
		{begin: "\xD0\xCF\x11\xE0", kind: "an office document"},
		{begin: "\x1F\x8B", kind: "a gzip archive"},
		{begin: "7z\xBC\xAF", kind: "a 7z archive"},
		{begin: "AC10", kind: "a DWG drawing"},
		{begin: "\xFF\xFE\xFF\x0E", kind: "a 3D model"},
		{begin: "\x7FELF", kind: "a program"},
		{begin: "MZ", kind: "a program"},
		{begin: `{\rtf`, kind: "an RTF document"},
		{begin: "<!doctype html", kind: "an HTML page", text: true},
		{begin: "<html", kind: "an HTML page", text: true},
		{begin: "<svg", kind: "an SVG drawing", text: true},
		{begin: "<?xml", kind: "an XML file", text: true},
	}
}

// looksLike says what kind of file this is, where it is none that a description
// could be in, and "" for text.
func looksLike(data []byte) string {
	shown := bytes.ToLower(bytes.TrimLeft(bytes.TrimPrefix(data[:min(len(data), 512)], []byte(bom)), " \t\r\n"))
	for _, s := range signatures() {
		switch {
		case s.text && bytes.HasPrefix(shown, bytes.ToLower([]byte(s.begin))):
			return s.kind
		case s.text || !bytes.HasPrefix(data, []byte(s.begin)):
		case len(s.begin) > 2 || binary(data): // two letters begin many a text
			return s.kind
		}
	}
	if wideKind(data) == "" && binary(data) {
		return "a binary file"
	}
	return ""
}

// binary tells from its first bytes what no editor of text has written: more
// than a stray control character here and there. Bytes above 127 are no sign of
// it, since text in old encodings is full of them, nor is DEL, which both formats
// allow: whatever is counted here would be refused one by one as well.
func binary(data []byte) bool {
	const least, share = 4, 20
	head := data[:min(len(data), 1024)]
	n := 0
	for _, b := range head {
		if b < ' ' && b != '\t' && b != '\f' && !isBreak(b) {
			n++
		}
	}
	return n >= least && n*share >= len(head)
}

// wideKind names an encoding of two or four bytes to a character, or gives ""
// for anything else. Without a byte order mark, such text shows by a NUL in
// every other of its first bytes.
func wideKind(data []byte) string {
	switch {
	case bytes.HasPrefix(data, []byte{0xFF, 0xFE, 0, 0}), bytes.HasPrefix(data, []byte{0, 0, 0xFE, 0xFF}):
		return "UTF-32"
	case bytes.HasPrefix(data, []byte{0xFF, 0xFE}), everyOther(data, 1):
		return "UTF-16 (little endian)"
	case bytes.HasPrefix(data, []byte{0xFE, 0xFF}), everyOther(data, 0):
		return "UTF-16 (big endian)"
	}
	return ""
}

// everyOther reports whether of the first bytes those at the even places (0) or
// the odd ones (1) are NUL and the others are not.
func everyOther(data []byte, at int) bool {
	const looked = 8
	for i := range min(len(data), looked) {
		if (data[i] == 0) != (i%2 == at) {
			return false
		}
	}
	return len(data) >= 2
}

// refuseFile makes the error for a file as a whole: it has no place in the text,
// and no line of it is worth showing.
func (r *reader) refuseFile(hint, format string, args ...any) *Error {
	return &Error{Name: r.name, Message: fmt.Sprintf(format, args...), Hint: hint}
}

// checkKind refuses files that are no text, are in an encoding that is not read,
// or are too large, without a look at what they hold.
func (r *reader) checkKind() *Error {
	if kind := looksLike(r.data); kind != "" {
		return r.refuseFile("a description is plain text, typed from what the drawing shows", "this is %s, not a YAML or JSON description", kind)
	}
	if kind := wideKind(r.data); kind != "" {
		return r.refuseFile("save it as UTF-8", "the file is written in %s", kind)
	}
	if len(r.data) > MaxBytes {
		return r.refuseFile("a description takes a few kilobytes; is this the right file?",
			"the file is larger than 1 MiB, the most that is read")
	}
	return nil
}
