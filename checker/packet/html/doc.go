// Package html writes a packet as one self-contained HTML page: drawings inside,
// no script, nothing to fetch, readable on a phone, by ear and on
// black-and-white paper.
//
// Floor: above packet, beside the other format of it.
package html
