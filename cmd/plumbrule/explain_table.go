package main

import (
	"context"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/ruleset"
)

// cells are the cells of tables that were read for a design, by the title of
// the table and the cell's own words.
type cells map[[2]string]bool

// readCells checks the design, if one is named, and notes the cells it was
// read in.
func readCells(ctx context.Context, env environment, c *checker.Checker, args []string) (cells, error) {
	if len(args) == 0 {
		return nil, nil //nolint:nilnil // no design, no cells
	}
	inputs, err := readDesigns(env, args)
	if err != nil {
		return nil, err
	}
	lit := cells{}
	for _, d := range c.Check(ctx, inputs...).Designs {
		if err := refuse(env, d.File, d.Problems); err != nil {
			return nil, err
		}
		for _, r := range append(d.Findings, d.Readings...) {
			if r.Row != "" {
				lit[[2]string{r.Table, r.Row}] = true
			}
		}
	}
	return lit, nil
}

// explainTable prints a table, its last key across. Cells that were read for
// the design stand in brackets, and rows of other first keys are left out then.
func explainTable(out io.Writer, t *ruleset.Table, lit cells) {
	last := len(t.Keys) - 1
	var columns []string
	for i := range t.Keys[last].Texts {
		columns = append(columns, t.Keys[last].Shown(i))
	}
	var head []string
	for _, key := range t.Keys[:last] {
		head = append(head, strings.ReplaceAll(key.Name, "_", " "))
	}
	if t.Keys[last].Kind == catalog.Words {
		head = append(head, columns...)
	} else {
		for _, column := range columns {
			head = append(head, strings.ReplaceAll(t.Keys[last].Name, "_", " ")+" "+column)
		}
	}
	grid := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintf(grid, "  %s\n", strings.Join(head, "\t"))
	all := t.Cells()
	wanted := litGroups(t, all, lit)
	for at := 0; at < len(all); at += len(columns) {
		names := rowNames(t, at/len(columns))
		if wanted != nil && !wanted[names[0]] {
			continue
		}
		line := names
		for i := range columns {
			cell := &all[at+i]
			text := cell.Text
			if lit[[2]string{t.Title, cell.Row}] {
				text = "[" + text + "]"
			}
			line = append(line, text)
		}
		fmt.Fprintf(grid, "  %s\n", strings.Join(line, "\t"))
	}
	_ = grid.Flush() // what cannot be written here fails again below
}

// rowNames gives the texts of all keys but the last for a row.
func rowNames(t *ruleset.Table, row int) []string {
	names := make([]string, len(t.Keys)-1)
	for i := len(names) - 1; i >= 0; i-- {
		n := len(t.Keys[i].Texts)
		names[i] = t.Keys[i].Shown(row % n)
		row /= n
	}
	if len(names) == 0 {
		return []string{""}
	}
	return names
}

// litGroups lists the first keys of rows with a cell that was read; nil where
// none was, so that the whole table is shown.
func litGroups(t *ruleset.Table, all []ruleset.Cell, lit cells) map[string]bool {
	var groups map[string]bool
	columns := len(t.Keys[len(t.Keys)-1].Texts)
	for at := range all {
		if lit[[2]string{t.Title, all[at].Row}] {
			if groups == nil {
				groups = map[string]bool{}
			}
			groups[rowNames(t, at/columns)[0]] = true
		}
	}
	return groups
}
