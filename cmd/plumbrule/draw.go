package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/draw/pdf"
	"plumbrule/checker/draw/png"
	"plumbrule/checker/draw/svg"
	"plumbrule/checker/result"
)

// allViews is the word for every view.
const allViews = "all"

// drawFlags are the flags of the draw command as typed.
type drawFlags struct {
	runFlags
	view, format, output, paper string
}

// drawFormat is one way to write sheets: all in one file, or each in its own.
type drawFormat struct {
	name string
	all  func(io.Writer, []*paper.Sheet) error
	one  func(io.Writer, *paper.Sheet) error
}

// drawFormats lists the formats, the usual one first.
func drawFormats() []drawFormat {
	return []drawFormat{
		{name: "svg", one: svg.Write},
		{name: "pdf", all: pdf.Write},
		{name: "png", one: func(w io.Writer, s *paper.Sheet) error { return png.Write(w, s, png.DotsPerInch) }},
	}
}

func newDrawCommand(env environment) *cobra.Command {
	var flags drawFlags
	cmd := &cobra.Command{
		Use:   "draw DESIGN",
		Short: "Draw a design: plan, framing plan, elevation, stair section",
		Long: "Draw a design to scale, dimensioned, on sheets with a title block. What the design does not show is\n" +
			"left out or dotted, and listed. With --set, --waivers or --config rule sets run, under the same configuration\n" +
			"and waivers as in check, and their findings are numbered on the drawings as in the review letter; without\n" +
			"one of these no rule set runs.\n\n" +
			"PDF holds all sheets in one file. SVG and PNG are one file for each sheet: name a directory with -o,\n" +
			"or a file where there is one sheet only.",
		Example: "  plumbrule draw --format pdf -o alder-lane.pdf fixtures/designs/alder-lane.deck.yaml\n" +
			"  plumbrule draw --view stairs --set irc-2021 -o drawings fixtures/designs/ketch-point.deck.yaml",
		Args: oneDesign,
		RunE: func(cmd *cobra.Command, args []string) error { return drawSheets(cmd, env, flags, args) },
	}
	f := cmd.Flags()
	f.StringVar(&flags.view, "view", allViews, "`VIEW` to draw: "+strings.Join(viewNames(), ", "))
	f.StringVar(&flags.format, "format", "svg", "`FORMAT` to write: "+strings.Join(drawFormatNames(), ", "))
	f.StringVarP(&flags.output, "output", "o", "", "`FILE or DIR` to write to instead of standard output")
	f.StringVar(&flags.paper, "paper", "", "`PAPER`, lying: "+strings.Join(draw.Papers(), ", ")+" (default tabloid, a3 for metric designs)")
	flags.add(f, "none, or those of the configuration where --waivers or --config is given")
	return cmd
}

func viewNames() []string {
	names := []string{allViews}
	for _, v := range draw.Views() {
		names = append(names, string(v))
	}
	return names
}

func drawFormatNames() []string {
	var names []string
	for _, f := range drawFormats() {
		names = append(names, f.name)
	}
	return names
}

func drawSheets(cmd *cobra.Command, env environment, flags drawFlags, args []string) error {
	options, err := flags.options()
	if err != nil {
		return err
	}
	format, err := findDrawFormat(flags.format)
	if err != nil {
		return err
	}
	if err := unprintable(env, flags.output, format.name); err != nil {
		return err
	}
	in, err := readDesign(env, args[0])
	if err != nil {
		return err
	}
	check := keep
	if flags.toFile(format) {
		check = ready
	}
	if err := check(flags.output, in); err != nil {
		return err
	}
	sheets, problems, err := flags.sheets(cmd, env, in, options)
	if err != nil {
		return err
	}
	if err := refuse(env, in.Name, problems); err != nil {
		return err
	}
	return flags.write(env, format, sheets)
}

// sheets draws the design, with the findings of rule sets where some are asked
// for.
func (f drawFlags) sheets(cmd *cobra.Command, env environment, in checker.Input, options draw.Options) ([]*paper.Sheet, []result.Problem, error) {
	if len(f.sets)+len(f.waivers) == 0 && f.config == "" {
		return checker.Drawings(in, options)
	}
	c, err := f.startOne(cmd, env, &in, checker.Options{})
	if err != nil {
		return nil, nil, err
	}
	sheets, problems, err := c.Drawings(cmd.Context(), in, options)
	if stop := stopped(cmd.Context()); stop != nil {
		return nil, nil, stop
	}
	return sheets, problems, err
}

func (f drawFlags) options() (draw.Options, error) {
	options := draw.Options{Paper: f.paper}
	for _, v := range draw.Views() {
		if f.view == string(v) || f.view == allViews {
			options.Views = append(options.Views, v)
		}
	}
	if f.paper != "" && !slices.Contains(draw.Papers(), f.paper) {
		return options, unknown("paper", f.paper, "papers", draw.Papers())
	}
	if len(options.Views) == 0 {
		return options, unknown("view", f.view, "views", viewNames())
	}
	return options, nil
}

func findDrawFormat(name string) (drawFormat, error) {
	for _, f := range drawFormats() {
		if f.name == name {
			return f, nil
		}
	}
	return drawFormat{}, unknown("format", name, "formats", drawFormatNames())
}

// write lays all files out before the first of them goes out.
func (f drawFlags) write(env environment, format drawFormat, sheets []*paper.Sheet) error {
	pages, err := format.lay(sheets)
	if err != nil {
		return &exitError{exitFailed, err}
	}
	if f.toFile(format) {
		if len(pages) > 1 {
			return fmt.Errorf("there are %d sheets, each a file of its own; name a directory with -o, one --view, or --format pdf", len(pages))
		}
		pages[0].file = f.output
		return handOut(env, pages[0])
	}
	if err := os.MkdirAll(f.output, 0o755); err != nil {
		return cannotWrite(f.output, err)
	}
	for i := range pages {
		pages[i].file = filepath.Join(f.output, pages[i].file+"."+format.name)
	}
	return handOut(env, pages...)
}

// toFile reports whether the output is one file, or standard output, and not a
// directory.
func (f drawFlags) toFile(format drawFormat) bool {
	return f.output == "" || f.output == standardInput || strings.EqualFold(filepath.Ext(f.output), "."+format.name)
}

// lay gives the files of a drawing by their names without ending.
func (f drawFormat) lay(sheets []*paper.Sheet) ([]page, error) {
	var laid bytes.Buffer
	if f.all != nil {
		if err := f.all(&laid, sheets); err != nil {
			return nil, err
		}
		return []page{{"drawings", laid.Bytes()}}, nil
	}
	var pages []page
	for _, s := range sheets {
		laid.Reset()
		if err := f.one(&laid, s); err != nil {
			return nil, err
		}
		pages = append(pages, page{s.File, bytes.Clone(laid.Bytes())})
	}
	return pages, nil
}
