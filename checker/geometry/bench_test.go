package geometry_test

import (
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func BenchmarkCheck(b *testing.B) {
	r := wrap()
	for b.Loop() {
		if err := r.Check(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkScan(b *testing.B) {
	r := wrap()
	for b.Loop() {
		r.Scan(geometry.X, 12*measure.Foot)
	}
}

func BenchmarkStripArea(b *testing.B) {
	r := wrap()
	for b.Loop() {
		r.StripArea(geometry.X, 11*measure.Foot, 13*measure.Foot)
	}
}

func BenchmarkOverlapArea(b *testing.B) {
	r, window := wrap(), inFeet([2]int64{8, 8}, [2]int64{16, 8}, [2]int64{16, 16}, [2]int64{8, 16})
	for b.Loop() {
		if _, err := r.OverlapArea(window); err != nil {
			b.Fatal(err)
		}
	}
}
