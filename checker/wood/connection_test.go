package wood_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func plank(angle float64) wood.Layer {
	return wood.Layer{Length: 3 * measure.Inch / 2, G: 0.55, Angle: angle}
}

func lag(t testing.TB, diameter string) wood.Fastener {
	t.Helper()
	d, _, err := measure.ParseLength(diameter)
	if err != nil {
		t.Fatal(err)
	}
	f, err := wood.Lag(d)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// ledgerBolt is a 1/2 in bolt through a southern pine ledger and band, loaded across the grain of both.
func ledgerBolt(t testing.TB) wood.Connection {
	t.Helper()
	bolt, err := wood.Bolt(measure.Inch / 2)
	if err != nil {
		t.Fatal(err)
	}
	return wood.Connection{Fastener: bolt, Side: plank(90), Main: plank(90)}
}

// ledgerLag is a 1/2 in lag screw through a southern pine ledger, eight diameters deep.
func ledgerLag(t testing.TB) wood.Connection {
	t.Helper()
	c := wood.Connection{Fastener: lag(t, "1/2 in"), Side: plank(90), Main: plank(90)}
	c.Main.Length = 4 * measure.Inch
	return c
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %g, want %g ± %g", what, got, want, tolerance)
	}
}

func lb(f measure.Force) float64 {
	v, _ := f.In(measure.Imperial)
	return v
}

// By the yield equations a ledger bolt carries 252 lb, in wet wood 176 lb; an independent calculation gave the same. The
// printed spacings stand for 713.5 lb, so that the NDS spacing at 12 ft joists is 7 in against 29 in.
func TestLedgerByYieldEquations(t *testing.T) {
	y, err := ledgerBolt(t).Yield()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "bolt", lb(y.Z), 252, 0.5)
	if y.Governs != "II" {
		t.Errorf("mode %s governs", y.Governs)
	}
	wet, _ := y.Adjusted(wood.TenYears, wood.WetInService, 1)
	near(t, "wet bolt", lb(wet), 176, 0.5)
	s, err := wood.LedgerSpacing(wet, 12*measure.Foot, live40(t))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "spacing by the NDS", in(s.Length), 7, 0.1)
	table, err := wood.TableLedgerSpacing(wood.LedgerBolt, 12*measure.Foot, live40(t))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "printed spacing", in(table.Length), 29, 0)

	y, err = ledgerLag(t).Yield()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "lag screw", lb(y.Z), 228, 0.5)
	short := ledgerLag(t)
	short.Main.Length = 3 * measure.Inch / 2
	if y, err = short.Yield(); err != nil {
		t.Fatal(err)
	}
	near(t, "lag screw in 1-1/2 in", lb(y.Z), 187, 0.5)
}

// Double shear of equal members is never weaker than single shear, and never stronger than two of them.
func TestDoubleShear(t *testing.T) {
	single := ledgerBolt(t)
	double := single
	double.Double = true
	one, err := single.Yield()
	if err != nil {
		t.Fatal(err)
	}
	two, err := double.Yield()
	if err != nil {
		t.Fatal(err)
	}
	if len(one.Modes) != 6 || len(two.Modes) != 4 {
		t.Errorf("%d and %d modes", len(one.Modes), len(two.Modes))
	}
	if two.Z < one.Z || lb(two.Z) > 3.6/4*2*lb(one.Z)*1.5 {
		t.Errorf("single %g lb, double %g lb", lb(one.Z), lb(two.Z))
	}
}

// A force at an angle lies between those along and across the grain, and falls as the angle grows.
func TestHankinson(t *testing.T) {
	last := math.Inf(1)
	for angle := 0.0; angle <= 90; angle += 15 {
		c := ledgerBolt(t)
		c.Side.Angle, c.Main.Angle = angle, angle
		y, err := c.Yield()
		if err != nil {
			t.Fatal(err)
		}
		if lb(y.Z) >= last {
			t.Errorf("%g° gives %g lb, after %g lb", angle, lb(y.Z), last)
		}
		last = lb(y.Z)
	}
}

// Source: NDS Table 11.3.6A, 1 in bolts 4 in apart in members of E 1.4e6 psi, side member of 5 in², from memory.
func TestGroupAction(t *testing.T) {
	for ratio, want := range map[float64][]float64{
		0.5: {1, 0.98, 0.92, 0.84, 0.75, 0.68},
		1.0: {1, 1.00, 0.97, 0.91, 0.85, 0.78},
	} {
		for i, cg := range want {
			row := wood.Row{Count: i + 1, Spacing: 4 * measure.Inch, SideStiffness: 1.4e6 * 5, MainStiffness: 1.4e6 * 5 / ratio}
			got, err := row.Group(measure.Inch)
			if err != nil {
				t.Fatal(err)
			}
			near(t, "Cg", got, cg, 0.005)
		}
	}
	row := wood.Row{Count: 3, Spacing: 4 * measure.Inch, SideStiffness: 7e6, MainStiffness: 14e6}
	wooden, err := row.Group(measure.Inch)
	if err != nil {
		t.Fatal(err)
	}
	row.Steel = true
	if steel, err := row.Group(measure.Inch); err != nil || steel >= wooden {
		t.Errorf("a stiffer joint shares worse: steel %g, wood %g, %v", steel, wooden, err)
	}
}

func TestConnectionErrors(t *testing.T) {
	good := ledgerBolt(t)
	for name, spoil := range map[string]func(*wood.Connection){
		"no length":   func(c *wood.Connection) { c.Side.Length = 0 },
		"no gravity":  func(c *wood.Connection) { c.Main.G = 0 },
		"nan gravity": func(c *wood.Connection) { c.Main.G = math.NaN() },
		"angle":       func(c *wood.Connection) { c.Side.Angle = 91 },
		"nan angle":   func(c *wood.Connection) { c.Side.Angle = math.NaN() },
		"no fastener": func(c *wood.Connection) { c.Fastener = wood.Fastener{} },
	} {
		c := good
		spoil(&c)
		if _, err := c.Yield(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := wood.Lag(measure.Inch / 3); err == nil {
		t.Error("a lag screw of 1/3 in was found")
	}
	if _, err := wood.Bolt(0); err == nil {
		t.Error("a bolt without diameter was made")
	}
	if _, err := (wood.Row{}).Group(measure.Inch); err == nil {
		t.Error("an empty row has a group factor")
	}
	if _, err := (wood.Row{Count: 3}).Group(measure.Inch); err == nil {
		t.Error("a row without stiffness has a group factor")
	}
}
