package model_test

import (
	"encoding/json"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/model"
)

const inventory = "testdata/not-read-yet.txt"

// The design language says more than the model reads so far. What it does not
// read is listed, so that a field can neither be forgotten nor stay on the list
// once it is read.
func TestEveryFieldIsReadOrListed(t *testing.T) {
	text, err := os.ReadFile("../../schema/design.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	var schema struct {
		Defs map[string]struct {
			Properties map[string]any `json:"properties"`
		} `json:"$defs"`
	}
	if err := json.Unmarshal(text, &schema); err != nil {
		t.Fatal(err)
	}
	read := map[string]bool{}
	tags(reflect.TypeFor[model.Deck](), read, map[reflect.Type]bool{})
	var missing []string
	for object, def := range schema.Defs {
		for field := range def.Properties {
			// A field counts as read where a field of that name is; marks and sheets
			// are read off the document for findings, notes are for people.
			if !read[field] && !slices.Contains([]string{"mark", "see", "note", "at"}, field) {
				missing = append(missing, object+"."+field)
			}
		}
	}
	slices.Sort(missing)
	got := strings.Join(missing, "\n") + "\n"
	want, err := os.ReadFile(inventory)
	if err != nil && os.Getenv("UPDATE_INVENTORY") == "" {
		t.Fatal(err)
	}
	if got != string(want) {
		if os.Getenv("UPDATE_INVENTORY") != "" {
			if err := os.WriteFile(inventory, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
			return
		}
		t.Errorf("the list of fields not read yet is out of date; UPDATE_INVENTORY=1 go test ./checker/model")
	}
}

// tags collects the field names that a type and all it holds read.
func tags(typ reflect.Type, into map[string]bool, seen map[reflect.Type]bool) {
	for typ.Kind() == reflect.Pointer || typ.Kind() == reflect.Slice {
		typ = typ.Elem()
	}
	if typ.Kind() != reflect.Struct || seen[typ] {
		return
	}
	seen[typ] = true
	for i := range typ.NumField() {
		if key := typ.Field(i).Tag.Get("deck"); key != "" {
			into[key] = true
		}
		tags(typ.Field(i).Type, into, seen)
	}
}
