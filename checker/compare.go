package checker

import (
	"context"
	"fmt"

	"plumbrule/checker/compare"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// Compare checks two revisions of a design and says what lies between them.
// Both are held against the sets and waivers that are for the new one, under its
// path, and print in its system of units: what differs then comes from the
// design. Where one of them has problems, nothing is compared.
func (c *Checker) Compare(ctx context.Context, was, is Input) *compare.Revisions {
	now := c.Check(ctx, is)
	was.Sets, was.Waivers, was.Path = is.Sets, is.Waivers, is.Path
	if was.Path == "" {
		was.Path = is.Name
	}
	if len(now.Designs[0].Problems) == 0 {
		was.System = &now.Designs[0].System
	}
	before := c.Check(ctx, was)
	r := compare.Between(before.Designs[0], now.Designs[0], c.active(now.Designs[0].Sets))
	r.Waivers = now.Designs[1:] // what excused something in the old revision only is of no use any more
	return r
}

// CompareSets checks a design and lays what each of the checker's sets makes of
// it beside the others.
func (c *Checker) CompareSets(ctx context.Context, in Input) *compare.Sets {
	in.Sets = nil
	report := c.Check(ctx, in)
	given := make([][]compare.Given, len(c.sets))
	for i, set := range c.sets {
		given[i] = figuresOf(set)
	}
	s := compare.Beside(report.Designs[0], report.Sets, given)
	s.Waivers = report.Designs[1:]
	return s
}

// figuresOf lists what a set gives its checks.
func figuresOf(set *ruleset.Set) []compare.Given {
	list := make([]compare.Given, len(set.Checks))
	for i := range set.Checks {
		given := &set.Checks[i]
		check := set.Catalog().Find(given.ID)
		list[i] = compare.Given{Check: given.ID, Title: check.Title}
		for _, f := range given.Figures {
			figure := compare.Figure{Name: f.Name, Text: f.Text, Clause: f.Clause, Status: string(f.Status), Value: fmt.Sprint(f.Value)}
			if declared := check.Figure(f.Name); declared != nil {
				figure.Relation = declared.Relation
			}
			list[i].Figures = append(list[i].Figures, figure)
		}
	}
	return list
}

// active describes the sets of those ids.
func (c *Checker) active(ids []string) []result.Set {
	var list []result.Set
	for _, id := range ids {
		for _, set := range c.sets {
			if set.ID == id {
				list = append(list, set.Summary())
			}
		}
	}
	return list
}
