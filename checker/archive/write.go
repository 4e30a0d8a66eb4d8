package archive

import (
	"archive/tar"
	"compress/gzip"
	"fmt"
	"io"
	"maps"
	"slices"
	"time"
)

// Write writes files as a bundle that Read takes: in the order of their names,
// without anything that tells when or by whom, so that the same files always
// give the same bytes.
func Write(w io.Writer, files map[string][]byte) error {
	zipped, err := gzip.NewWriterLevel(w, gzip.BestCompression)
	if err != nil {
		return err
	}
	entries := tar.NewWriter(zipped)
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if problem := wayOut(name); problem != "" {
			return fmt.Errorf("%q %s", name, problem)
		}
		header := &tar.Header{
			Typeflag: tar.TypeReg, Name: name, Size: int64(len(files[name])), Mode: 0o644,
			ModTime: time.Unix(0, 0).UTC(), Format: tar.FormatPAX,
		}
		if err := entries.WriteHeader(header); err != nil {
			return err
		}
		if _, err := entries.Write(files[name]); err != nil {
			return err
		}
	}
	if err := entries.Close(); err != nil {
		return err
	}
	return zipped.Close()
}
