package wood

import (
	"errors"

	"plumbrule/checker/measure"
)

// tallest is the greatest post height that the tables print.
const tallest = 14 * measure.Foot

// TablePostHeight repeats the heights of 6x6 No. 2 posts of DCA 6 (2015 IRC edition) Table 4, down to a whole foot and at
// most 14 ft, for southern pine and incised Douglas fir-larch; 2 ft is printed wherever the wood is strong enough. This is a fit and no derivation: an eccentricity of a
// twelfth of the depth and Ke 1.2 bring every cell within a foot, always on the low side where they differ. Without them
// the heights come out 2 to 5 ft above the printed ones at the heavier loads.
func TablePostHeight(species Species, joistSpan, beamSpan measure.Length) (Span, error) {
	l := Lumber{Species: species, Grade: No2, Wet: true, Size: sixBySix()}
	switch species {
	case SouthernPine:
	case DouglasFirLarch:
		l.Incised = true
	default:
		return Span{}, errors.New("the post heights of no other species were reproduced")
	}
	profile := TablePosts()
	withPost, _, err := dca6PostLoad(joistSpan, beamSpan)
	if err != nil {
		return Span{}, err
	}
	post := Post{Lumber: l, Load: withPost - profile.PostWeight, Longest: tallest}
	span, err := post.MaxHeight(profile)
	if err != nil {
		return Span{}, err
	}
	span.Length -= span.Length % measure.Foot
	// The lowest cells behave as a short column, whatever its eccentricity.
	const short = 2 * measure.Foot
	if span.Length < short && strongEnough(span.Report) {
		span.Length = short
	}
	return span, nil
}

// strongEnough tells whether the stress is within Fc*, stability apart.
func strongEnough(r Report) bool {
	have, _ := r.Find("fc")
	allowed, _ := r.Find("Fc′")
	return have.Value <= allowed.Value
}

func sixBySix() measure.Size {
	return measure.Size{Thickness: 11 * measure.Inch / 2, Depth: 11 * measure.Inch / 2, Nominal: "6x6"}
}

// TablePostHeightByArea repeats the heights of Table R507.4 of IRC 2021, as recalled, for southern pine and for the
// group of firs, which spruce-pine-fir stands for: concentric, pinned, the live or snow load and 10 psf on a tributary
// area in square feet, to the nearest inch, at most 14 ft. The recalled cells themselves are not confirmed, and hem-fir
// would come out lower than the firs' row.
func TablePostHeightByArea(g Group, size measure.Size, area float64, imposed measure.Pressure) (Span, error) {
	l := Lumber{Species: SouthernPine, Grade: No2, Wet: true, Size: size}
	switch g {
	case GroupSouthernPine:
	case GroupFirs:
		l.Species, l.Incised = SprucePineFir, true
	default:
		return Span{}, errors.New("the post heights of that group were not reproduced")
	}
	if !(area > 0) || imposed <= 0 {
		return Span{}, errors.New("a post needs an area and a load")
	}
	// 50 psf is the snow column; CD is left at 1, which fits it better than 1.15.
	post := Post{Lumber: l, Load: forceOf((psf(imposed) + 10) * area), Longest: tallest}
	span, err := post.MaxHeight(Strict())
	if err != nil {
		return Span{}, err
	}
	return span.nearest(), nil
}
