package checker

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"plumbrule/checker/result"
	"plumbrule/checker/waive"
)

// WaiverFile is a file of waivers.
type WaiverFile struct {
	// Name is what reports call it; its ending tells YAML from JSON.
	Name string
	// Dir is the directory from which paths of designs in it count. Where it is
	// empty, they are held against the paths of designs as these are given.
	Dir  string
	Data []byte
}

func (c *Checker) loadWaivers(files []WaiverFile) error {
	var errs []error
	for _, file := range files {
		list, err := waive.Read(file.Name, file.Dir, file.Data, c.catalog)
		switch {
		case err != nil:
			errs = append(errs, err)
		case list.Dated() && c.today == "":
			errs = append(errs, fmt.Errorf("waivers of %s have a last day, and nobody said which day it is", file.Name))
		default:
			c.waivers = append(c.waivers, list)
		}
	}
	return errors.Join(errs...)
}

// excuse applies the waivers that are for a design. The answer has a place for
// each list of the checker, nil for one that is not for it.
func (c *Checker) excuse(d *result.Design, in Input) []waive.Use {
	uses := make([]waive.Use, len(c.waivers))
	path := cmp.Or(in.Path, in.Name)
	for i, list := range c.waivers {
		if in.Waivers == nil || slices.Contains(in.Waivers, list.Name) {
			uses[i] = list.Apply(d, path, c.today)
		}
	}
	return uses
}

// aboutWaivers says which waivers excused nothing or have run out, given what
// became of each list on each design.
func (c *Checker) aboutWaivers(designs [][]waive.Use) []result.Design {
	var found []result.Design
	for i, list := range c.waivers {
		var uses []waive.Use
		for _, used := range designs {
			if used != nil && used[i] != nil {
				uses = append(uses, used[i])
			}
		}
		if d, ok := list.Findings(uses, c.today); ok {
			found = append(found, d)
		}
	}
	return found
}
