package ruleset

// Amends says what a figure of an overlay took the place of, and who changed
// it.
type Amends struct {
	// By is the place whose rules the overlay holds, or its publisher.
	By string
	// Text, Clause and Set are those of the figure replaced. They are empty
	// where the set below gave none, which is then an addition.
	Text, Clause, Set string
	// Before is what the replaced figure had replaced itself; nil where it was
	// not amended.
	Before *Amends
}

// Off says that an overlay took a check out.
type Off struct {
	By, Clause, Reason string
}

// line says in one line what became of a figure that reads text under clause;
// empty for one that nobody amended.
func (a *Amends) line(text, clause string) string {
	switch {
	case a == nil:
		return ""
	case a.Set == "":
		return "added by " + a.By + ", " + clause
	case a.Text == text:
		return "confirmed by " + a.By + ", " + clause + "; as in " + a.Set + " " + a.Clause
	}
	return "amended by " + a.By + ", " + clause + "; replaces " + a.replaced()
}

// replaced names the figure that was replaced and where it stands.
func (a *Amends) replaced() string { return a.Text + " (" + a.Set + " " + a.Clause + ")" }

// Amended says in one line who amended the figure, under which clause, and what
// it replaced; empty for a figure that nobody amended.
func (f *Figure) Amended() string { return f.Amends.line(f.Text, f.Clause) }

// Amended says of a cell what it says of a figure.
func (c *Cell) Amended() string { return c.Amends.line(c.Text, c.Clause) }

// History lists what the figure replaced, the latest first, each with the set
// and the clause where it stands.
func (f *Figure) History() []string { return f.Amends.history() }

// History lists what the cell replaced, the latest first.
func (c *Cell) History() []string { return c.Amends.history() }

func (a *Amends) history() []string {
	var lines []string
	for ; a != nil && a.Set != ""; a = a.Before {
		lines = append(lines, a.replaced())
	}
	return lines
}

// String says who took the check out, under which clause and why.
func (o *Off) String() string {
	return "taken out by " + o.By + ", " + o.Clause + ": " + o.Reason
}
