package measure

// The patterns below match what the parsers accept, anchored at both ends. They keep to what RE2 and ECMA-262 (with
// and without its u flag) read alike: no classes such as \s, whose members differ, and no escape but that of the point.
const (
	// LengthPattern matches what ParseLength accepts.
	LengthPattern = begin + minus + "(?:" + imperialLength + "|" + metricLength + ")" + end
	// PressurePattern matches what ParsePressure accepts.
	PressurePattern = begin + numeral + blanks + pressureUnits + end
	// ForcePattern matches what ParseForce accepts.
	ForcePattern = begin + numeral + blanks + forceUnits + end
	// AnglePattern matches what ParseAngle accepts.
	AnglePattern = begin + minus + numeral + "(?:" + blanks + angleUnits + ")?" + end
	// SlopePattern matches what ParseSlope accepts.
	SlopePattern = begin + "(?:level|LEVEL|" + minus + numeral + "(?:" + ratio + "))" + end
	// NominalPattern matches what ParseNominal accepts.
	NominalPattern = begin + nominal + end
	// ActualPattern matches what ParseActual accepts.
	ActualPattern = begin + actual + end
	// SizePattern matches what ParseSize accepts.
	SizePattern = begin + "(?:" + nominal + "|" + actual + ")" + end
)

const (
	blank   = "[ \t\u00a0\u2007\u2009\u202f]"
	blanks  = blank + "*"
	spaced  = blank + "+"
	begin   = "^" + blanks
	end     = blanks + "$"
	hyphen  = "[-\u2010\u2011\u2012\u2013\u2212]"
	minus   = hyphen + "?"
	solidus = "[/\u2044\u2215]"
	digits  = "[0-9]+"
	// ¼ to ¾ and ⅐ to ⅞ stand in two rows of Unicode.
	oneMark = "[\u00bc-\u00be\u2150-\u215e]"

	fraction  = "(?:" + digits + "(?:" + hyphen + "|" + spaced + "))?" + digits + solidus + digits
	vulgarly  = "(?:" + digits + "(?:" + hyphen + "|" + spaced + ")?)?" + oneMark
	numeral   = "(?:[0-9]*\\.[0-9]+|" + fraction + "|" + vulgarly + "|" + digits + ")"
	inchCount = "(?:[0-9]+\\.[0-9]+|" + fraction + "|" + vulgarly + "|" + digits + ")"

	inch     = "(?:in\\.?|IN\\.?|inch|inches|INCH|INCHES|[\"“”″]|['‘’′]['‘’′])"
	foot     = "(?:ft|FT|foot|feet|FOOT|FEET|['‘’′])"
	footStop = "(?:ft\\.|FT\\.)"
	feetThen = "(?:" + foot + blanks + "(?:" + hyphen + blanks + ")?|" +
		footStop + "(?:" + spaced + "(?:" + hyphen + blanks + ")?|" + hyphen + blanks + "))"
	feetAndInches  = digits + blanks + feetThen + inchCount + blanks + inch
	imperialLength = "(?:" + feetAndInches + "|" + numeral + blanks + "(?:" + inch + "|" + foot + "|" + footStop + "))"

	milli        = "(?:mm|millimetres?|millimeters?)"
	centi        = "(?:cm|centimetres?|centimeters?)"
	metre        = "(?:m|metres?|meters?)"
	metricLength = numeral + blanks + "(?:" + milli + "|" + centi + "|" + metre + ")"

	squared       = "(?:2|²|\\^2)"
	pressureUnits = "(?:psf|PSF|psi|PSI|ksf|KSF|Pa|kPa|MPa|lb" + solidus + "(?:ft|in)" + squared + "|k?N" + solidus + "m" + squared + "|N" + solidus + "mm" + squared + ")"
	forceUnits    = "(?:lb\\.?|lbs\\.?|lbf|pounds?|LB\\.?|LBS\\.?|LBF|POUNDS?|kips?|KIPS?|k?N|newtons?|kg)"
	angleUnits    = "(?:°|deg\\.?|DEG\\.?|degrees?|DEGREES?)"

	per   = "(?:" + blanks + solidus + blanks + "|" + spaced + "(?:per|PER)" + spaced + ")"
	ratio = spaced + "(?:in|IN)" + spaced + numeral + "|" +
		blanks + "(?::" + blanks + numeral + "|%|" + inch + per + "(?:" + foot + "|" + footStop + ")|(?:" + milli + "|" + centi + ")" + per + metre + ")"

	cross   = blanks + "[xX×]" + blanks
	nominal = "(?:(?:1|5" + solidus + "4|2)" + cross + "(?:[2-6]|8|1[0246])" +
		"|3" + cross + "(?:[3-6]|8|1[0246])" +
		"|4" + cross + "(?:[4-6]|8|1[0246])" +
		"|5" + cross + "(?:[56]|8|1[0246])" +
		"|6" + cross + "(?:6|8|1[0246])" +
		"|8" + cross + "(?:8|1[0246])" +
		"|10" + cross + "1[0246]|12" + cross + "1[246]|14" + cross + "1[46]|16" + cross + "16)"
	actual = "(?:" + imperialLength + cross + imperialLength + "|" + metricLength + cross + metricLength + ")"
)
