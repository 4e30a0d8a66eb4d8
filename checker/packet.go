package checker

import (
	"context"

	"plumbrule/checker/draw"
	"plumbrule/checker/packet"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// PacketOptions say what goes into a packet. The zero value is a first review
// with drawings on the paper of an office printer.
type PacketOptions struct {
	// Paper is the size of the drawings, a name of draw.Papers; "" for letter, or
	// A4 where the design is in metric units.
	Paper string
	// Previous is what an earlier report numbered; its items keep their numbers.
	Previous items.Previous
}

// Packet checks a design, draws it with its findings, laid out once for both, and
// assembles what is handed over. The packet is nil where there are problems. The error says that
// an option is unknown.
func (c *Checker) Packet(ctx context.Context, in Input, options PacketOptions) (*packet.Packet, []result.Problem, error) {
	r, report := c.one(ctx, in)
	if report == nil {
		return nil, r.design.Problems, nil
	}
	if options.Paper == "" {
		options.Paper = packet.Paper(report.Designs[0].System)
	}
	sheets, err := drawn(in, r.derived, draw.Options{Paper: options.Paper, Report: report, Previous: options.Previous})
	if err != nil {
		return nil, nil, err
	}
	return packet.Build(report, sheets, options.Previous), nil, nil
}
