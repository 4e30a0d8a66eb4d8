package png

import (
	"fmt"
	"image"
	"image/color"
	"image/png"
	"io"
	"math"

	"golang.org/x/image/font/sfnt"

	"plumbrule/checker/draw/paper"
)

// DotsPerInch is the resolution where none is asked for.
const DotsPerInch = 150

// Write paints one sheet at a number of dots per inch. The error says that the
// letters cannot be read or that the writer failed.
func Write(w io.Writer, s *paper.Sheet, dotsPerInch int) error {
	const pointsPerInch = 72
	scale := float64(dotsPerInch) / pointsPerInch
	// Everything is a gray, and an image of grays is a third the size.
	img := image.NewGray(image.Rect(0, 0, int(math.Ceil(s.Width*scale)), int(math.Ceil(s.Height*scale))))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	c := &canvas{img: img, scale: scale}
	var err error
	if c.regular, err = sfnt.Parse(paper.RegularTTF()); err != nil {
		return fmt.Errorf("read the letters: %w", err)
	}
	if c.bold, err = sfnt.Parse(paper.BoldTTF()); err != nil {
		return fmt.Errorf("read the bold letters: %w", err)
	}
	for _, item := range s.Items {
		item.Draw(c)
	}
	encoder := png.Encoder{CompressionLevel: png.BestCompression}
	if err := encoder.Encode(w, img); err != nil {
		return fmt.Errorf("write the sheet %s: %w", s.Number, err)
	}
	return nil
}

type canvas struct {
	img           *image.Gray
	scale         float64
	regular, bold *sfnt.Font
	buffer        sfnt.Buffer
}

// Group implements paper.Canvas.
func (c *canvas) Group(_ string, draw func()) { draw() }

// Path implements paper.Canvas.
func (c *canvas) Path(p paper.Path) {
	points := make([]paper.Point, len(p.Points))
	for i, q := range p.Points {
		points[i] = paper.Point{X: q.X * c.scale, Y: q.Y * c.scale}
	}
	if gray, ok := p.Fill.Gray(); ok && len(points) > 2 {
		c.fill([][]paper.Point{points}, gray)
	}
	if pen := p.Stroke.Pen(); pen.Width > 0 && len(points) > 1 {
		width := max(pen.Width*c.scale, 0.8) // thinner lines would fade
		dash := make([]float64, len(pen.Dash))
		for i, d := range pen.Dash {
			dash[i] = d * c.scale
		}
		c.fill(outline(points, p.Closed, width, dash), pen.Ink.Gray())
	}
}

func shade(gray uint8) image.Image { return image.NewUniform(color.Gray{Y: gray}) }
