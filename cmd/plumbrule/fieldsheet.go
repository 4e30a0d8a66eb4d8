package main

import (
	"bytes"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/fieldsheet/html"
	"plumbrule/checker/fieldsheet/pdf"
	"plumbrule/checker/fieldsheet/text"
)

// sheetFormat is one way to write a field sheet.
type sheetFormat struct {
	name  string
	write func(io.Writer, *fieldsheet.Sheet) error
}

// sheetFormats lists the formats, the usual one first.
func sheetFormats() []sheetFormat {
	return []sheetFormat{{"text", text.Write}, {"html", html.Write}, {"pdf", pdf.Write}}
}

func newFieldsheetCommand(env environment) *cobra.Command {
	var format, file string
	cmd := &cobra.Command{
		Use:   "fieldsheet DESIGN",
		Short: "Print the measures that a crew works by, on one or two pages",
		Long: "Print the field sheet of a design: diagonals and tapes, strings, joist marks, cut lengths, ledger\n" +
			"fasteners, posts and footings, stairs, balusters, corner cuts, boards, and counts. No rule set runs.\n" +
			"What the design does not show is listed, and never taken from anywhere else.",
		Example: "  plumbrule fieldsheet fixtures/designs/alder-lane.deck.yaml\n" +
			"  plumbrule fieldsheet --format pdf -o alder-lane.pdf fixtures/designs/alder-lane.deck.yaml",
		Args: oneDesign,
		RunE: func(_ *cobra.Command, args []string) error { return printSheet(env, args, format, file) },
	}
	f := cmd.Flags()
	f.StringVar(&format, "format", "text", "`FORMAT` of the sheet: "+strings.Join(sheetFormatNames(), ", "))
	f.StringVarP(&file, "output", "o", "", "`FILE` to write instead of standard output")
	return cmd
}

func sheetFormatNames() []string {
	var names []string
	for _, f := range sheetFormats() {
		names = append(names, f.name)
	}
	return names
}

func printSheet(env environment, args []string, format, file string) error {
	write, err := findSheetFormat(format)
	if err != nil {
		return err
	}
	if err := unprintable(env, file, format); err != nil {
		return err
	}
	in, err := readDesign(env, args[0])
	if err != nil {
		return err
	}
	if err := ready(file, in); err != nil {
		return err
	}
	sheet, problems := checker.FieldSheet(in)
	if err := refuse(env, in.Name, problems); err != nil {
		return err
	}
	if sheet.File == standardInput {
		sheet.File = "standard input"
	}
	var laid bytes.Buffer
	if err := write(&laid, sheet); err != nil {
		return &exitError{exitFailed, err}
	}
	return handOut(env, page{file, laid.Bytes()})
}

func findSheetFormat(name string) (func(io.Writer, *fieldsheet.Sheet) error, error) {
	for _, f := range sheetFormats() {
		if f.name == name {
			return f.write, nil
		}
	}
	return nil, unknown("format", name, "formats", sheetFormatNames())
}
