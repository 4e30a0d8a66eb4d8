package wood

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// finiteElements solves a girder with Hermite beam elements between the breaks, E′I = 1, and gives deflection and moment
// at each break and the reactions. It shares nothing with the theorem of three moments.
func finiteElements(t *testing.T, g girder, l loading, breaks []float64) (drops, moments, reactions []float64) {
	t.Helper()
	n := len(breaks)
	stiffness, load := mat.NewSymDense(2*n, nil), mat.NewVecDense(2*n, nil)
	element := func(h float64) [4][4]float64 {
		return [4][4]float64{
			{12 / (h * h * h), 6 / (h * h), -12 / (h * h * h), 6 / (h * h)},
			{6 / (h * h), 4 / h, -6 / (h * h), 2 / h},
			{-12 / (h * h * h), -6 / (h * h), 12 / (h * h * h), -6 / (h * h)},
			{6 / (h * h), 2 / h, -6 / (h * h), 4 / h},
		}
	}
	even := func(a, b float64) float64 {
		sum := 0.0
		for _, p := range l.patches {
			if p.from <= a && b <= p.to {
				sum += p.load
			}
		}
		return sum
	}
	for i := range n - 1 {
		h, w := breaks[i+1]-breaks[i], even(breaks[i], breaks[i+1])
		k := element(h)
		for r := range 4 {
			for c := r; c < 4; c++ {
				stiffness.SetSym(2*i+r, 2*i+c, stiffness.At(2*i+r, 2*i+c)+k[r][c])
			}
		}
		for r, v := range [4]float64{w * h / 2, w * h * h / 12, w * h / 2, -w * h * h / 12} {
			load.SetVec(2*i+r, load.AtVec(2*i+r)+v)
		}
	}
	for _, p := range l.points {
		i, _ := slices.BinarySearch(breaks, p.at)
		load.SetVec(2*i, load.AtVec(2*i)+p.load)
	}
	var free []int
	for d := range 2 * n {
		if d%2 == 1 || !slices.Contains(g.supports, breaks[d/2]) {
			free = append(free, d)
		}
	}
	reduced, right := mat.NewSymDense(len(free), nil), mat.NewVecDense(len(free), nil)
	for a, i := range free {
		right.SetVec(a, load.AtVec(i))
		for b := a; b < len(free); b++ {
			reduced.SetSym(a, b, stiffness.At(i, free[b]))
		}
	}
	var factors mat.Cholesky
	if !factors.Factorize(reduced) {
		t.Fatal("the stiffness matrix is not positive definite")
	}
	var solved mat.VecDense
	if err := factors.SolveVecTo(&solved, right); err != nil {
		t.Fatal(err)
	}
	u := mat.NewVecDense(2*n, nil)
	for a, i := range free {
		u.SetVec(i, solved.AtVec(a))
	}
	var balance mat.VecDense
	balance.MulVec(stiffness, u)
	moments = make([]float64, n)
	for i := range n {
		drops = append(drops, u.AtVec(2*i))
		if slices.Contains(g.supports, breaks[i]) {
			reactions = append(reactions, load.AtVec(2*i)-balance.AtVec(2*i))
		}
	}
	for i := range n - 1 {
		h, w := breaks[i+1]-breaks[i], even(breaks[i], breaks[i+1])
		k := element(h)
		end := -w * h * h / 12
		for c := range 4 {
			end -= k[3][c] * u.AtVec(2*i+c)
		}
		// What holds the right end of the element hogs where it is above zero.
		moments[i+1] = end
	}
	return drops, moments, reactions
}

// randomGirder makes a girder of one to five spans with or without overhangs on a raster of 3 in.
func randomGirder(r *rand.Rand) (girder, loading, loading) {
	at := func(steps int) float64 { return 3 * float64(1+r.IntN(steps)) }
	g := girder{}
	x := 0.0
	if r.IntN(2) == 0 {
		x = at(16)
	}
	g.supports = []float64{x}
	for range 1 + r.IntN(5) {
		x += at(60)
		g.supports = append(g.supports, x)
	}
	g.to = x
	if r.IntN(2) == 0 {
		g.to += at(16)
	}
	place := func() float64 { return 3 * float64(r.IntN(int(g.to/3)+1)) }
	some := func() loading {
		var l loading
		for range r.IntN(4) {
			if a, b := place(), place(); a != b {
				l.patches = append(l.patches, patch{min(a, b), max(a, b), 20 * r.Float64()})
			}
		}
		for range r.IntN(3) {
			l.points = append(l.points, point{place(), 500 * r.Float64()})
		}
		return l
	}
	return g, some(), some()
}

func furthest(a, b []float64) (off, scale float64) {
	for i := range a {
		off = max(off, math.Abs(a[i]-b[i]))
		scale = max(scale, math.Abs(a[i]), math.Abs(b[i]))
	}
	return off, scale
}

func TestThreeMomentsAgreeWithFiniteElements(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	const tolerance = 1e-6
	worst := 0.0
	for range 2000 {
		g, l, _ := randomGirder(r)
		breaks := g.breaks(l)
		got := g.solve(l, breaks)
		drops, moments, reactions := finiteElements(t, g, l, breaks)
		var haveDrops, haveMoments []float64
		for i, b := range breaks {
			haveDrops = append(haveDrops, dropAt(got.segments, b))
			if i < len(got.segments) {
				haveMoments = append(haveMoments, got.segments[i].moment)
			} else {
				haveMoments = append(haveMoments, 0)
			}
		}
		for _, pair := range [...]struct {
			what       string
			have, want []float64
		}{{"deflections", haveDrops, drops}, {"moments", haveMoments, moments}, {"reactions", got.reactions, reactions}} {
			off, scale := furthest(pair.have, pair.want)
			if scale == 0 {
				continue
			}
			worst = max(worst, off/scale)
			if off > tolerance*scale {
				t.Fatalf("%s of %+v under %+v:\ngot  %v\nwant %v", pair.what, g, l, pair.have, pair.want)
			}
		}
	}
	t.Logf("2000 girders, furthest off by %.1e of the greatest value", worst)
}

// The patterns that the envelope tries are few; all of them, tried here, give nothing greater.
func TestEnvelopeMissesNoPattern(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const tolerance = 1e-6
	tried := 0
	for tried < 150 {
		g, permanent, variable := randomGirder(r)
		parts := g.pieces(variable)
		if len(parts) > 9 {
			continue
		}
		tried++
		got := g.envelope(permanent, variable)
		breaks := g.breaks(append(parts, permanent)...)
		want := envelope{drops: make([]extremes, len(g.supports)+1), reactions: make([]extremes, len(g.supports))}
		for pattern := range 1 << len(parts) {
			sum := g.solve(permanent, breaks)
			for k, p := range parts {
				if pattern>>k&1 == 1 {
					sum = sum.add(g.solve(p, breaks), 1)
				}
			}
			if pattern == 0 {
				for i, v := range sum.reactions {
					want.reactions[i] = extremes{v, v}
				}
			}
			for i, v := range sum.reactions {
				want.reactions[i].take(v)
			}
			want.search(g, sum, pattern == 0)
		}
		have := []float64{got.sagging.value, -got.hogging.value, math.Abs(got.shear.value)}
		full := []float64{want.sagging.value, -want.hogging.value, math.Abs(want.shear.value)}
		for i := range have {
			if scale := max(full[0], full[1], full[2]); math.Abs(have[i]-full[i]) > tolerance*scale {
				t.Fatalf("%+v: moments and shear %v, all patterns %v", g, have, full)
			}
		}
		for i := range got.reactions {
			if off := math.Abs(got.reactions[i].most-want.reactions[i].most) + math.Abs(got.reactions[i].least-want.reactions[i].least); off > 1e-6 {
				t.Fatalf("reaction %d: %+v, all patterns %+v", i, got.reactions[i], want.reactions[i])
			}
		}
		for i := range got.drops {
			scale := want.drops[i].most - want.drops[i].least
			if off := max(math.Abs(got.drops[i].most-want.drops[i].most), math.Abs(got.drops[i].least-want.drops[i].least)); off > tolerance*scale+1e-3 {
				t.Fatalf("%+v, stretch %d: %+v, all patterns %+v", g, i, got.drops[i], want.drops[i])
			}
		}
	}
}

// The closed forms that the longest cantilevers come from, against finite elements: w·L³a/24E′I up with the span alone
// loaded, w·a³(4L + 3a)/24E′I down with the cantilever alone, P·a²(L + a)/3E′I under a force.
func TestCantileverFormulasAgreeWithFiniteElements(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 500 {
		back, a, w, p := 24+200*r.Float64(), 6+60*r.Float64(), 1+20*r.Float64(), 100+200*r.Float64()
		g := girder{to: back + a, supports: []float64{0, back}}
		breaks := g.breaks()
		for _, c := range [...]struct {
			name string
			load loading
			want float64
		}{
			{"span alone", loading{patches: []patch{{0, back, w}}}, -w * back * back * back * a / 24},
			{"cantilever alone", loading{patches: []patch{{back, back + a, w}}}, w * a * a * a * (4*back + 3*a) / 24},
			{"force", loading{points: []point{{back + a, p}}}, p * a * a * (back + a) / 3},
		} {
			drops, _, _ := finiteElements(t, g, c.load, breaks)
			if got := drops[len(drops)-1]; math.Abs(got-c.want) > 1e-8*math.Abs(c.want) {
				t.Fatalf("%s, L %g, a %g: %g, closed form %g", c.name, back, a, got, c.want)
			}
		}
		all := loading{patches: []patch{{0, back + a, w}}}
		_, _, reactions := finiteElements(t, g, all, breaks)
		if want := w * (back + a) * (back + a) / (2 * back); math.Abs(reactions[1]-want) > 1e-8*want {
			t.Fatalf("outer reaction %g, (L + c)²/2L gives %g", reactions[1], want)
		}
	}
}
