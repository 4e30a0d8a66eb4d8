package authoring

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
)

// scaffold is the set that Start copies. SET_ID and TOPIC stand for the names
// of the new one, in files and in their names.
//
//go:embed scaffold
var scaffold embed.FS

var (
	notInID    = regexp.MustCompile(`[^a-z0-9]+`)
	notInTopic = regexp.MustCompile(`[^a-z]+`)
)

// Start writes a small set that works into a directory, which must not be there
// or be empty, and gives the names of the files in order. The set is called
// after the directory.
func Start(dir string) ([]string, error) {
	absolute, err := filepath.Abs(dir)
	if err != nil {
		return nil, err
	}
	id := strings.Trim(notInID.ReplaceAllString(strings.ToLower(filepath.Base(absolute)), "-"), "-")
	if id == "" {
		return nil, fmt.Errorf("%s gives no name for a set, which takes letters and digits", filepath.ToSlash(dir))
	}
	entries, err := os.ReadDir(dir)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	if len(entries) > 0 {
		return nil, fmt.Errorf("%s is not empty", filepath.ToSlash(dir))
	}
	topic, err := topicOf(id)
	if err != nil {
		return nil, err
	}
	names := strings.NewReplacer("SET_ID", id, "TOPIC", topic)
	var written []string
	err = fs.WalkDir(scaffold, "scaffold", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := scaffold.ReadFile(file)
		if err != nil {
			return err
		}
		to := filepath.Join(dir, filepath.FromSlash(names.Replace(strings.TrimPrefix(file, "scaffold/"))))
		if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
			return err
		}
		written = append(written, filepath.ToSlash(to))
		return os.WriteFile(to, []byte(names.Replace(string(text))), 0o644)
	})
	if err != nil {
		return nil, fmt.Errorf("writing a rule set: %w", err)
	}
	slices.Sort(written)
	return written, nil
}

// topicOf makes a topic of a set's id that the program does not have itself.
func topicOf(id string) (string, error) {
	topic := notInTopic.ReplaceAllString(id, "")
	checks, err := checker.Checks()
	if err != nil {
		return "", err
	}
	for topic == "" || slices.ContainsFunc(checks.Checks(), func(check *catalog.Check) bool { return check.Topic == topic }) {
		topic = "my" + topic
	}
	return topic, nil
}
