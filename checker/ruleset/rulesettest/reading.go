package rulesettest

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
)

// Reading is one line of the second reading.
type Reading struct {
	Line                          int // in the file, from 1
	Table, Edition                string
	Group, Item, Condition, Value string
	Unit                          string
	Published                     bool // seen in print; otherwise recalled
}

var header = []string{"table", "edition", "group", "item", "condition", "unit", "value", "status"}

// Read reads the file of the second reading. The error tells the line.
func Read(path string) ([]Reading, error) {
	var readings []Reading
	err := lines(path, header, func(line int, f []string) error {
		readings = append(readings, Reading{
			Line: line, Table: f[0], Edition: f[1], Group: f[2], Item: f[3], Condition: f[4], Unit: f[5], Value: f[6],
			Published: strings.HasPrefix(f[7], "published"),
		})
		return nil
	})
	return readings, err
}

// Text is the value as a set would write it.
func (r Reading) Text() string {
	if r.Value == "NP" {
		return NotPermitted
	}
	return r.Value + " " + r.Unit
}

// lines calls use with every line of a file of comma separated values that
// starts with the header given. Lines with # in front are remarks.
func lines(path string, header []string, use func(line int, fields []string) error) error {
	data, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	r := csv.NewReader(bytes.NewReader(data))
	r.Comment = '#'
	first, err := r.Read()
	if err != nil {
		return fmt.Errorf("reading %s: %w", path, err)
	}
	if !slices.Equal(first, header) {
		return fmt.Errorf("reading %s: the columns are %v, not %v", path, first, header)
	}
	for {
		fields, err := r.Read()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return fmt.Errorf("reading %s: %w", path, err)
		}
		line, _ := r.FieldPos(0)
		if err := use(line, fields); err != nil {
			return fmt.Errorf("reading %s: line %d: %w", path, line, err)
		}
	}
}
