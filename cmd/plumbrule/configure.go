package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/config"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// plan is what a run does, from flags and configurations.
type plan struct {
	sets    []string // of all designs
	waivers []checker.WaiverFile
	reports []string
	designs []settings // in the order of the inputs
	configs []string   // whose sets are among them
}

// settings are those of one design.
type settings struct {
	class    result.Consequence
	failOpen bool
}

// planner puts a plan together. Each configuration is read once, and each set
// and file of waivers is named once, however many designs share it.
type planner struct {
	flags   checkFlags
	changed func(flag string) bool
	plan    plan
	cwd     string
	configs map[string]*config.Config // by directory of designs; nil for none
	read    map[string]*config.Config // by file
	reports *config.Config            // the one that names reports
}

// newPlan looks for the configuration of every design and fills in the inputs:
// where they lie, and which of the plan's sets and waivers are for them. Flags
// come before what a configuration says. An error is a mistake of the user.
func newPlan(flags checkFlags, changed func(string) bool, inputs []checker.Input) (*plan, error) {
	if flags.noConfig && flags.config != "" {
		return nil, errors.New("--config and --no-config exclude each other")
	}
	cwd, err := os.Getwd()
	if err != nil {
		return nil, fmt.Errorf("find the current directory: %w", err)
	}
	p := planner{flags: flags, changed: changed, cwd: cwd, configs: map[string]*config.Config{}, read: map[string]*config.Config{}}
	for i := range inputs {
		if err := p.add(&inputs[i]); err != nil {
			return nil, err
		}
	}
	if len(flags.reports) > 0 {
		p.plan.reports = flags.reports
	}
	return &p.plan, nil
}

func (p *planner) add(in *checker.Input) error {
	dir := p.cwd
	if in.Name != standardInput {
		in.Path = p.absolute(in.Name)
		dir = filepath.Dir(in.Path)
	}
	c, err := p.configFor(dir)
	if err != nil {
		return err
	}
	one := settings{failOpen: p.flags.failOpen}
	if one.class, err = p.flags.class(); err != nil {
		return err
	}
	in.Sets, in.Waivers = p.flags.sets, []string{}
	waivers := p.flags.waivers
	if c != nil {
		if c.FailOn != "" && !p.changed("fail-on") {
			one.class = c.FailOn
		}
		if c.FailOnNotShown != nil && !p.changed("fail-on-not-shown") {
			one.failOpen = *c.FailOnNotShown
		}
		if len(in.Sets) == 0 {
			in.Sets = p.configuredSets(c, in)
		}
		if len(waivers) == 0 {
			waivers = p.beside(c, c.Waivers)
		}
		if err := p.takeReports(c); err != nil {
			return err
		}
	}
	if len(in.Sets) == 0 {
		in.Sets = checker.DefaultSets()
	}
	p.takeSets(in.Sets)
	for i, name := range waivers {
		if err := p.takeWaivers(name); err != nil {
			if len(p.flags.waivers) == 0 {
				err = c.Refuse(c.Waivers[i], "%v", err)
			}
			return err
		}
		in.Waivers = append(in.Waivers, filepath.ToSlash(name))
	}
	p.plan.designs = append(p.plan.designs, one)
	return nil
}

// configFor gives the configuration of the designs in a directory, or nil.
func (p *planner) configFor(dir string) (*config.Config, error) {
	if c, known := p.configs[dir]; known {
		return c, nil
	}
	file := ""
	switch {
	case p.flags.noConfig:
	case p.flags.config != "":
		file = p.absolute(p.flags.config)
	default:
		file = config.Find(dir)
	}
	c, known := p.read[file]
	if file != "" && !known {
		name := p.shown(file)
		data, err := readFile(file)
		if err != nil {
			return nil, fmt.Errorf("read the configuration %s: %w", name, plain(err))
		}
		if c, err = config.Read(filepath.ToSlash(name), data); err != nil {
			return nil, err
		}
		p.read[file] = c
	}
	p.configs[dir] = c
	return c, nil
}

// configuredSets gives the sets that a configuration names for a design.
func (p *planner) configuredSets(c *config.Config, in *checker.Input) []string {
	from, design := filepath.Dir(p.absolute(c.File)), in.Path
	if design == "" {
		design = filepath.Join(p.cwd, "standard-input")
	}
	if relative, err := filepath.Rel(from, design); err == nil {
		design = relative
	}
	var names []string
	for _, e := range c.SetsFor(filepath.ToSlash(design)) {
		name := e.Text
		if ruleset.IsPath(name) {
			name = p.path(c, name)
		}
		names = append(names, name)
	}
	if len(names) > 0 && !slices.Contains(p.plan.configs, c.File) {
		p.plan.configs = append(p.plan.configs, c.File)
	}
	return names
}

// takeReports uses the reports of a configuration, of which there can be one.
func (p *planner) takeReports(c *config.Config) error {
	if len(c.Reports) == 0 || c == p.reports || len(p.flags.reports) > 0 {
		return nil
	}
	if p.reports != nil {
		return c.Refuse(c.Reports[0], "%s names reports of this run too; say which on the command line: --report text", p.reports.File)
	}
	p.reports = c
	for _, e := range c.Reports {
		format, file, named := strings.Cut(e.Text, "=")
		if named && file != standardInput {
			format += "=" + p.path(c, file)
		}
		if _, err := (checkFlags{reports: []string{format}}).targets(); err != nil {
			return c.Refuse(e, "%v", err)
		}
		p.plan.reports = append(p.plan.reports, format)
	}
	return nil
}

// takeSets takes sets into the plan, each once. What flags name is taken as it
// is, since a set named twice there is a slip of the user.
func (p *planner) takeSets(names []string) {
	if len(p.flags.sets) > 0 {
		p.plan.sets = p.flags.sets
		return
	}
	for _, name := range names {
		if !slices.Contains(p.plan.sets, name) {
			p.plan.sets = append(p.plan.sets, name)
		}
	}
}

func (p *planner) takeWaivers(name string) error {
	shown := filepath.ToSlash(name)
	if slices.ContainsFunc(p.plan.waivers, func(w checker.WaiverFile) bool { return w.Name == shown }) {
		return nil
	}
	data, err := readFile(name)
	if err != nil {
		return fmt.Errorf("read the waivers %s: %w", shown, plain(err))
	}
	p.plan.waivers = append(p.plan.waivers, checker.WaiverFile{Name: shown, Dir: filepath.Dir(p.absolute(name)), Data: data})
	return nil
}

func (p *planner) beside(c *config.Config, entries []config.Entry) []string {
	var names []string
	for _, e := range entries {
		names = append(names, p.path(c, e.Text))
	}
	return names
}

// path gives a path that a configuration names, as seen from here.
func (p *planner) path(c *config.Config, name string) string {
	if filepath.IsAbs(name) {
		return name
	}
	return filepath.Join(filepath.Dir(c.File), filepath.FromSlash(name))
}

func (p *planner) absolute(name string) string {
	if filepath.IsAbs(name) {
		return filepath.Clean(name)
	}
	return filepath.Join(p.cwd, name)
}

// shown gives a file's path from the current directory, so that nothing that
// is printed hangs on where the tree lies.
func (p *planner) shown(file string) string {
	if relative, err := filepath.Rel(p.cwd, file); err == nil {
		return relative
	}
	return file
}

// settingsOf gives the settings under which a design of the report counts. A
// file of waivers counts under those of the first design that it is for.
func (p *plan) settingsOf(i int, d *result.Design, inputs []checker.Input) settings {
	if i < len(p.designs) {
		return p.designs[i]
	}
	for k := range inputs {
		if slices.Contains(inputs[k].Waivers, d.File) {
			return p.designs[k]
		}
	}
	return p.designs[0]
}

// blame names the configurations whose sets could not be loaded.
func (p *plan) blame(err error) error {
	if len(p.configs) == 0 {
		return err
	}
	return fmt.Errorf("%w\n(rule sets as named in %s)", err, strings.Join(p.configs, ", "))
}
