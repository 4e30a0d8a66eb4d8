package source

import "testing"

func BenchmarkRead(b *testing.B) {
	var name string
	var data []byte
	for n, d := range designs(b) {
		if len(d) > len(data) {
			name, data = n, d
		}
	}
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Read(name, data); err != nil {
			b.Fatal(err)
		}
	}
}
