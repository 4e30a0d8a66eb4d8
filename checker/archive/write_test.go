package archive_test

import (
	"bytes"
	"io/fs"
	"testing"

	"plumbrule/checker/archive"
)

func TestWriteGivesWhatReadTakes(t *testing.T) {
	files := map[string][]byte{"set.yaml": []byte("set: a"), "tables/b.yaml": []byte("b"), "tables/a.yaml": nil, ".manifest": []byte("{}")}
	var first, second bytes.Buffer
	for _, out := range []*bytes.Buffer{&first, &second} {
		if err := archive.Write(out, files); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("the same files give other bytes")
	}
	read, err := archive.Read("a.tar.gz", &first, archive.Default())
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range files {
		if got, err := fs.ReadFile(read, name); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s: %q, %v", name, got, err)
		}
	}
	if err := archive.Write(&second, map[string][]byte{"../set.yaml": nil}); err == nil {
		t.Error("a name that climbs is written")
	}
}
