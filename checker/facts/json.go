package facts

import (
	"bytes"
	"encoding/json"
	"reflect"
)

// MarshalJSON gives the document that checks read, in which a list without
// elements is an empty one. It is never null, which checks would take for a
// value that is there.
func (f Facts) MarshalJSON() ([]byte, error) {
	type plain Facts // without this method
	full := plain(f)
	fillLists(reflect.ValueOf(&full).Elem())
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(full); err != nil {
		return nil, err
	}
	return bytes.TrimRight(text.Bytes(), "\n"), nil
}

// fillLists puts empty lists in the place of nil ones, on copies of all that
// may be shared.
func fillLists(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			fillLists(v.Field(i))
		}
	case reflect.Pointer:
		if !v.IsNil() {
			own := reflect.New(v.Type().Elem())
			own.Elem().Set(v.Elem())
			fillLists(own.Elem())
			v.Set(own)
		}
	case reflect.Slice:
		own := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		reflect.Copy(own, v)
		for i := range own.Len() {
			fillLists(own.Index(i))
		}
		v.Set(own)
	}
}
