package text_test

import (
	"os"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet/text"
)

func TestTry(t *testing.T) {
	for _, n := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		data, _ := os.ReadFile("../../../fixtures/designs/" + n + ".deck.yaml")
		s, p := checker.FieldSheet(checker.Input{Name: n + ".deck.yaml", Data: data})
		if len(p) > 0 {
			t.Fatal(p)
		}
		f, _ := os.Create("/tmp/fs/" + n + ".txt")
		text.Write(f, s)
		f.Close()
	}
}
