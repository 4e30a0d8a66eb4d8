// Package checker is the program without its command line: it reads designs,
// derives their facts, has the checks of the active rule sets judge them and
// gives a report.
//
//	c, err := checker.New(checker.Options{Sets: []string{"irc-2021"}})
//	report := c.Check(ctx, checker.Input{Name: "heron.deck.yaml", Data: data})
//
// It prints nothing and opens no design; whoever calls it does.
//
// Floor: above all other packages but authoring, below the command.
package checker
