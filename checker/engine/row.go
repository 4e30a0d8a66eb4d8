package engine

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
)

// row is one object that a check returned, with a note of what was read, so
// that a key nobody knows does not pass unseen.
type row struct {
	members map[string]any
	unread  map[string]bool
}

func newRow(raw any) (row, error) {
	members, ok := raw.(map[string]any)
	if !ok {
		return row{}, fmt.Errorf("a row is %s, not an object", show(raw))
	}
	unread := make(map[string]bool, len(members))
	for key := range members {
		unread[key] = true
	}
	return row{members, unread}, nil
}

func (r row) get(key string) (any, bool) {
	v, ok := r.members[key]
	delete(r.unread, key)
	return v, ok
}

// text reads a key that holds a text; absent is "" and false.
func (r row) text(key string) (string, bool, error) {
	v, ok := r.get(key)
	if !ok {
		return "", false, nil
	}
	s, isText := v.(string)
	if !isText {
		return "", false, fmt.Errorf("%q is %s, not a text", key, show(v))
	}
	return s, true, nil
}

func (r row) must(key string) (string, error) {
	s, ok, err := r.text(key)
	if err == nil && !ok {
		err = fmt.Errorf("a row has no %q", key)
	}
	return s, err
}

func (r row) flag(key string) (bool, error) {
	v, _ := r.get(key)
	b, ok := v.(bool)
	if !ok {
		return false, fmt.Errorf("a row has no true or false under %q", key)
	}
	return b, nil
}

// places is pointers where a value need not be there: facts list no place for
// a part that the design leaves out, and then the whole design lacks it.
func (r row) places() ([]string, error) {
	at, err := r.pointers()
	if len(at) == 0 {
		at = []string{""}
	}
	return at, err
}

// pointers reads "at", each pointer once.
func (r row) pointers() ([]string, error) {
	v, _ := r.get("at")
	list, ok := v.([]any)
	if !ok {
		return nil, errors.New(`a row has no list of places under "at"`)
	}
	var at []string
	for _, item := range list {
		pointer, ok := item.(string)
		if !ok {
			return nil, fmt.Errorf("a place is %s, not a text", show(item))
		}
		if !slices.Contains(at, pointer) {
			at = append(at, pointer)
		}
	}
	return at, nil
}

// rest refuses keys that were not read.
func (r row) rest() error {
	for _, key := range slices.Sorted(maps.Keys(r.unread)) {
		return fmt.Errorf("a row has the key %q, which nobody knows", key)
	}
	return nil
}

// show prints a raw value for a message to the author of a check.
func show(v any) string {
	text, err := json.Marshal(v)
	if err != nil {
		return fmt.Sprintf("%T", v)
	}
	if len(text) > 60 {
		return string(text[:60]) + "…"
	}
	return string(text)
}
