package paper

import (
	"fmt"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Fonts are the letters of all drawings, the Go fonts. Every format measures
// with them, so that words take the same room in each.
type Fonts struct {
	regular, bold *sfnt.Font
	buffer        sfnt.Buffer
	widths        map[widthKey]float64
}

type widthKey struct {
	r    rune
	bold bool
}

// OpenFonts reads the letters. Fonts are not for use by several at once.
func OpenFonts() (*Fonts, error) {
	regular, err := sfnt.Parse(RegularTTF())
	if err != nil {
		return nil, fmt.Errorf("read the letters: %w", err)
	}
	bold, err := sfnt.Parse(BoldTTF())
	if err != nil {
		return nil, fmt.Errorf("read the bold letters: %w", err)
	}
	return &Fonts{regular: regular, bold: bold, widths: map[widthKey]float64{}}, nil
}

// RegularTTF and BoldTTF are the font files, for formats that embed them. They
// must not be changed.
func RegularTTF() []byte { return goregular.TTF }

// BoldTTF is the file of the bold letters.
func BoldTTF() []byte { return gobold.TTF }

// Text is a line of words with its width measured.
func (f *Fonts) Text(words string, size float64) Text {
	words = Printable(words)
	return Text{Words: words, Size: size, Width: f.Width(words, size, false)}
}

// BoldText is the same in bold.
func (f *Fonts) BoldText(words string, size float64) Text {
	words = Printable(words)
	return Text{Words: words, Size: size, Bold: true, Width: f.Width(words, size, true)}
}

// Width is what the words measure, in points.
func (f *Fonts) Width(words string, size float64, bold bool) float64 {
	sum := 0.0
	for _, r := range words {
		sum += f.advance(r, bold)
	}
	return sum * size
}

// advance is the width of a letter of size one.
func (f *Fonts) advance(r rune, bold bool) float64 {
	key := widthKey{r, bold}
	if w, ok := f.widths[key]; ok {
		return w
	}
	face := f.regular
	if bold {
		face = f.bold
	}
	const ppem = 1000
	w := 1.0 // a letter that the font lacks, as a square
	if i, err := face.GlyphIndex(&f.buffer, r); err == nil && i != 0 {
		if a, err := face.GlyphAdvance(&f.buffer, i, fixed.I(ppem), font.HintingNone); err == nil {
			w = float64(a) / 64 / ppem
		}
	}
	f.widths[key] = w
	return w
}

// Has reports whether the fonts have a letter.
func (f *Fonts) Has(r rune) bool {
	i, err := f.regular.GlyphIndex(&f.buffer, r)
	return err == nil && i != 0
}

// Printable replaces what cannot stand on a line of print by a space.
func Printable(words string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r >= 0x7f && r < 0xa0 || r == 0x2028 || r == 0x2029 || r == 0xfffe || r == 0xffff || r == 0xfeff {
			return ' '
		}
		return r
	}, words)
}

// Wrap breaks words into lines of at most width points. A word that is too long
// is broken where it has to be.
func (f *Fonts) Wrap(words string, size, width float64, bold bool) []string {
	var lines []string
	line := ""
	flush := func() {
		if line != "" {
			lines = append(lines, line)
			line = ""
		}
	}
	for _, word := range strings.Fields(Printable(words)) {
		if line != "" && f.Width(line+" "+word, size, bold) <= width {
			line += " " + word
			continue
		}
		flush()
		for f.Width(word, size, bold) > width {
			n := f.fitting(word, size, width, bold)
			lines = append(lines, word[:n])
			word = word[n:]
		}
		line = word
	}
	flush()
	return lines
}

// fitting is how many bytes of a word fit, at least one letter.
func (f *Fonts) fitting(word string, size, width float64, bold bool) int {
	sum := 0.0
	for i, r := range word {
		sum += f.advance(r, bold) * size
		if sum > width && i > 0 {
			return i
		}
	}
	return len(word)
}
