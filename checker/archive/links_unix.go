//go:build unix

package archive

import (
	"io/fs"
	"syscall"
)

// links gives the number of names that a file has.
func links(info fs.FileInfo) uint64 {
	if stat, ok := info.Sys().(*syscall.Stat_t); ok {
		return uint64(stat.Nlink) //nolint:unconvert // its width differs between systems
	}
	return 1
}
