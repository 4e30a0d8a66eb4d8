package wood

import "strings"

// Species is a species group of the NDS Supplement.
type Species string

// The species groups whose values are tabulated here.
const (
	SouthernPine       Species = "southern pine"
	DouglasFirLarch    Species = "Douglas fir-larch"
	HemFir             Species = "hem-fir"
	SprucePineFir      Species = "spruce-pine-fir"
	SprucePineFirSouth Species = "spruce-pine-fir (south)"
	Redwood            Species = "redwood"
	WesternCedars      Species = "western cedars"
	WesternWoods       Species = "western woods"    // ponderosa pine is graded with it
	NorthernSpecies    Species = "northern species" // red pine is graded with it
)

// ParseSpecies reads a species or group as it is stamped or spoken, in any case. It does not know plain "fir", "pine"
// or "Douglas fir": they name several groups.
func ParseSpecies(text string) (Species, bool) {
	spelling := strings.Join(strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return strings.ContainsRune(" -–.()&", r)
	}), " ")
	switch spelling {
	case "southern pine", "southern yellow pine", "syp", "sp":
		return SouthernPine, true
	case "douglas fir larch", "doug fir larch", "doug fir l", "df l", "dfl":
		return DouglasFirLarch, true
	case "hem fir", "hf":
		return HemFir, true
	case "spruce pine fir", "spf", "s p f":
		return SprucePineFir, true
	case "spruce pine fir south", "spf south", "spfs", "spf s", "s p f s":
		return SprucePineFirSouth, true
	case "redwood":
		return Redwood, true
	case "western cedars", "western cedar", "western red cedar":
		return WesternCedars, true
	case "western woods", "ponderosa pine":
		return WesternWoods, true
	case "northern species", "red pine":
		return NorthernSpecies, true
	}
	return "", false
}

// Grade is a grade of dimension lumber or timber.
type Grade string

// The grades.
const (
	SelectStructural Grade = "Select Structural"
	No1AndBetter     Grade = "No. 1 & Btr"
	No1              Grade = "No. 1"
	No1OpenGrain     Grade = "No. 1 open grain" // redwood
	No1No2           Grade = "No. 1/No. 2"      // Canadian and northern groups grade both as one
	No2              Grade = "No. 2"
	No2OpenGrain     Grade = "No. 2 open grain" // redwood
	No3              Grade = "No. 3"
)

// ParseGrade reads a grade as it is stamped or spoken: No. 2, #2, SS.
func ParseGrade(text string) (Grade, bool) {
	spelling := strings.NewReplacer(" ", "", ".", "", "#", "no", "-", "", "and", "&", "better", "btr").
		Replace(strings.ToLower(text))
	switch spelling {
	case "selectstructural", "selstr", "ss":
		return SelectStructural, true
	case "no1&btr":
		return No1AndBetter, true
	case "no1":
		return No1, true
	case "no1opengrain":
		return No1OpenGrain, true
	case "no1/no2", "no1/2":
		return No1No2, true
	case "no2", "no2&btr", "no2orbtr":
		return No2, true
	case "no2opengrain":
		return No2OpenGrain, true
	case "no3":
		return No3, true
	}
	return "", false
}
