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

// framed sets pages into frames of a narrow window, and has a script outside of
// them say by how much each wants to be wider.
func framed(t *testing.T, width int, pages map[string]*packet.Packet) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("<!DOCTYPE html><title>frames</title><body>")
	for name, p := range pages {
		fmt.Fprintf(&b, `<iframe name="%s" width="%d" height="600" style="border:0" srcdoc="%s"></iframe>`, name, width, html.EscapeString(write(t, p)))
	}
	b.WriteString(`<p id="say"></p><script>
addEventListener("load", () => { document.getElementById("say").textContent =
  [...document.querySelectorAll("iframe")].map(f => f.name + "=" + (e => e.scrollWidth - e.clientWidth)(f.contentDocument.documentElement) + ";").join(" "); });
</script>`)
	return b.String()
}

// No page scrolls sideways as a whole on a screen of 320 CSS pixels: what is
// wider scrolls in a region of its own.
func TestNarrowScreen(t *testing.T) {
	const width = 320
	name := browser(t)
	list := packets(t)
	file := filepath.Join(t.TempDir(), "frames.html")
	if err := os.WriteFile(file, []byte(framed(t, width, list)), 0o600); err != nil {
		t.Fatal(err)
	}
	out := headless(t, name, "--virtual-time-budget=20000", "--dump-dom", "file://"+file)
	said := regexp.MustCompile(`([a-z-]+)=(\d+);`).FindAllStringSubmatch(out[strings.LastIndex(out, `<p id="say">`):], -1)
	if len(said) != len(list) {
		t.Fatalf("the browser measured %d pages of %d", len(said), len(list))
	}
	for _, m := range said {
		if m[2] != "0" {
			t.Errorf("%s is %s pixels wider than a screen of %d", m[1], m[2], width)
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
