package main

import (
	"bytes"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/draw"
	"plumbrule/checker/packet"
	"plumbrule/checker/packet/html"
	"plumbrule/checker/packet/pdf"
)

// packetFlags are the flags of the packet command as typed.
type packetFlags struct {
	runFlags
	format, output, paper, previous string
	remedies                        remediesFlag
}

// packetFormat is one way to write a packet. Its name is the ending of its files.
type packetFormat struct {
	name  string
	write func(io.Writer, *packet.Packet) error
}

// packetFormats lists the formats, the usual one first.
func packetFormats() []packetFormat { return []packetFormat{{"html", html.Write}, {"pdf", pdf.Write}} }

func newPacketCommand(env environment) *cobra.Command {
	var flags packetFlags
	cmd := &cobra.Command{
		Use:   "packet DESIGN",
		Short: "Assemble what is handed over at the permit counter, as HTML or PDF",
		Long: "Assemble a packet on one design: title block, drawings with numbered findings, findings in full, what is\n" +
			"not shown, a schedule of every check with its margin, assumptions, what the rule sets do not cover, sources\n" +
			"and cautions. It is one file, which fetches nothing. A packet is about one design; name them one by one.\n\n" +
			"Rule sets, waivers and configuration are those of check, and findings have the numbers of the review letter.\n\n" +
			"The HTML is the accessible one: it has headings, tables and descriptions of drawings for whoever listens to\n" +
			"it. The PDF has a title, a language, bookmarks and page numbers, but no tags, which its library cannot write.\n\n" +
			"Exit codes: 0 the packet was written, whatever was found; 2 wrong flags, configuration or rule sets;\n" +
			"3 the design cannot be read, and nothing was written; 4 a check failed to run, and the packet says so,\n" +
			"or the packet could not be written.",
		Example: "  plumbrule packet -o ketch-point.html fixtures/designs/ketch-point.deck.yaml\n" +
			"  plumbrule packet --set irc-2021 -o alder-lane.pdf fixtures/designs/alder-lane.deck.yaml",
		Args: oneDesign,
		RunE: func(cmd *cobra.Command, args []string) error { return writePacket(cmd, env, flags, args[0]) },
	}
	f := cmd.Flags()
	flags.add(f, usualSets())
	f.StringVar(&flags.format, "format", "", "`FORMAT` to write: "+strings.Join(packetFormatNames(), ", ")+" (default by the ending of the file, else html)")
	f.StringVarP(&flags.output, "output", "o", "", "`FILE` to write instead of standard output")
	f.StringVar(&flags.paper, "paper", "", "`PAPER` of the drawings, lying: "+strings.Join(draw.Papers(), ", ")+" (default letter, a4 for metric designs)")
	flags.remedies.add(f, "on, as a packet is about a single design")
	f.StringVar(&flags.previous, "previous", "", "`FILE` with an earlier json report, whose items keep their numbers")
	return cmd
}

func packetFormatNames() []string {
	var names []string
	for _, f := range packetFormats() {
		names = append(names, f.name)
	}
	return names
}

// choose gives the format that is asked for, by name or by the ending of the
// file.
func (f *packetFlags) choose() (packetFormat, error) {
	name := f.format
	switch {
	case name != "":
	case f.output == "" || f.output == standardInput:
		return packetFormats()[0], nil
	default:
		name = strings.ToLower(strings.TrimPrefix(filepath.Ext(f.output), "."))
		if name == "" {
			return packetFormat{}, fmt.Errorf("the name %s does not say which format to write; say --format, one of %s", f.output, strings.Join(packetFormatNames(), ", "))
		}
	}
	for _, format := range packetFormats() {
		if format.name == name {
			return format, nil
		}
	}
	return packetFormat{}, unknown("format", name, "formats", packetFormatNames())
}

func writePacket(cmd *cobra.Command, env environment, flags packetFlags, design string) error {
	format, err := flags.choose()
	if err != nil {
		return err
	}
	if flags.paper != "" && !slices.Contains(draw.Papers(), flags.paper) {
		return unknown("paper", flags.paper, "papers", draw.Papers())
	}
	if err := unprintable(env, flags.output, format.name); err != nil {
		return err
	}
	remedies, err := flags.remedies.on(true)
	if err != nil {
		return err
	}
	previous, err := readPrevious(flags.previous)
	if err != nil {
		return err
	}
	in, err := readDesign(env, design)
	if err != nil {
		return err
	}
	if err := ready(flags.output, in); err != nil {
		return err
	}
	line := newProgress(env, 1)
	c, err := flags.startOne(cmd, env, &in, checker.Options{Remedies: remedies, Trying: line.trying})
	if err != nil {
		return err
	}
	p, problems, err := c.Packet(cmd.Context(), in, checker.PacketOptions{Paper: flags.paper, Previous: previous})
	line.end()
	if err != nil {
		return err
	}
	if err := stopped(cmd.Context()); err != nil {
		return err
	}
	if err := refuse(env, in.Name, problems); err != nil {
		return err
	}
	var laid bytes.Buffer
	if err := format.write(&laid, p); err != nil {
		return &exitError{exitFailed, err}
	}
	if err := handOut(env, page{flags.output, laid.Bytes()}); err != nil {
		return err
	}
	if n := p.Counts.CouldNotRun; n > 0 {
		checks := "checks"
		if n == 1 {
			checks = "check"
		}
		return &exitError{exitFailed, fmt.Errorf("%s: %d %s could not run; the packet says so", in.Name, n, checks)}
	}
	return nil
}
