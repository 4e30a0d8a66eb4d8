package measure

import (
	"encoding/json"
	"errors"
	"math/rand/v2"
	"os/exec"
	"regexp"
	"strings"
	"testing"
)

// grammar pairs a pattern with the parser that it describes.
type grammar struct {
	name    string
	pattern *regexp.Regexp
	refuse  func(text string) *fault
}

func grammars() []grammar {
	return []grammar{
		{"length", regexp.MustCompile(LengthPattern), refusal(readLength)},
		{"pressure", regexp.MustCompile(PressurePattern), refusal(pressureDimension().read)},
		{"force", regexp.MustCompile(ForcePattern), refusal(forceDimension().read)},
		{"angle", regexp.MustCompile(AnglePattern), refusal(angleDimension().read)},
		{"slope", regexp.MustCompile(SlopePattern), refusal(readSlope)},
		{"nominal size", regexp.MustCompile(NominalPattern), refusal(readNominal)},
		{"actual size", regexp.MustCompile(ActualPattern), refusal(readActual)},
		{"size", regexp.MustCompile(SizePattern), refusal(readSize)},
	}
}

func refusal[T any](reader func(string) (T, *fault)) func(string) *fault {
	return func(text string) *fault {
		folded, wrong := fold(text)
		if wrong == nil {
			_, wrong = reader(folded)
		}
		return wrong
	}
}

// agree checks that a parser accepts what its pattern matches, but for texts whose shape is right and whose value is
// not, and nothing else.
func (g grammar) agree(t *testing.T, text string) (accepted bool) {
	t.Helper()
	wrong, matched := g.refuse(text), g.pattern.MatchString(text)
	switch {
	case wrong == nil && !matched:
		t.Errorf("%s %q is read, but does not match %s", g.name, text, g.pattern)
	case matched && wrong != nil && wrong.reason == wrongShape:
		t.Errorf("%s %q matches, but is refused: %s", g.name, text, wrong.problem)
	}
	return wrong == nil
}

// corpus is every kind of spelling, right and wrong, for all the parsers.
func corpus() []string {
	return []string{
		`12 ft 6-3/8 in`, `12' 6-3/8"`, `12'-6 3/8"`, `150-3/8 in`, `150.375 in`, `11 5/8"`, `6 ft`, `5' 0"`, `3/4 in`, `3820 mm`, `3.82 m`,
		`382 cm`, `0 in`, `-3 in`, `½ in`, `6½"`, `6 ½ in`, `6-½ in`, `12'½"`, `12′-6″`, `12’ 6”`, "12\u00a0ft", `12''`, `12ft.6in`, `12ft. 6in`,
		`12 ft.-6 in`, `.5 in`, `12 ft .5 in`, `5. in`, `1/0 in`, `12' 14"`, `6 9/8 in`, `3,82 m`, `5 ft 20 mm`, `6 in 3 ft`, `12-6 3/8"`, `16`,
		`40 psf`, `1.9 kPa`, `2 kN/m²`, `100 N⁄mm^2`, `2500 PSI`, `1500 lb`, `1.5 kips`, `6.7 kN`, `1900 kg`, `45`, `-45 deg`, `45°`, `22½°`, `400`,
		`1 in 60`, `1:48`, `2%`, `1/4 in per ft`, `1/4"/ft.`, `10 mm per m`, `level`, `1 in 0`, `1 in 1/0`, `1 in.5`, `1 in .5`, `1 inch 60`,
		`2x10`, `2 X 10`, `5/4×6`, `10x2`, `16x16`, `5x5`, `2x7`, `45 mm x 140 mm`, `1-1/2 in x 9-1/4 in`, `45 mm x 5 in`, `0 mm x 3 mm`, `2-2x10`,
		``, ` `, "6\x00 in", "\xff", `0.00000000000001%`, `99999999999999999999 ft`, `½3 in`, `1/½ in`, strings.Repeat("1", maxText+1) + " in",
	}
}

func TestPatternsAgreeWithParsers(t *testing.T) {
	for _, g := range grammars() {
		for _, text := range corpus() {
			g.agree(t, text)
		}
	}
}

// tokens are the pieces that spellings are made of, so that random rows of them are often right and mostly nearly so.
func tokens() []string {
	return []string{
		"1", "2", "4", "10", "12", "0", "6", "3/8", "1/0", "9/8", ".5", ".", "/", "-", "\u2013", " ", " ", " ", "\u00a0", "½", "⅞", "ft", "in", "'", `"`,
		"ft.", "in.", "′", "″", "”", "inches", "feet", "mm", "cm", "m", "metre", "psf", "kPa", "N/mm²", "kN", "lb", "lbs.", "kg", "deg", "°", ":",
		"%", "per", "level", "x", "X", "×", ",", "^2", "IN", "FT", "PER",
	}
}

// sizeTokens are the pieces that sizes are made of, which would rarely come together by chance.
func sizeTokens() []string {
	return []string{"1", "2", "3", "4", "5/4", "6", "8", "10", "14", "x", "X", " x ", " × ", " ", "45 mm", "1-1/2 in", `9¼"`, "1'-2\"", "0 mm", "-"}
}

func spelling(random *rand.Rand, pieces []string, most int) string {
	var text strings.Builder
	for range 1 + random.IntN(most) {
		text.WriteString(pieces[random.IntN(len(pieces))])
	}
	return text.String()
}

func TestPatternsAgreeOnRandomSpellings(t *testing.T) {
	all, random := grammars(), rand.New(rand.NewPCG(7, 8))
	accepted := make([]int, len(all))
	try := func(text string) {
		for i, g := range all {
			if g.agree(t, text) {
				accepted[i]++
			}
		}
	}
	for range 20_000 {
		try(spelling(random, tokens(), 8))
		try(spelling(random, sizeTokens(), 4))
	}
	for i, n := range accepted {
		if n < 30 {
			t.Errorf("only %d random spellings of a %s were right, too few to tell anything", n, all[i].name)
		}
	}
}

// Every hint is offered because it can be read, whatever was typed.
func TestHintsCanBeRead(t *testing.T) {
	random, offered := rand.New(rand.NewPCG(9, 10)), 0
	for range 20_000 {
		text := spelling(random, tokens(), 6)
		_, _, err := ParseLength(text)
		var wrong *SpellingError
		if !errors.As(err, &wrong) || wrong.Meant == "" {
			continue
		}
		for _, offer := range strings.Split(strings.ReplaceAll(wrong.Meant, " or ", ", "), ", ") {
			offered++
			if _, _, err := ParseLength(offer); err != nil {
				t.Errorf("%q is offered for %q and refused: %v", offer, text, err)
			}
		}
	}
	if offered < 500 {
		t.Errorf("only %d hints were offered, too few to tell anything", offered)
	}
}

// The patterns stand in a JSON Schema, whose regular expressions are those of ECMAScript, with the u flag or without.
func TestPatternsMeanTheSameInECMAScript(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("node is not installed")
	}
	texts := corpus()
	random := rand.New(rand.NewPCG(11, 12))
	for range 1_000 {
		texts = append(texts, spelling(random, tokens(), 8), spelling(random, sizeTokens(), 4))
	}
	var patterns []string
	for _, g := range grammars() {
		patterns = append(patterns, g.pattern.String())
	}
	job, err := json.Marshal(map[string][]string{"patterns": patterns, "texts": texts})
	if err != nil {
		t.Fatal(err)
	}
	const script = `const job = JSON.parse(require("fs").readFileSync(0, "utf8"));
const rows = flags => job.patterns.map(p => { const re = new RegExp(p, flags); return job.texts.map(x => re.test(x)); });
process.stdout.write(JSON.stringify({ plain: rows(""), unicode: rows("u") }));`
	run := exec.CommandContext(t.Context(), node, "-e", script)
	run.Stdin = strings.NewReader(string(job))
	out, err := run.Output()
	if err != nil {
		t.Fatalf("running the patterns in node: %v", err)
	}
	var matched struct{ Plain, Unicode [][]bool }
	if err := json.Unmarshal(out, &matched); err != nil {
		t.Fatal(err)
	}
	for i, g := range grammars() {
		for j, text := range texts {
			want := g.pattern.MatchString(text)
			if matched.Plain[i][j] != want || matched.Unicode[i][j] != want {
				t.Errorf("%s %q: RE2 %t, ECMAScript %t, with u %t", g.name, text, want, matched.Plain[i][j], matched.Unicode[i][j])
			}
		}
	}
}

func FuzzPatterns(f *testing.F) {
	for _, text := range corpus() {
		f.Add(text)
	}
	all := grammars()
	f.Fuzz(func(t *testing.T, text string) {
		for _, g := range all {
			g.agree(t, text)
		}
	})
}
