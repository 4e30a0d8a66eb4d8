package measure

import (
	"strconv"
	"strings"
)

// readNominal reads a thickness and a width that softwood is sold in, thickness first.
func readNominal(text string) (sizeIn, *fault) {
	first, second, found := cutSize(text)
	if !found {
		return sizeIn{}, misshapen("not a nominal size such as 2x10", strings.Replace(text, " by ", "x", 1))
	}
	size, ok := dressed(first, second)
	if !ok {
		return sizeIn{}, notNominal(first, second)
	}
	return sizeIn{size, Imperial}, nil
}

// dressed gives the actual measures of a nominal size after PS 20, the American Softwood Lumber Standard (the rule is
// from memory of its tables): boards and dimension lumber as surfaced dry, timbers from 5 in on as surfaced green.
func dressed(thickness, width string) (Size, bool) {
	size := Size{Nominal: thickness + "x" + width}
	wide, ok := nominalInches(width)
	switch thickness {
	case "1":
		size.Thickness, size.Depth = 3*Inch/4, dryWidth(wide)
		return size, ok
	case "5/4":
		size.Thickness, size.Depth = Inch, dryWidth(wide)
		return size, ok
	}
	thick, known := nominalInches(thickness)
	size.Thickness, size.Depth = thick-Inch/2, dryWidth(wide)
	if thick >= 5*Inch {
		size.Depth = wide - Inch/2
	}
	return size, ok && known && thick <= wide
}

// dryWidth is the width of a board or joist: 1/2 in under its name up to 6 in, 3/4 in under it from there on.
func dryWidth(nominal Length) Length {
	if nominal <= 6*Inch {
		return nominal - Inch/2
	}
	return nominal - 3*Inch/4
}

func nominalInches(name string) (Length, bool) {
	switch name {
	case "2", "3", "4", "5", "6", "8", "10", "12", "14", "16":
		inches, err := strconv.Atoi(name)
		return Length(inches) * Inch, err == nil
	}
	return 0, false
}

// notNominal explains what is not sold: plies counted in front, a length behind, units, sides the wrong way round, or
// a size between two others.
func notNominal(first, second string) *fault {
	if one, found := behindPlies(first); found && nominalThickness(one) {
		return misshapen("a count of plies is given apart from the size", one+"x"+second)
	}
	if width, _, found := cutSize(second); found {
		return misshapen("a third measure behind the size", first+"x"+width)
	}
	if strings.Trim(first+second, "0123456789/") != "" {
		return misshapen("a nominal size is two bare numbers such as 2x10",
			strings.Trim(first, `" in`)+"x"+strings.Trim(second, `" in`), first+" in x "+second+" in")
	}
	if _, ok := dressed(second, first); ok {
		return misshapen("the thickness comes first", second+"x"+first)
	}
	const largest = 16
	thick, _ := strconv.Atoi(first)
	wide, _ := strconv.Atoi(second)
	if thick > largest || wide > largest {
		return misshapen("no nominal size, and an actual one has its units", first+" mm x "+second+" mm")
	}
	return misshapen("not a nominal softwood size",
		first+"x"+strconv.Itoa(wide-1), first+"x"+strconv.Itoa(wide+1),
		strconv.Itoa(thick-1)+"x"+second, strconv.Itoa(thick+1)+"x"+second)
}

func nominalThickness(name string) bool {
	_, ok := dressed(name, "16")
	return ok
}

// behindPlies drops the count of 2-2x10 or (2) 2x10 from the thickness.
func behindPlies(thickness string) (string, bool) {
	for _, mark := range [...]string{"-", ")"} {
		if _, one, found := strings.Cut(thickness, mark); found {
			return strings.TrimLeft(one, " "), true
		}
	}
	return "", false
}
