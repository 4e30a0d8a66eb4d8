package checker

import (
	"cmp"
	"context"
	"fmt"

	"plumbrule/checker/compare"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/waive"
)

// Compare checks two revisions of a design in one run and says what lies between
// them. Both are held against the sets and waivers that are for the new one,
// under its path, and print in its system of units: what differs then comes from
// the design. Where one of them has problems, nothing is compared. No remedies
// are looked for.
func (c *Checker) Compare(ctx context.Context, was, is Input) *compare.Revisions {
	was.Sets, was.Waivers, was.Path = is.Sets, is.Waivers, cmp.Or(is.Path, is.Name)
	before, now := c.open(was), c.open(is)
	if before.derived != nil && now.derived != nil {
		before.design.System = now.design.System
	}
	both := []*review{before, now}
	c.each(len(both), func(i int) { c.judge(ctx, both[i]) })
	r := compare.Between(before.design, now.design, c.active(now.design.Sets))
	// What excused something in the old revision only is of no use any more.
	r.Waivers = c.aboutWaivers([][]waive.Use{now.uses})
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
