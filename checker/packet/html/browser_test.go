package html_test

import (
	"fmt"
	"html"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/packet"
)

// browser finds a browser that runs without a window; the test says so and is
// skipped where there is none.
func browser(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes long to start")
	}
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Skip("no chromium here: the layout in a browser is not tested")
	return ""
}

func headless(t *testing.T, name string, args ...string) string {
	t.Helper()
	cmd := exec.CommandContext(t.Context(), name, append([]string{"--headless=new", "--no-sandbox", "--disable-gpu"}, args...)...)
	out, err := cmd.Output()
	if err != nil {
		t.Skipf("the browser does not run here: %v", err)
	}
	return string(out)
}

// framed sets pages into frames of a window of some width, and has a script
// outside of them say of each what look, the body of a function of a frame's
// document, makes of it.
func framed(t *testing.T, width int, pages map[string]*packet.Packet, look string) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("<!DOCTYPE html><title>frames</title><body>")
	for name, p := range pages {
		fmt.Fprintf(&b, `<iframe name="%s" width="%d" height="600" style="border:0" srcdoc="%s"></iframe>`, name, width, html.EscapeString(write(t, p)))
	}
	fmt.Fprintf(&b, `<p id="say"></p><script>
const look = d => { %s };
addEventListener("load", () => { document.getElementById("say").textContent =
  [...document.querySelectorAll("iframe")].map(f => f.name + "=" + look(f.contentDocument) + ";").join(" "); });
</script>`, look)
	return b.String()
}

// looked opens pages at a width and gives what look says of each.
func looked(t *testing.T, width int, look string) map[string]string {
	t.Helper()
	name := browser(t)
	list := packets(t)
	file := filepath.Join(t.TempDir(), "frames.html")
	if err := os.WriteFile(file, []byte(framed(t, width, list, look)), 0o600); err != nil {
		t.Fatal(err)
	}
	out := headless(t, name, "--virtual-time-budget=20000", "--dump-dom", "file://"+file)
	_, answer, _ := strings.Cut(out[strings.LastIndex(out, `<p id="say">`):], ">")
	said := map[string]string{}
	for _, m := range regexp.MustCompile(`([a-z-]+)=([^;]*);`).FindAllStringSubmatch(answer, -1) {
		said[m[1]] = m[2]
	}
	if len(said) != len(list) {
		t.Fatalf("the browser looked at %d pages of %d", len(said), len(list))
	}
	return said
}

// No page scrolls sideways as a whole on a screen of 320 CSS pixels: what is
// wider scrolls in a region of its own.
func TestNarrowScreen(t *testing.T) {
	const width = 320
	for name, by := range looked(t, width, "const e = d.documentElement; return e.scrollWidth - e.clientWidth;") {
		if by != "0" {
			t.Errorf("%s is %s pixels wider than a screen of %d", name, by, width)
		}
	}
}

// A table that is cut off says so above it, and one that is not does not. A
// drawing is never cut off until somebody asks for it large, and is then.
func TestWhatIsCutOffSaysSo(t *testing.T) {
	const look = `
const cut = e => e.scrollWidth > e.clientWidth + 1, seen = e => e && d.defaultView.getComputedStyle(e).display !== "none";
const tables = [...d.querySelectorAll(".scroll")], drawings = [...d.querySelectorAll(".drawing")], boxes = [...d.querySelectorAll(".zoom")];
const hint = e => seen(e.previousElementSibling?.matches(".hint") ? e.previousElementSibling : null);
const fitting = drawings.filter(e => !cut(e)).length;
boxes.forEach(e => { e.checked = true; });
return [
  "silent " + tables.filter(e => cut(e) && !hint(e)).length, "idle " + tables.filter(e => !cut(e) && hint(e)).length,
  "fitting " + (fitting === drawings.length), "large " + (drawings.filter(cut).length === drawings.length),
  "boxes " + (boxes.filter(seen).length === drawings.length), "hints " + tables.some(hint),
].join(", ");`
	for width, want := range map[int]string{
		320:  "silent 0, idle 0, fitting true, large true, boxes true, hints true",
		360:  "silent 0, idle 0, fitting true, large true, boxes true, hints true",
		1280: "silent 0, idle 0, fitting true, large false, boxes false, hints false",
	} {
		for name, got := range looked(t, width, look) {
			if got != want {
				t.Errorf("%s at %d: %s, want %s", name, width, got, want)
			}
		}
	}
}

// On paper each drawing has a lying page of its own and is not carried over to a
// second one, and the pages are numbered.
func TestPrint(t *testing.T) {
	name := browser(t)
	for _, tool := range []string{"pdfinfo", "pdftotext"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skipf("%s is not here: the printed page is not looked at", tool)
		}
	}
	list := packets(t)
	for _, design := range []string{"canned", "karaka-bay"} {
		p, dir := list[design], t.TempDir()
		page, printed := filepath.Join(dir, "packet.html"), filepath.Join(dir, "packet.pdf")
		if err := os.WriteFile(page, []byte(write(t, p)), 0o600); err != nil {
			t.Fatal(err)
		}
		headless(t, name, "--no-pdf-header-footer", "--print-to-pdf="+printed, "file://"+page)
		info, err := exec.CommandContext(t.Context(), "pdfinfo", "-l", "999", printed).Output()
		if err != nil {
			t.Fatal(err)
		}
		lying, drawings := 0, 0
		sizes := regexp.MustCompile(`Page +\d+ size: +([\d.]+) x ([\d.]+)`).FindAllStringSubmatch(string(info), -1)
		for _, m := range sizes {
			if number(t, m[1]) > number(t, m[2]) {
				lying++
			}
		}
		for i := range p.Sections {
			for k := range p.Sections[i].Parts {
				if p.Sections[i].Parts[k].Drawing != nil {
					drawings++
				}
			}
		}
		if lying != drawings {
			t.Errorf("%s: %d lying pages for %d drawings", design, lying, drawings)
		}
		text, err := exec.CommandContext(t.Context(), "pdftotext", printed, "-").Output()
		if err != nil {
			t.Fatal(err)
		}
		if want := fmt.Sprintf("page %d of %d", len(sizes), len(sizes)); !strings.Contains(string(text), want) {
			t.Errorf("%s: no %q at the foot of the last page", design, want)
		}
	}
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	n, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return n
}
