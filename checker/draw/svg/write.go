package svg

import (
	"bufio"
	"encoding/xml"
	"fmt"
	"hash/fnv"
	"io"
	"strconv"
	"strings"

	"plumbrule/checker/draw/paper"
)

// family lists the letters that words were measured in, and what comes near.
const family = "Go, 'Helvetica Neue', Helvetica, Arial, sans-serif"

// perInch is the number of points in an inch.
const perInch = 72

// Write writes one sheet. The error is the writer's.
func Write(w io.Writer, s *paper.Sheet) error {
	out := &writer{w: bufio.NewWriter(w)}
	id, err := identifier(s)
	if err != nil {
		return err
	}
	out.printf("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"%s-title %s-about\" width=\"%sin\" height=\"%sin\" viewBox=\"0 0 %s %s\">\n",
		id, id, number(s.Width/perInch), number(s.Height/perInch), number(s.Width), number(s.Height))
	out.printf("<title id=\"%s-title\">%s</title>\n<desc id=\"%s-about\">%s</desc>\n", id, escape(s.Number+": "+s.Name), id, escape(s.About))
	out.printf("<rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>\n", number(s.Width), number(s.Height))
	out.printf("<g fill=\"none\" stroke-linejoin=\"round\" font-family=\"%s\">\n", family)
	for _, item := range s.Items {
		item.Draw(out)
	}
	out.printf("</g>\n</svg>\n")
	if err := out.w.Flush(); err != nil {
		return fmt.Errorf("write the sheet %s: %w", s.Number, err)
	}
	return nil
}

// identifier is a name for the sheet's title and description that differs from
// that of any other sheet, so that several can stand in one page: the name of
// its file with a number worked out from all that is on it.
func identifier(s *paper.Sheet) (string, error) {
	sum := fnv.New64a()
	content := &writer{w: bufio.NewWriter(sum)}
	content.printf("%s\n%s\n%s\n", s.Job, s.Name, s.About)
	for _, item := range s.Items {
		item.Draw(content)
	}
	if err := content.w.Flush(); err != nil {
		return "", fmt.Errorf("number the sheet %s: %w", s.Number, err)
	}
	return fmt.Sprintf("sheet-%s-%016x", s.File, sum.Sum64()), nil
}

// writer is a canvas that writes elements. Errors stay in the buffered writer
// until it is flushed.
type writer struct {
	w *bufio.Writer
}

func (w *writer) printf(format string, args ...any) { fmt.Fprintf(w.w, format, args...) }

// Group implements paper.Canvas.
func (w *writer) Group(kind string, draw func()) {
	w.printf("<g class=\"%s\">\n", escape(kind))
	draw()
	w.printf("</g>\n")
}

// Path implements paper.Canvas.
func (w *writer) Path(p paper.Path) {
	if len(p.Points) < 2 {
		return
	}
	w.printf("<path d=\"M%s", place(p.Points[0]))
	for _, q := range p.Points[1:] {
		w.printf("L%s", place(q))
	}
	if p.Closed {
		w.printf("Z")
	}
	w.printf("\"")
	if gray, ok := p.Fill.Gray(); ok {
		w.printf(" fill=\"%s\"", color(gray))
	}
	if pen := p.Stroke.Pen(); pen.Width > 0 {
		w.printf(" stroke=\"%s\" stroke-width=\"%s\"", color(pen.Ink.Gray()), number(pen.Width))
		if pen.Dash != nil {
			dashes := make([]string, len(pen.Dash))
			for i, d := range pen.Dash {
				dashes[i] = number(d)
			}
			w.printf(" stroke-dasharray=\"%s\"", strings.Join(dashes, " "))
		}
	}
	w.printf("/>\n")
}

// Text implements paper.Canvas.
func (w *writer) Text(t paper.Text) {
	if t.Words == "" {
		return
	}
	w.printf("<text x=\"%s\" y=\"%s\" font-size=\"%s\" fill=\"%s\"", number(t.At.X), number(t.At.Y), number(t.Size), color(t.Ink.Gray()))
	if t.Bold {
		w.printf(" font-weight=\"700\"")
	}
	switch t.Align {
	case paper.Middle:
		w.printf(" text-anchor=\"middle\"")
	case paper.Right:
		w.printf(" text-anchor=\"end\"")
	}
	if t.Turn != 0 {
		w.printf(" transform=\"rotate(%s %s)\"", number(-t.Turn), place(t.At))
	}
	if t.Width > 0 {
		w.printf(" textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\"", number(t.Width))
	}
	w.printf(">%s</text>\n", escape(t.Words))
}

func place(p paper.Point) string { return number(p.X) + " " + number(p.Y) }

// number prints to a hundredth of a point, without zeros at the end: finer than
// any printer, and coarse enough for the last bits of a float not to show.
func number(v float64) string {
	text := strings.TrimRight(strings.TrimRight(strconv.FormatFloat(v, 'f', 2, 64), "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

func color(gray uint8) string { return fmt.Sprintf("#%02x%02x%02x", gray, gray, gray) }

// escape writes words as character data, also fit for an attribute.
func escape(words string) string {
	var b strings.Builder
	if err := xml.EscapeText(&b, []byte(words)); err != nil {
		return "" // a strings.Builder takes everything
	}
	return b.String()
}
