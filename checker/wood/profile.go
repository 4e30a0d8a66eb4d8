package wood

import "plumbrule/checker/measure"

// Profile says where a calculation departs from the letter of the NDS to repeat a printed table. The zero value and
// [Strict] do not depart from it at all.
type Profile struct {
	Name string
	// TwoPlyFactor is the repetitive member factor Cr of a beam of two plies. The NDS grants none below three members;
	// 0 stands for that.
	TwoPlyFactor float64
	// NarrowSizeFactor reads the size factor CF of a 4x10 and wider in the column for 2 and 3 in thickness, which is
	// lower than its own.
	NarrowSizeFactor bool
	// DeadInDeflection is the part of the dead load that counts in the deflection under imposed load.
	DeadInDeflection float64
	// CantileverShift is taken off a computed cantilever, as if it were printed from another point of the bearing.
	CantileverShift measure.Length
	// PostWeight is added to the load on a footing or post.
	PostWeight measure.Force
	// PostEccentricity is the eccentricity of the load on a post as a part of its depth, for NDS 15.4.
	PostEccentricity float64
	// PostKe is the effective length factor of a post; 0 stands for 1, pinned at both ends.
	PostKe float64
}

// Strict is the NDS as written.
func Strict() Profile { return Profile{Name: "NDS as written"} }

// TableBeams repeats the beam spans of IRC 2015 and 2018 Table R507.5, which are those of DCA 6 (2015 IRC edition)
// Table 3, and of IRC 2021 Table R507.5(1): 1.10 for two plies and half the dead load in the deflection are fitted.
func TableBeams() Profile {
	return Profile{Name: "printed beam tables", TwoPlyFactor: 1.10, NarrowSizeFactor: true, DeadInDeflection: 0.5}
}

// TableOverhangs repeats the joist overhangs of DCA 6 (2015 IRC edition) Table 2: 3 in is fitted.
func TableOverhangs() Profile {
	return Profile{Name: "DCA 6 overhangs", CantileverShift: 3 * measure.Inch}
}

// TablePosts repeats the 6x6 post heights and the footings of DCA 6 (2015 IRC edition) Table 4. All three figures are
// fitted: other pairs of eccentricity and Ke serve single columns of the table as well, so what its authors really
// assumed stays unknown.
func TablePosts() Profile {
	return Profile{Name: "DCA 6 posts and footings", PostWeight: forceOf(165), PostEccentricity: 1.0 / 12, PostKe: 1.2}
}
