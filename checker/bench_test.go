package checker_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/draw"
)

func design(b *testing.B, name string) checker.Input {
	b.Helper()
	data, err := os.ReadFile("../fixtures/designs/" + name + ".deck.yaml")
	if err != nil {
		b.Fatal(err)
	}
	return checker.Input{Name: name + ".deck.yaml", Data: data}
}

func newChecker(b *testing.B) *checker.Checker {
	b.Helper()
	c, err := checker.New(checker.Options{})
	if err != nil {
		b.Fatal(err)
	}
	return c
}

// BenchmarkColdStart is all that happens before the first design is read.
func BenchmarkColdStart(b *testing.B) {
	for b.Loop() {
		newChecker(b)
	}
}

func BenchmarkOneDesign(b *testing.B) {
	for _, name := range []string{"karaka-bay", "alder-lane", "ketch-point", "quarry-hill"} {
		b.Run(name, func(b *testing.B) {
			c, in := newChecker(b), design(b, name)
			for b.Loop() {
				c.Check(context.Background(), in)
			}
		})
	}
}

func BenchmarkThousandDesigns(b *testing.B) {
	c := newChecker(b)
	var inputs []checker.Input
	for range 250 {
		for _, name := range []string{"karaka-bay", "alder-lane", "ketch-point", "quarry-hill"} {
			inputs = append(inputs, design(b, name))
		}
	}
	for b.Loop() {
		c.Check(context.Background(), inputs...)
	}
	b.ReportMetric(float64(b.Elapsed().Milliseconds())/float64(b.N*len(inputs)), "ms/design")
}

// BenchmarkCompare is what a comparison of two revisions takes, beside the check
// of one of them.
func BenchmarkCompare(b *testing.B) {
	was, is := revision(b, "before"), revision(b, "after")
	b.Run("one", func(b *testing.B) {
		c := newChecker(b)
		for b.Loop() {
			c.Check(context.Background(), is)
		}
	})
	b.Run("both", func(b *testing.B) {
		c := newChecker(b)
		for b.Loop() {
			c.Compare(context.Background(), was, is)
		}
	})
}

func revision(b *testing.B, name string) checker.Input {
	b.Helper()
	data, err := os.ReadFile("../fixtures/compare/" + name + ".deck.yaml")
	if err != nil {
		b.Fatal(err)
	}
	return checker.Input{Name: name + ".deck.yaml", Data: data}
}

// BenchmarkPacket checks and draws each of the sample designs.
func BenchmarkPacket(b *testing.B) {
	c := newChecker(b)
	perDesign(b, func(in checker.Input) bool {
		p, _, err := c.Packet(context.Background(), in, checker.PacketOptions{})
		return err == nil && p != nil
	})
}

// BenchmarkMembers checks designs with more and more stairs and platforms; the
// time for each should stay level.
func BenchmarkMembers(b *testing.B) {
	c := newChecker(b)
	for _, n := range []int{1, 10, 100} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			in := checker.Input{Name: "many.deck.yaml", Data: many(n)}
			for b.Loop() {
				c.Check(context.Background(), in)
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*n), "µs/member")
		})
	}
}

func many(n int) []byte {
	var text bytes.Buffer
	text.WriteString("deck: 1\nsite: {live_load: 40 psf, ground_snow_load: 20 psf}\nplatforms:\n")
	for i := range n {
		fmt.Fprintf(&text, "  - {mark: P%d, support: freestanding, measured_to: frame, outline: {along_house: 12 ft, out_from_house: 10 ft}, "+
			"joists: {size: 2x8, direction: out_from_house, layout: on_center, spacing: 16 in}, "+
			"beams: [{mark: B, size: 2x10, plies: 2, kind: dropped, from_house: 1 ft, posts_at: [1 ft, 6 ft, 11 ft]}, {mark: C, size: 2x10, plies: 2, kind: dropped, from_house: 9 ft, posts_at: [1 ft, 6 ft, 11 ft]}]}\n", i)
	}
	text.WriteString("stairs:\n")
	for i := range n {
		fmt.Fprintf(&text, "  - {mark: S%d, total_rise: 28 in, risers: 4, tread_depth: 10 in, width: 36 in}\n", i)
	}
	return text.Bytes()
}

// BenchmarkFacts reads designs and derives their facts, without any check.
func BenchmarkFacts(b *testing.B) {
	perDesign(b, func(in checker.Input) bool {
		f, _ := checker.Facts(in)
		return f != nil
	})
}

func BenchmarkFieldSheet(b *testing.B) {
	perDesign(b, func(in checker.Input) bool {
		sheet, _ := checker.FieldSheet(in)
		return sheet != nil
	})
}

func BenchmarkDrawings(b *testing.B) {
	perDesign(b, func(in checker.Input) bool {
		sheets, _, err := checker.Drawings(in, draw.Options{})
		return err == nil && sheets != nil
	})
}

// perDesign measures what is made of each of the sample designs.
func perDesign(b *testing.B, made func(checker.Input) bool) {
	b.Helper()
	for _, name := range []string{"karaka-bay", "alder-lane", "ketch-point", "quarry-hill"} {
		b.Run(name, func(b *testing.B) {
			in := design(b, name)
			b.ReportAllocs()
			for b.Loop() {
				if !made(in) {
					b.Fatal("nothing was made")
				}
			}
		})
	}
}
