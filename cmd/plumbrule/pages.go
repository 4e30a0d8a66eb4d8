package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// page is something finished, and the file that it belongs into; no file means
// standard output.
type page struct {
	file string
	text []byte
}

// handOut puts finished pages where they belong. Each file is written under
// another name first, and they take their names when all of them are there: a
// disk that is full leaves what was there before, and no half of a report.
func handOut(env environment, pages ...page) error {
	var drafts []*draft
	defer func() {
		for _, d := range drafts {
			d.drop()
		}
	}()
	for _, p := range pages {
		if p.file == "" || p.file == standardInput {
			continue
		}
		d, err := newDraft(p)
		if err != nil {
			return cannotWrite(p.file, err)
		}
		drafts = append(drafts, d)
	}
	for _, d := range drafts {
		if err := d.publish(); err != nil {
			return cannotWrite(d.file, err)
		}
	}
	for _, p := range pages {
		if p.file != "" && p.file != standardInput {
			continue
		}
		if _, err := env.out.Write(p.text); err != nil {
			return &exitError{exitFailed, nil} // outlet says so
		}
	}
	return nil
}

// draft is a page that is written but does not have its name yet.
type draft struct {
	page
	to   string // where links lead
	part string // the name until then; "" for what cannot have another
}

func newDraft(p page) (*draft, error) {
	d := &draft{page: p, to: p.file}
	perm := fs.FileMode(0o644)
	info, err := os.Stat(p.file)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return d, nil // a pipe or a device keeps its name
	case err == nil:
		perm = info.Mode().Perm()
		if to, err := filepath.EvalSymlinks(p.file); err == nil {
			d.to = to
		}
	}
	there := err == nil
	part := filepath.Join(filepath.Dir(d.to), fmt.Sprintf(".%s.%d.part", filepath.Base(d.to), os.Getpid()))
	file, err := os.OpenFile(part, os.O_WRONLY|os.O_CREATE|os.O_EXCL, perm)
	if errors.Is(err, fs.ErrPermission) && there {
		return d, nil // a file that may be written in a directory that may not
	}
	if err != nil {
		return nil, err
	}
	d.part = part
	_, err = file.Write(p.text)
	if there {
		err = errors.Join(err, file.Chmod(perm)) // the mask of the process made it narrower
	}
	if err := errors.Join(err, file.Close()); err != nil {
		d.drop()
		return nil, err
	}
	return d, nil
}

func (d *draft) publish() error {
	if d.part == "" {
		return os.WriteFile(d.to, d.text, 0o644)
	}
	if err := os.Rename(d.part, d.to); err != nil {
		return err
	}
	d.part = ""
	return nil
}

// drop takes away what did not get its name.
func (d *draft) drop() {
	if d.part != "" {
		_ = os.Remove(d.part) // what is left over does no harm
	}
}

// outlet is standard output that remembers why it could not be written, so that
// no command has to ask after each line.
type outlet struct {
	to  io.Writer
	err error
}

func (o *outlet) Write(text []byte) (int, error) {
	n, err := o.to.Write(text)
	if err != nil && o.err == nil {
		o.err = err
	}
	return n, err
}
