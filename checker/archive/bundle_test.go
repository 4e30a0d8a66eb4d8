package archive_test

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/archive"
)

// packed makes a bundle of entries, each a header and its content.
func packed(t *testing.T, entries ...tar.Header) []byte {
	t.Helper()
	var out bytes.Buffer
	zipped := gzip.NewWriter(&out)
	w := tar.NewWriter(zipped)
	for _, header := range entries {
		content := strings.Repeat("x", int(header.Size))
		header.Mode = 0o644
		if err := w.WriteHeader(&header); err != nil {
			t.Fatal(err)
		}
		if _, err := w.Write([]byte(content)); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	if err := zipped.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func file(name string, size int64) tar.Header {
	return tar.Header{Typeflag: tar.TypeReg, Name: name, Size: size}
}

func TestReadKeepsPlainFiles(t *testing.T) {
	data := packed(t, tar.Header{Typeflag: tar.TypeDir, Name: "tables/"}, file("./set.yaml", 3), file("tables/one.yaml", 100), file(".manifest", 2))
	files, err := archive.Read("a.tar.gz", bytes.NewReader(data), small())
	if err != nil {
		t.Fatal(err)
	}
	for name, size := range map[string]int{"set.yaml": 3, "tables/one.yaml": 100, ".manifest": 2} {
		if text, err := fs.ReadFile(files, name); err != nil || len(text) != size {
			t.Errorf("%s: %d bytes, %v", name, len(text), err)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	for _, test := range []struct {
		name    string
		entries []tar.Header
		entry   string
		problem string
	}{
		{"climbing", []tar.Header{file("../set.yaml", 1)}, "../set.yaml", "climbs out"},
		{"climbing later", []tar.Header{file("tables/../../set.yaml", 1)}, "tables/../../set.yaml", "climbs out"},
		{"climbing and back", []tar.Header{file("tables/../set.yaml", 1)}, "tables/../set.yaml", "climbs out"},
		{"climbing directory", []tar.Header{{Typeflag: tar.TypeDir, Name: ".."}}, "..", "climbs out"},
		{"absolute", []tar.Header{file("/etc/set.yaml", 1)}, "/etc/set.yaml", "absolute"},
		{"absolute elsewhere", []tar.Header{file(`C:\set.yaml`, 1)}, `C:\set.yaml`, "absolute"},
		{"climbing elsewhere", []tar.Header{file(`..\set.yaml`, 1)}, `..\set.yaml`, "another system"},
		{"control character", []tar.Header{file("set\x1b[2J.yaml", 1)}, "set\x1b[2J.yaml", "no name of a file"},
		{"symbolic link", []tar.Header{{Typeflag: tar.TypeSymlink, Name: "set.yaml", Linkname: "/etc/passwd"}}, "set.yaml", "symbolic link"},
		{"hard link", []tar.Header{file("a", 1), {Typeflag: tar.TypeLink, Name: "set.yaml", Linkname: "a"}}, "set.yaml", "hard link"},
		{"device", []tar.Header{{Typeflag: tar.TypeChar, Name: "set.yaml"}}, "set.yaml", "neither a file nor a directory"},
		{"pipe", []tar.Header{{Typeflag: tar.TypeFifo, Name: "set.yaml"}}, "set.yaml", "neither a file nor a directory"},
		{"twice", []tar.Header{file("set.yaml", 1), file("set.yaml", 2)}, "set.yaml", "twice"},
		{"twice in two spellings", []tar.Header{file("set.yaml", 1), file("./set.yaml", 2)}, "./set.yaml", "twice"},
		{"file as directory", []tar.Header{file("checks", 1), file("checks/a", 2)}, "checks/a", "which is a file"},
		{"directory as file", []tar.Header{file("checks/a", 1), file("checks", 2)}, "checks", "twice"},
		{"large file", []tar.Header{file("set.yaml", 101)}, "set.yaml", "limit for a file"},
		{"large total", []tar.Header{file("a", 100), file("b", 100), file("c", 51)}, "c", "all files together"},
		{"many entries", []tar.Header{file("a", 1), file("b", 1), file("c", 1), file("d", 1), file("e", 1), file("f", 1)}, "f", "limit is 5"},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := archive.Read("a.tar.gz", bytes.NewReader(packed(t, test.entries...)), small())
			refused(t, err, test.entry, test.problem)
		})
	}
}

// TestReadRefusesBomb reads data that packs a thousand times, within generous
// limits of size, so that the ratio alone stops it.
func TestReadRefusesBomb(t *testing.T) {
	bomb := packed(t, file("set.yaml", 8<<20))
	generous := archive.Limits{File: 64 << 20, Total: 64 << 20, Entries: 10, Ratio: 100}
	_, err := archive.Read("a.tar.gz", bytes.NewReader(bomb), generous)
	refused(t, err, "set.yaml", "more than 100 times")

	generous.Ratio = 100000
	if _, err := archive.Read("a.tar.gz", bytes.NewReader(bomb), generous); err != nil {
		t.Errorf("without the limit of the ratio: %v", err)
	}
}

func TestReadRefusesWhatIsNoBundle(t *testing.T) {
	whole := packed(t, file("set.yaml", 90))
	var noTar bytes.Buffer
	zipped := gzip.NewWriter(&noTar)
	if _, err := zipped.Write(bytes.Repeat([]byte("no tar "), 200)); err != nil {
		t.Fatal(err)
	}
	if err := zipped.Close(); err != nil {
		t.Fatal(err)
	}
	for name, data := range map[string][]byte{"text": []byte("set: a"), "empty": nil, "cut": whole[:len(whole)-20], "no tar": noTar.Bytes()} {
		if _, err := archive.Read("a.tar.gz", bytes.NewReader(data), small()); err == nil || !strings.HasPrefix(err.Error(), "a.tar.gz: ") {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := archive.Bundle(t.TempDir(), small()); err == nil || !strings.Contains(err.Error(), "is not a file") {
		t.Errorf("a directory: %v", err)
	}
	file := filepath.Join(t.TempDir(), "a.tar.gz")
	if err := os.WriteFile(file, whole, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := archive.Bundle(file, small()); err != nil {
		t.Error(err)
	}
}
