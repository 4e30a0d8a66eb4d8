package config

import (
	"cmp"
	"errors"
	"fmt"
	"path"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// Config is one configuration. What the file leaves out is empty.
type Config struct {
	// File is the file's name in messages.
	File    string
	Sets    []Entry // for all designs
	Folders []Folder
	FailOn  result.Consequence
	// FailOnNotShown is nil where the file does not say.
	FailOnNotShown   *bool
	Waivers, Reports []Entry
}

// Entry is a text of the file with its place.
type Entry struct {
	Text string
	Span source.Span
}

// Folder names rule sets for the designs that a pattern covers.
type Folder struct {
	Path string
	Sets []Entry
}

// Read reads a configuration. The error joins everything that is wrong, each
// with file, line and column.
func Read(name string, data []byte) (*Config, error) {
	doc, err := source.Read(name, data)
	if err != nil {
		return nil, fmt.Errorf("reading configuration: %w", err)
	}
	c := &Config{File: name}
	var found []error
	for _, p := range schema.Validate("config", doc) {
		found = append(found, p.In(name))
	}
	if len(found) == 0 {
		found = c.fill(doc.Root)
	}
	if err := errors.Join(found...); err != nil {
		return nil, fmt.Errorf("reading configuration: %w", err)
	}
	return c, nil
}

func (c *Config) fill(root *source.Node) (found []error) {
	c.Sets, c.Waivers, c.Reports = entries(root, "sets"), entries(root, "waivers"), entries(root, "reports")
	if m := root.Member("folders"); m != nil {
		for _, n := range m.Value.Items {
			at := n.Member("path").Value
			f := Folder{Path: cmp.Or(path.Clean(at.Text), "."), Sets: entries(n, "sets")}
			if !doublestar.ValidatePattern(f.Path) {
				found = append(found, c.Refuse(Entry{at.Text, at.Span}, "%q is no pattern of a path", at.Text))
			}
			c.Folders = append(c.Folders, f)
		}
	}
	if m := root.Member("fail_on"); m != nil {
		c.FailOn = result.Consequence(strings.ReplaceAll(m.Value.Text, "-", " "))
	}
	if m := root.Member("fail_on_not_shown"); m != nil {
		fail := m.Value.Text == "true"
		c.FailOnNotShown = &fail
	}
	return found
}

func entries(n *source.Node, key string) []Entry {
	m := n.Member(key)
	if m == nil {
		return nil
	}
	var list []Entry
	for _, item := range m.Value.Items {
		list = append(list, Entry{item.Text, item.Span})
	}
	return list
}

// SetsFor gives the rule sets of a design by its path from the configuration's
// directory, with slashes; empty where the file names none.
func (c *Config) SetsFor(design string) []Entry {
	for _, f := range slices.Backward(c.Folders) {
		if f.covers(design) {
			return f.Sets
		}
	}
	return c.Sets
}

// covers reports whether the pattern names the design or a folder around it.
func (f *Folder) covers(design string) bool {
	for at := design; ; at = path.Dir(at) {
		if doublestar.MatchUnvalidated(f.Path, at) {
			return true
		}
		if at == "." || at == "/" {
			return false
		}
	}
}

// Refuse gives an error at the place of an entry.
func (c *Config) Refuse(e Entry, format string, args ...any) error {
	return &source.Error{Name: c.File, Span: e.Span, Message: fmt.Sprintf(format, args...)}
}
