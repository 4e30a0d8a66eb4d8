// Package archive opens what strangers hand over, directories and gzipped tar
// files, as file systems that hold nothing but plain files of bounded size.
//
// It refuses, by name and with one clear word, whatever could lead a reader
// out of the place or exhaust it: names that climb or start at the root,
// symbolic and hard links, devices, pipes and sockets, entries that come twice,
// files, totals and numbers of entries beyond a limit, and data that unpacks to
// many times its size. Nothing is ever written to disk.
//
// It does not look into the files.
//
// Floor: the lowest; it imports nothing of this module.
package archive
