package text

// FirstLine matches the line that begins each result and each reason why a
// design cannot be read, in the syntax that Go and JavaScript share. It passes
// over colour codes. The groups set, check and clause are empty for a design
// that cannot be read, and clause is empty for a figure without one.
const FirstLine = `^` + codes + `(?<path>[^\x1b]+?):(?<line>[0-9]+):(?<column>[0-9]+)` + codes +
	`: ` + codes + `(?<consequence>life safety|structure|durability|workmanship|cannot read)` + codes +
	`: (?<message>.+?)` +
	`(?: ` + codes + `\[(?<set>[^ \]]+) (?<check>[^ \]]+)(?: (?<clause>[^\]]+))?\]` + codes + `)?$`

const codes = `(?:\x1b\[[0-9;]*m)*`
