package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
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
		Args: cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error { return drawSheets(cmd, env, flags, args) },
	}
	f := cmd.Flags()
	f.StringVar(&flags.view, "view", allViews, "`VIEW` to draw: "+viewNames())
	f.StringVar(&flags.format, "format", "svg", "`FORMAT` to write: "+drawFormatList())
	f.StringVarP(&flags.output, "output", "o", "", "`FILE or DIR` to write to instead of standard output")
	f.StringVar(&flags.paper, "paper", "", "`PAPER`, lying: "+strings.Join(draw.Papers(), ", ")+" (default tabloid, a3 for metric designs)")
	flags.add(f, "none, or those of the configuration where --waivers or --config is given")
	return cmd
}

func viewNames() string {
	names := []string{allViews}
	for _, v := range draw.Views() {
		names = append(names, string(v))
	}
	return strings.Join(names, ", ")
}

func drawFormatList() string {
	var names []string
	for _, f := range drawFormats() {
		names = append(names, f.name)
	}
	return strings.Join(names, ", ")
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
	if err := keep(flags.output, in); err != nil {
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
	if len(options.Views) == 0 {
		return options, fmt.Errorf("unknown view %q; views: %s", f.view, viewNames())
	}
	return options, nil
}

func findDrawFormat(name string) (drawFormat, error) {
	for _, f := range drawFormats() {
		if f.name == name {
			return f, nil
		}
	}
	return drawFormat{}, fmt.Errorf("unknown format %q; formats: %s", name, drawFormatList())
}

// write lays all files out before the first of them goes out.
func (f drawFlags) write(env environment, format drawFormat, sheets []*paper.Sheet) error {
	var names []string
	var pages [][]byte
	put := func(name string, write func(io.Writer) error) error {
		var page bytes.Buffer
		if err := write(&page); err != nil {
			return &exitError{exitFailed, err}
		}
		names, pages = append(names, name), append(pages, page.Bytes())
		return nil
	}
	if format.all != nil {
		if err := put("drawings", func(w io.Writer) error { return format.all(w, sheets) }); err != nil {
			return err
		}
	} else {
		for _, s := range sheets {
			if err := put(s.File, func(w io.Writer) error { return format.one(w, s) }); err != nil {
				return err
			}
		}
	}
	toFile := strings.EqualFold(filepath.Ext(f.output), "."+format.name)
	if len(pages) > 1 && (f.output == "" || f.output == standardInput || toFile) {
		return fmt.Errorf("there are %d sheets, each a file of its own; name a directory with -o, one --view, or --format pdf", len(pages))
	}
	save := func(file string, page []byte) error {
		if err := hand(env, file, page); err != nil {
			return &exitError{exitFailed, fmt.Errorf("write the drawing: %w", err)}
		}
		return nil
	}
	if f.output == "" || f.output == standardInput || toFile {
		return save(f.output, pages[0])
	}
	if err := os.MkdirAll(f.output, 0o755); err != nil {
		return &exitError{exitFailed, fmt.Errorf("make a directory for the drawings: %w", err)}
	}
	for i, page := range pages {
		if err := save(filepath.Join(f.output, names[i]+"."+format.name), page); err != nil {
			return err
		}
	}
	return nil
}
