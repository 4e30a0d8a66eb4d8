package source

import (
	"bytes"
	"fmt"
	"unicode/utf8"
)

const bom = "\ufeff"

// bomLength gives the length in bytes of a UTF-8 byte order mark at the start
// of a file.
func bomLength(data []byte) int {
	if bytes.HasPrefix(data, []byte(bom)) {
		return len(bom)
	}
	return 0
}

// checkText refuses what is wrong in either format and would be reported badly,
// or not at all, by the libraries: files of another kind, size, encoding,
// control characters, no content.
func (r *reader) checkText() *Error {
	if refused := r.checkKind(); refused != nil {
		return refused
	}
	for i := r.starts[0]; i < len(r.data); {
		c, size := utf8.DecodeRune(r.data[i:])
		switch {
		case c == utf8.RuneError && size == 1:
			return r.refuse(i, i+1, "save the file as UTF-8",
				"the byte 0x%02X is not UTF-8 text", r.data[i])
		case c == 0:
			return r.refuse(i, i+1, "delete it", "a NUL byte in the text")
		case c < ' ' && c != '\t' && !isBreak(byte(c)):
			return r.refuse(i, i+1, "delete it", "a control character (%U) in the text", c)
		}
		i += size
	}
	if r.skipSpace(r.starts[0]) == len(r.data) {
		return r.refuseFile("", "the file is empty")
	}
	return nil
}

// checkYAMLText refuses characters about which YAML's editions disagree: 1.1
// takes the first three for line breaks, 1.2 does not.
func (r *reader) checkYAMLText() *Error {
	for i := r.starts[0]; i < len(r.data); {
		c, size := utf8.DecodeRune(r.data[i:])
		switch c {
		case '\u0085', '\u2028', '\u2029':
			return r.refuse(i, i+size, fmt.Sprintf(`use an ordinary line break, or write \u%04x inside double quotes`, c),
				"an invisible line separator (%U)", c)
		case '\ufeff':
			return r.refuse(i, i+size, "delete it", "a byte order mark (U+FEFF) inside the text")
		case '\ufffe', '\uffff':
			return r.refuse(i, i+size, "delete it", "%U is not a character", c)
		}
		i += size
	}
	return nil
}

// quote puts text into a message, shortened and with its line breaks escaped.
func quote(text string) string {
	return fmt.Sprintf("%q", clip(text))
}

// clip shortens text that is too long for a message.
func clip(text string) string {
	const most = 40
	n := 0
	for i := range text {
		if n == most {
			return text[:i] + "…"
		}
		n++
	}
	return text
}
