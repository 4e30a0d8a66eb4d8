// Package packettest holds a packet with everything in it that a format has to
// cope with, for the tests of the formats. All jobs, sets and clauses in it are
// invented.
//
// Floor: above packet; nothing but tests imports it.
package packettest
