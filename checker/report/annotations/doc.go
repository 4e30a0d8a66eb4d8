// Package annotations writes a report as workflow commands, the lines in a log
// that the runner of a workflow turns into remarks on the lines of a change:
//
//	::error file=jobs/a.deck.yaml,line=5,col=13,endColumn=14,title=...::...
//
// Runners show only the first few of each level, ten by what is known of the
// commonest one, so the gravest come first. Life safety and structure are
// errors, as is what could not run or be read; durability and what is not shown
// are warnings; workmanship and what is excused are notices. Of an excused
// result nobody is asked to do anything, so it stands last.
//
// Columns stand there only for a value on one line, as runners refuse them
// otherwise, and the last one is the last character, not the one after it. A
// design from standard input has no file to mark.
//
// Sets and cautions follow as lines of the log. Nothing in a design can begin a
// command.
//
// Floor: above package content, below package report.
package annotations
