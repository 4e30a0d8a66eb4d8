package png

import (
	"image"
	"image/draw"
	"math"

	"golang.org/x/image/vector"

	"plumbrule/checker/draw/paper"
)

// fill paints the union of areas, all of which run the same way round or do not
// overlap. Points are in dots.
func (c *canvas) fill(areas [][]paper.Point, gray uint8) {
	extent := paper.NoExtent()
	var inside [][]paper.Point
	for _, area := range areas {
		if area = c.clipped(area); len(area) > 2 {
			inside = append(inside, area)
			extent = extent.With(area...)
		}
	}
	if len(inside) == 0 {
		return
	}
	// Only the part of the image that the areas take is worked on.
	x, y := int(math.Floor(extent.Min.X))-1, int(math.Floor(extent.Min.Y))-1
	width, height := int(math.Ceil(extent.Max.X))+1-x, int(math.Ceil(extent.Max.Y))+1-y
	r := vector.NewRasterizer(width, height)
	for _, area := range inside {
		for i, p := range area {
			px, py := float32(p.X-float64(x)), float32(p.Y-float64(y))
			if i == 0 {
				r.MoveTo(px, py)
			} else {
				r.LineTo(px, py)
			}
		}
		r.ClosePath()
	}
	r.DrawOp = draw.Over
	r.Draw(c.img, image.Rect(x, y, x+width, y+height), shade(gray), image.Point{})
}

// clipped is the part of an area that lies on the image.
func (c *canvas) clipped(area []paper.Point) []paper.Point {
	size := c.img.Bounds().Size()
	width, height := float64(size.X), float64(size.Y)
	for _, beyond := range []func(paper.Point) float64{
		func(p paper.Point) float64 { return -p.X },
		func(p paper.Point) float64 { return p.X - width },
		func(p paper.Point) float64 { return -p.Y },
		func(p paper.Point) float64 { return p.Y - height },
	} {
		area = cutOff(area, beyond)
	}
	return area
}

// cutOff cuts off the part of an area beyond a line; beyond tells by how much a
// point lies there.
func cutOff(area []paper.Point, beyond func(paper.Point) float64) []paper.Point {
	var kept []paper.Point
	for i, b := range area {
		a := area[(i+len(area)-1)%len(area)]
		da, db := beyond(a), beyond(b)
		if da > 0 != (db > 0) {
			part := da / (da - db)
			kept = append(kept, paper.Point{X: a.X + (b.X-a.X)*part, Y: a.Y + (b.Y-a.Y)*part})
		}
		if db <= 0 {
			kept = append(kept, b)
		}
	}
	return kept
}

// outline is the area of a line of some width, piece by piece, all the same way
// round. Dash is nil for a full line.
func outline(points []paper.Point, closed bool, width float64, dash []float64) [][]paper.Point {
	if closed {
		points = append(points[:len(points):len(points)], points[0])
	}
	lines := [][]paper.Point{points}
	if len(dash) > 0 {
		lines = dashes(points, dash)
	}
	var areas [][]paper.Point
	for _, line := range lines {
		for i := 1; i < len(line); i++ {
			if bar := bar(line[i-1], line[i], width/2); bar != nil {
				areas = append(areas, bar)
			}
			if i+1 < len(line) || closed && len(dash) == 0 {
				areas = append(areas, disc(line[i], width/2))
			}
		}
	}
	return areas
}

func bar(a, b paper.Point, half float64) []paper.Point {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if length == 0 {
		return nil
	}
	nx, ny := -(b.Y-a.Y)/length*half, (b.X-a.X)/length*half
	return []paper.Point{a.Plus(nx, ny), a.Plus(-nx, -ny), b.Plus(-nx, -ny), b.Plus(nx, ny)}
}

// disc rounds a joint, running the way bars do.
func disc(center paper.Point, radius float64) []paper.Point {
	const sides = 12
	points := make([]paper.Point, sides)
	for i := range points {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / sides)
		points[i] = center.Plus(radius*cos, radius*sin)
	}
	return points
}

// dashes cuts a line into the lengths that are drawn.
func dashes(points []paper.Point, dash []float64) [][]paper.Point {
	var lines [][]paper.Point
	k, left := 0, dash[0]
	current := []paper.Point{points[0]}
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		length := math.Hypot(b.X-a.X, b.Y-a.Y)
		for done := 0.0; done < length; {
			step := min(left, length-done)
			done += step
			left -= step
			at := paper.Point{X: a.X + (b.X-a.X)*done/length, Y: a.Y + (b.Y-a.Y)*done/length}
			if k%2 == 0 {
				current = append(current, at)
			}
			if left <= 0 {
				if k%2 == 0 {
					lines = append(lines, current)
				}
				k++
				left = dash[k%len(dash)]
				current = []paper.Point{at}
			}
		}
	}
	if k%2 == 0 && len(current) > 1 {
		lines = append(lines, current)
	}
	return lines
}
