package authoring

import (
	"bytes"
	"context"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/archive"
	"plumbrule/checker/engine"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/sandbox"
	"plumbrule/checker/source"
	"plumbrule/rules"
)

// bundled are files that every bundle carries.
//
//go:embed bundled
var bundled embed.FS

// Bundled says what a bundle holds.
type Bundled struct {
	Set    string // id
	Checks int
	// Sources says whether the set's own files are in it, so that the program
	// can read it too. They are not where it extends a file, whose place a
	// bundle does not have.
	Sources bool
}

// Bundle writes a set with its checks as a bundle of the Open Policy Agent,
// which evaluates them on the facts of a design: data.plumbrule.review.rows.
// The same set always gives the same bytes. Checks that the set brings must
// load.
func Bundle(ctx context.Context, name string, out io.Writer, box *sandbox.Sandbox) (Bundled, error) {
	library, err := checker.Library()
	if err != nil {
		return Bundled{}, err
	}
	set, err := library.ByName(name)
	if err != nil {
		return Bundled{}, err
	}
	p := packer{set: set, files: map[string][]byte{}, is: Bundled{Set: set.ID}}
	if len(set.Catalog().Foreign()) > 0 {
		if _, err := engine.Examine(ctx, set, nil, box); err != nil {
			return Bundled{}, fmt.Errorf("the set brings checks that do not load: %w", err)
		}
	}
	for _, step := range []func() error{
		p.addRego, p.addData, func() error { return p.addSources(library, name) }, p.addManifest,
	} {
		if err := step(); err != nil {
			return Bundled{}, fmt.Errorf("packing rule set %s: %w", set.ID, err)
		}
	}
	if err := archive.Write(out, p.files); err != nil {
		return Bundled{}, fmt.Errorf("writing the bundle: %w", err)
	}
	return p.is, nil
}

// packer collects the files of a bundle.
type packer struct {
	set   *ruleset.Set
	files map[string][]byte
	is    Bundled
}

// addRego adds the checks that the set takes part in, and the library.
func (p *packer) addRego() error {
	for i := range p.set.Checks {
		check := p.set.Catalog().Find(p.set.Checks[i].ID)
		if p.set.Checks[i].Off != nil {
			continue
		}
		p.is.Checks++
		if check.Foreign {
			continue
		}
		if err := p.add(rules.Checks(), check.File, check.File); err != nil {
			return err
		}
	}
	for _, m := range p.set.Catalog().Foreign() {
		p.files[m.Name] = []byte(m.Text)
	}
	library, err := fs.Glob(rules.Checks(), "lib/*.rego")
	if err != nil {
		return err
	}
	for _, file := range library {
		if strings.HasSuffix(file, "_test.rego") {
			continue
		}
		if err := p.add(rules.Checks(), file, file); err != nil {
			return err
		}
	}
	return p.add(bundled, "bundled/review.rego", "plumbrule/review/review.rego")
}

func (p *packer) add(from fs.FS, file, as string) error {
	text, err := fs.ReadFile(from, file)
	p.files[as] = text
	return err
}

func (p *packer) addData() error {
	return errors.Join(p.addJSON("figures/data.json", p.set.Data()), p.addJSON("plumbrule/set/data.json", describe(p.set)))
}

func (p *packer) addJSON(name string, value any) error {
	var text bytes.Buffer
	encoder := json.NewEncoder(&text) // members of objects by name
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", " ")
	err := encoder.Encode(value)
	p.files[name] = text.Bytes()
	return err
}

// addSources adds the set's own file and tables, under the names that they have
// in a directory of their own.
func (p *packer) addSources(library *ruleset.Library, name string) error {
	files, file, err := library.Files(name)
	if err != nil {
		return err
	}
	text, err := fs.ReadFile(files, file)
	if err != nil {
		return err
	}
	doc, err := source.Read(file, text)
	if err != nil {
		return err
	}
	if extends := doc.Root.Member("extends"); extends != nil && ruleset.IsPath(extends.Value.Text) {
		return nil
	}
	p.is.Sources = true
	p.files["set.yaml"] = text
	dir := path.Join(path.Dir(file), "tables")
	tables, err := fs.Glob(files, dir+"/*.yaml")
	if err != nil {
		return err
	}
	for _, table := range tables {
		if err := p.add(files, table, path.Join("tables", path.Base(table))); err != nil {
			return err
		}
	}
	return nil
}

// addManifest adds what the Open Policy Agent asks of a bundle. The revision is
// that of the content, as nothing else is to tell two bundles apart.
func (p *packer) addManifest() error {
	sum := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(p.files)) {
		fmt.Fprintf(sum, "%d %s %d\n", len(name), name, len(p.files[name]))
		sum.Write(p.files[name])
	}
	return p.addJSON(".manifest", map[string]any{
		"revision":     hex.EncodeToString(sum.Sum(nil)[:8]),
		"roots":        []string{"checks", "figures", "lib", "plumbrule"},
		"rego_version": 1,
		"metadata":     map[string]any{"rule_set": p.set.ID, "edition": p.set.Edition, "title": p.set.Title, "query": "data.plumbrule.review.rows"},
	})
}
