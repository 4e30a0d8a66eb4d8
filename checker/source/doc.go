// Package source reads a JSON or YAML file into one tree in which every value
// and every key knows its place, so that whatever is said later about a design
// can point at the characters it is about.
//
// Both formats give the same tree: objects, arrays, strings, numbers, booleans
// and null. Numbers keep the text they were written with. What YAML has beyond
// that (anchors, aliases, merge keys, tags, several documents, keys that are not
// text) is refused, because it hides where a value stands or means different
// things to different readers. The same goes for numbers such as 010, 0x1F or
// 1_000, which are refused with the spelling that was probably meant; yes, no,
// on, off and dates are plain text.
//
// The package does not know what a design is, does not check the shape of a
// file, and reads no files from disk. It stands on the lowest floor and imports
// no other package of this module.
//
// # Libraries
//
// JSON is read with github.com/go-json-experiment/json/jsontext, whose offsets
// are right to the byte.
//
// YAML is read with go.yaml.in/yaml/v4 v4.0.0. It was chosen over two others by
// reading 38 broken files, each with one mistake as people make them, with
// adversarial files of one megabyte, with 25 seconds of fuzzing each, and with
// the largest sample design (Go 1.26.8, two cores):
//
//	                           yaml/v4 4.0.0  yaml/v3 3.0.6  goccy 1.19.2
//	broken files accepted      0              0              6
//	line of the mistake right  34             15             26
//	column right, too          34             none given     23
//	panics under fuzzing       0              0              0
//	hang of over 15 s          none           none           at least 2 of 28
//	parsing the design         0.5 ms         0.6 ms         1.2 ms
//	added to a binary          564 KiB        nothing        not measured
//
// For v4 either of the two places of an error counts: where it stopped, and
// where the construct began that it was reading. The functions in yaml_error.go
// and yaml_line.go choose between them and find the rest; their tests hold files
// like these. The weight of v3 is nothing because the policy engine brings it
// along; it gets security fixes only. The trees of v3 and v4 give the start of a
// node but not its end, and hold duplicate keys without a word; anchors and
// aliases show in all three. Comments are skipped.
//
// Places of nodes come from the library. Only their ends are computed here, by
// walking the source beside the content that the library accepted (yaml_extent.go);
// a test re-reads the bytes of every span and wants the same value back.
package source
